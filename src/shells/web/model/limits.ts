import type { Band, Finding } from '../../../findings/finding.ts'
import { ends, type Quantity, quantity } from '../../../kernel/units.ts'

/** The limit a finding is held against in one line: a floor or limit (`of`), or a target (`for`). */
export interface Limit {
  readonly word: 'of' | 'for'
  readonly at: Quantity
}

function nearer(low: number, high: number, { min, max }: Band): number | null {
  if (min === undefined) return max ?? null
  return max === undefined || low - min < max - high ? min : max
}

const outside = (low: number, high: number, { min, max }: Band): boolean =>
  (min !== undefined && low < min) || (max !== undefined && high > max)

/** The limit that was missed, else the nearer one. */
export function limitOf(f: Pick<Finding, 'measured' | 'must' | 'want'>): Limit | null {
  if (f.measured === null) return null
  const [low, high] = ends(f.measured)
  const must = nearer(low, high, f.must)
  const want = nearer(low, high, f.want)
  const unit = f.measured.unit
  if (must !== null && (outside(low, high, f.must) || want === null || !outside(low, high, f.want)))
    return { word: 'of', at: quantity(must, unit) }
  return want === null ? null : { word: 'for', at: quantity(want, unit) }
}
