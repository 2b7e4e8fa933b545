/** What the third act says: care, bucket tests, today's correction. Slots in braces. */
export const tendWords = {
  care: 'What the days bring',
  'care-text': 'Worst first; each is judged from the plan and changes with it.',
  bucket: 'Bucket tests of the pump',
  'bucket-text':
    'Let the pump fill a bucket through the riser, as high as it stands, and write down what it took. The last test outranks the box.',
  'bucket-wants':
    'A test wants three things: the bucket to its mark, the seconds that it took, and how high the riser’s end stood above the water.',
  'bucket-add': 'Add a test',
  test: 'test {n}',
  today: 'Today’s correction',
  'today-text':
    'Stir, read, type what pens and dip stick say. A bare number is in litres, on the pen’s own scale, and in °C.',
  'today-wants':
    'Before water, shelf and batch are told there is nothing to correct. Tell these, then come back and type what the pens say:',
  volume: 'in the tank',
  ec: 'conductivity',
  ph: 'pH',
  temp: 'temperature',
  fresh: 'just mixed, not yet planted',
  work: 'What to pour in',
  unread: '{name}: “{typed}” cannot be read. Write it like {example}.',
  'too-high': 'The tank is {most} deep; “{typed}” is over its rim. Read the dip stick again.',
  'wants-tank': 'A height becomes a volume only by the tank’s measures: tell the tank, or type litres.',
  wants: 'What is in the tank is needed: a volume, or the height on the dip stick.',
  'wants-feed': 'The plan has no batch yet: tell the water, the shelf and the target of the feed.',
} as const

export type TendWords = Readonly<Record<keyof typeof tendWords, string>>
