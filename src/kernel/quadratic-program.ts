import { solveQP } from 'quadprog'

/** One linear row: `coefficients · x ≥ atLeast`. */
export interface Row {
  readonly coefficients: readonly number[]
  readonly atLeast: number
}

export interface Minimum {
  readonly x: readonly number[]
  /** ½ xᵀDx - dᵀx */
  readonly objective: number
  /** One for each row, never negative: what the objective would fall by if the row gave way by one unit. */
  readonly multipliers: readonly number[]
  /** Largest violation of the optimality conditions; see `optimalityGap`. */
  readonly gap: number
  /** False where the rows contradict each other; `x` is then no answer. */
  readonly feasible: boolean
}

export interface QuadraticProgram {
  /** Symmetric and positive definite. */
  readonly quadratic: readonly (readonly number[])[]
  readonly linear: readonly number[]
  readonly rows: readonly Row[]
}

const dot = (a: readonly number[], b: readonly number[]) => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

/** Largest part of the gradient that no row holds, relative to the largest term of its line. */
function unheldForce(
  { quadratic, linear, rows }: QuadraticProgram,
  x: readonly number[],
  λ: readonly number[],
): number {
  const active = rows.map((_, k) => k).filter((k) => λ[k] !== 0)
  let worst = 0
  for (let i = 0; i < x.length; i++) {
    let force = -linear[i]!
    let scale = Math.abs(force) + 1
    const add = (term: number) => {
      force += term
      scale = Math.max(scale, Math.abs(term))
    }
    for (let j = 0; j < x.length; j++) add(quadratic[i]![j]! * x[j]!)
    for (const k of active) add(-λ[k]! * rows[k]!.coefficients[i]!)
    worst = Math.max(worst, Math.abs(force) / scale)
  }
  return worst
}

/**
 * How far a point and its multipliers are from the conditions of Karush, Kuhn and Tucker: the gradient is held by the
 * rows (D x - d = Aᵀλ), every row holds, no row pulls the wrong way, and a row that pulls is met exactly. Relative to
 * the size of the terms. Nothing else is needed to prove the optimum of a convex programme.
 */
export function optimalityGap(program: QuadraticProgram, x: readonly number[], λ: readonly number[]): number {
  let gap = unheldForce(program, x, λ)
  program.rows.forEach(({ coefficients, atLeast }, k) => {
    let scale = Math.abs(atLeast) + 1
    for (let i = 0; i < x.length; i++) scale = Math.max(scale, Math.abs(coefficients[i]! * x[i]!))
    const slack = (dot(coefficients, x) - atLeast) / scale
    gap = Math.max(gap, -slack, -λ[k]!, Math.min(Math.abs(slack), Math.abs(λ[k]!)))
  })
  return gap
}

/** Squares of smaller numbers vanish inside the solver and would divide zero by zero. */
const VANISHING = 1e-60

/** Shifts an array by one place, as the solver counts from 1. */
const from1 = (values: readonly number[]) => [0, ...values.map((x) => (Math.abs(x) < VANISHING ? 0 : x))]

/**
 * The smallest value of a strictly convex quadratic function between linear rows (Goldfarb and Idnani's dual method).
 * The answer carries the gap of its own optimality check, so a caller need not trust the solver.
 *
 * Throws RangeError where the quadratic part is not positive definite.
 */
export function quadraticMinimum(program: QuadraticProgram): Minimum {
  const { quadratic, linear, rows } = program
  const free = rows.length === 0
  const bounds = free ? [{ coefficients: linear.map(() => 0), atLeast: -1 }] : rows
  const found = solveQP(
    [[0], ...quadratic.map(from1)],
    from1(linear),
    [[0], ...linear.map((_, i) => from1(bounds.map((row) => row.coefficients[i]!)))],
    from1(bounds.map((row) => row.atLeast)),
  )
  if (found.message.includes('positive definite')) throw new RangeError(`quadraticMinimum: ${found.message}`)
  const x = found.solution.slice(1)
  const multipliers = rows.map((_, k) => found.Lagrangian[k + 1] ?? 0)
  const objective = x.reduce((sum, xi, i) => sum + xi * (dot(quadratic[i]!, x) / 2 - linear[i]!), 0)
  const gap = optimalityGap(program, x, multipliers)
  return {
    x,
    objective,
    multipliers,
    gap: Number.isNaN(gap) ? Number.POSITIVE_INFINITY : gap,
    feasible: found.message === '',
  }
}
