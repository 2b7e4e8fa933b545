import { sourcesOf } from '../source.ts'

/** The two sources that are none: a rule of the trade, and a value that somebody remembers. */
export const practiceSources = sourcesOf({
  'common-practice': {
    kind: 'common-practice',
    cite: 'Rule of the trade without a published source',
    where: 'stated beside the value',
    read: null,
  },
  'from-memory': {
    kind: 'from-memory',
    cite: 'Value from memory, to be confirmed against print',
    where: 'stated beside the value',
    read: null,
  },
})
