import { quadraticMinimum, type Row } from './quadratic-program.ts'

export interface Cheapest {
  readonly x: readonly number[]
  readonly cost: number
  readonly multipliers: readonly number[]
  /** Cost less the bound that the multipliers prove, relative: zero at the optimum. */
  readonly gap: number
  readonly feasible: boolean
}

const STEP_LIMIT = 40
/** Relative gap at which the cost is taken as proved. */
const PROVED = 1e-9
/** How strongly each step is held to the one before, against costs of order one. */
const HOLD = 1e-3

/**
 * The smallest `cost · x` between linear rows, by proximal steps: each minimises the cost plus a small distance from
 * the point before, which ends at an exact optimum of a linear programme in few steps (Rockafellar 1976).
 * Cost and x should be scaled to order one. The gap to the dual bound is the proof.
 */
export function linearMinimum(given: { readonly cost: readonly number[]; readonly rows: readonly Row[] }): Cheapest {
  const { cost, rows } = given
  const quadratic = cost.map((_, i) => cost.map((__, j) => (i === j ? HOLD : 0)))
  let x: readonly number[] = cost.map(() => 0)
  let best: Cheapest = {
    x,
    cost: Number.POSITIVE_INFINITY,
    multipliers: [],
    gap: Number.POSITIVE_INFINITY,
    feasible: false,
  }
  for (let step = 0; step < STEP_LIMIT; step++) {
    const from = x
    const found = quadraticMinimum({ quadratic, linear: cost.map((c, i) => HOLD * from[i]! - c), rows })
    if (!found.feasible) return { ...best, multipliers: rows.map(() => 0), feasible: false }
    x = found.x
    const sum = cost.reduce((total, c, i) => total + c * x[i]!, 0)
    const bound = rows.reduce((total, row, k) => total + found.multipliers[k]! * row.atLeast, 0)
    // Force that the rows do not hold: zero once the point has stopped moving.
    const loose = cost.reduce((most, c, i) => {
      const held = rows.reduce((total, row, k) => total + found.multipliers[k]! * row.coefficients[i]!, 0)
      return Math.max(most, Math.abs(c - held) / (1 + Math.abs(c)))
    }, 0)
    const gap = Math.max(Math.abs(sum - bound) / (1 + Math.abs(sum)), loose)
    if (gap < best.gap) best = { x, cost: sum, multipliers: found.multipliers, gap, feasible: true }
    if (gap < PROVED) break
  }
  return best
}
