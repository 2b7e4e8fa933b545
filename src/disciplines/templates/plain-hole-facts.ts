import { isKnown, type Known, needed } from '../../plan/known.ts'
import { asBuilt } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { plainHoleCupDepth, plainHoleGap } from './equations.ts'

/** A level round hole in the wall that takes the cup without a stub. */
export interface PlainHoleFacts {
  readonly hole_m: number
  readonly outside_m: number
  readonly wall_m: number
  /** Hole over outside diameter. */
  readonly share: number
  /** Under the rim at the sides, and how deep a cup may be before it touches the far wall; null where the hole is wider than the bore. */
  readonly gap_m: number | null
  readonly deepest_m: number | null
  readonly cupDepth_m: number
  /** Between holes of one ring round the outside; null for one site a ring or a helix. */
  readonly web_m: number | null
}

export function plainHoleFacts(plan: Plan): Known<PlainHoleFacts> {
  const { column } = plan
  const given = needed({
    pipe: ['column/pipe', column?.pipe],
    body_m: ['column/cup/body', column?.cup?.body_m],
    depth_m: ['column/cup/depth', column?.cup?.depth_m],
  })
  if (!isKnown(given)) return given
  const { body_m, depth_m } = given.known
  const tape = { circumference_m: plan.measured?.columnCircumference_m, wall_m: plan.measured?.columnWall_m }
  const { outside_m, bore_m, wall_m } = asBuilt(given.known.pipe, tape)
  const holeRadius_m = body_m / 2
  const fits = body_m <= bore_m
  const perRing = column?.sites?.pattern === 'rings' ? (column.sites.perRing ?? 1) : 1
  const half_rad = Math.asin(Math.min(1, body_m / outside_m))
  return {
    known: {
      hole_m: body_m,
      outside_m,
      wall_m,
      share: body_m / outside_m,
      gap_m: fits ? plainHoleGap({ columnRadius_m: outside_m / 2, holeRadius_m }) : null,
      deepest_m: fits ? plainHoleCupDepth({ boreRadius_m: bore_m / 2, holeRadius_m }) : null,
      cupDepth_m: depth_m,
      web_m: perRing >= 2 ? (outside_m / 2) * ((2 * Math.PI) / perRing - 2 * half_rad) : null,
    },
  }
}
