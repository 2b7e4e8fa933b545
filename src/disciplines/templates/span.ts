import { minimum } from '../../kernel/extremum.ts'
import { root } from '../../kernel/solve.ts'
import { type Crossing, curveEdges, curveTurn, type Hole } from './joint.ts'
import type { Arc } from './section.ts'
import { squareEdges, squareSides } from './square-cut.ts'

/** Slack, as a share of the hole's radius, by which a level counts as that of a side, where both edges meet. */
const ROUNDING = 1e-9

/** Part of the turn in which a level lies between two edges; null where it lies in none. */
function spanBetween(
  edges: (phi: number) => readonly [low: number, high: number],
  sides: { readonly left: number; readonly right: number },
  level: number,
  slack: number,
): Arc | null {
  const excess = (phi: number) => {
    const [low, high] = edges(phi)
    return Math.max(low - level, level - high)
  }
  const { left, right } = sides
  const centre = (left + right) / 2
  const middle =
    excess(centre) < 0 ? centre : minimum({ of: excess, low: left, high: right, pieces: 24, within: 1e-6 }).at
  const deep = excess(middle)
  if (deep > slack) return null
  if (deep >= 0) return { from_rad: middle, to_rad: middle }
  const side = (end: number) =>
    excess(end) <= slack ? end : root({ of: excess, low: middle, high: end, within: 1e-12 })
  const to_rad = side(right)
  return { from_rad: middle === 0 && left === -right ? -to_rad : side(left), to_rad }
}

/** Part of the turn that an axis-cut opening takes at a level on one radius of the wall, without checks. */
export function axisSpan(crossing: Crossing, level: number): Arc | null {
  const { pipeRadius_m: rho, tubeRadius_m: q, angle_rad: th, offset_m: e } = crossing
  if (e === 0) {
    const root2 = Math.sqrt(Math.max(0, level * level + rho * rho - q * q))
    const half = Math.acos(Math.min(1, (root2 - level * Math.cos(th)) / (rho * Math.sin(th))))
    return half > 0 ? { from_rad: -half, to_rad: half } : null
  }
  const sides = { left: curveTurn(crossing, -Math.PI / 2), right: curveTurn(crossing, Math.PI / 2) }
  return spanBetween((phi) => curveEdges(crossing, phi), sides, level, ROUNDING * q)
}

/** Part of the turn that a square-cut hole takes at a level, through the whole wall, without checks. */
export const squareSpan = (hole: Hole, level: number): Arc | null =>
  spanBetween((phi) => squareEdges(hole, phi), squareSides(hole), level, ROUNDING * hole.holeRadius_m)
