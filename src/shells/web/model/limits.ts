import type { Band, Finding } from '../../../findings/finding.ts'
import { ends, type Quantity, quantity } from '../../../kernel/units.ts'

/** The limit a finding is held against in one line: what it must reach at least, or stay under at most. */
export interface Limit {
  readonly word: 'least' | 'most'
  readonly at: Quantity
}

interface End {
  readonly word: Limit['word']
  readonly at: number
}

function nearer(low: number, high: number, { min, max }: Band): End | null {
  const [least, most] = [min, max].map((at, i) =>
    at === undefined ? null : ({ word: i === 0 ? 'least' : 'most', at } satisfies End),
  )
  if (!least || !most) return least ?? most ?? null
  return low - least.at < most.at - high ? least : most
}

const outside = (low: number, high: number, { min, max }: Band): boolean =>
  (min !== undefined && low < min) || (max !== undefined && high > max)

/** The limit that was missed, else the nearer one. */
export function limitOf(f: Pick<Finding, 'measured' | 'must' | 'want'>): Limit | null {
  if (f.measured === null) return null
  const [low, high] = ends(f.measured)
  const must = nearer(low, high, f.must)
  const want = nearer(low, high, f.want)
  const chosen =
    must !== null && (outside(low, high, f.must) || want === null || !outside(low, high, f.want)) ? must : want
  return chosen === null ? null : { word: chosen.word, at: quantity(chosen.at, f.measured.unit) }
}
