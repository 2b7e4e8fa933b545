/** Short lettering on the drawings of the water's path. */
export const waterPathWords = {
  flow: 'flow of the pump',
  head: 'head',
  pumpBand: 'the pump, between these curves',
  system: 'lift and hose, at low water',
  needed: 'wanted',
  bucket: 'bucket test {on}',
  fill: 'fill line {level}, {volume}',
  low: 'low line {level}, {volume}: top up',
  afterStop: 'after a stop up to {level}',
  afterStart: 'after a start down to {level}',
  cover: 'pump draws air below {level}',
  rim: 'rim {level}',
  stickFill: 'FILL',
  stickLow: 'LOW',
  stickFoot: 'stands on the tank’s floor',
  stickUnit: 'from mark to mark {step}',
  wet: 'wet on any wall',
  doubtful: 'wet once the wall has run in',
  dry: 'missed',
  strip: 'wall kept wet: new, and run in',
  free: 'stream falls free, off the wall',
  hole: 'holes of the distributor',
} as const

export type WaterPathWords = Readonly<Record<keyof typeof waterPathWords, string>>
