/** Names on the view of the flow: what the water does, part by part. Each is followed by its number. */
export const flowWords = {
  pump: 'pump gives',
  pumpHead: 'against',
  speed: 'in the riser',
  loss: 'lost in the riser',
  lift: 'lift',
  over: 'over the holes',
  full: 'overflows at',
  column: 'one column gets',
  film: 'film',
  filmSpeed: 'runs down at',
  fall: 'top to foot in',
  foot: 'over the foot’s holes',
  back: 'comes back when it stops',
  dry: 'roots dry after',
  rim: 'rim',
  afterStop: 'after a stop',
  fill: 'fill line',
  low: 'low line',
  afterStart: 'after a start',
} as const

export type FlowWords = Readonly<Record<keyof typeof flowWords, string>>
