import type { FindingWords } from '../../words.ts'

export const parts: Readonly<Record<string, FindingWords>> = {
  'parts/cement': {
    short: 'Cement holds these plastics',
    pass: 'Column ({column}) and stub ({stub}) are joined by {cement} cement.',
    watch:
      'Stub of {stub} in a column of {column}: only {cement} cement takes both, for drain joints and where the local code allows it; {measured} joints are doubtful. Buy both pipes of one plastic, or take another joint.',
    fail: 'No cement holds a stub of {stub} in a column of {column}: {measured} joints would peel. Buy pipe of one plastic, or take another joint.',
    because:
      'Solvent cement melts two faces into one; it does that only with some plastics, and look-alikes are not among them.',
  },
  'parts/prices': {
    short: 'Prices known',
    pass: '{parts} parts; those with a price add up to {sum}; {measured} have none.',
    watch: '{parts} parts; those with a price add up to {sum}; {measured} have none.',
    fail: '{parts} parts; those with a price add up to {sum}; {measured} have none.',
    because: 'A sum that leaves parts out must say so.',
  },
}
