import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { LayoutFacts } from '../layout/index.ts'
import { pocketLens, pocketLigament, pocketSlit, pocketWall } from './equations.ts'

/** A heat-formed pocket in place of a stub. */
export interface PocketFacts {
  /** Length of the slit round the pipe, as planned or as the former needs. */
  readonly slit_m: number
  /** What the former needs at the stated stretch. */
  readonly neededSlit_m: number
  readonly wall_m: number
  readonly lensWidth_m: number
  readonly lensGap_m: number
  /** Share of the circumference left between the slits of a ring. */
  readonly share: number
  readonly left_m: number
  /** Pitch over former diameter. */
  readonly pitchRatio: number | null
}

export function pocketFacts(plan: Plan, layout: LayoutFacts | null): Known<PocketFacts> {
  const { column } = plan
  const given = needed({
    pipe: ['column/pipe', column?.pipe],
    former_m: ['column/pocket/former', column?.pocket?.former_m],
    stretch: ['column/pocket/strain', column?.pocket?.strain],
  })
  if (!isKnown(given)) return given
  const { pipe, former_m, stretch } = given.known
  const neededSlit_m = pocketSlit({ former_m, stretch })
  const slit_m = column?.pocket?.slit_m ?? neededSlit_m
  const columnRadius_m = pipe.outside_m / 2
  const lens = pocketLens({ columnRadius_m, slit_m })
  const pitch_m = layout?.linePitch_m ?? null
  return {
    known: {
      slit_m,
      neededSlit_m,
      wall_m: pocketWall({ columnWall_m: pipe.wall_m, stretch }),
      lensWidth_m: lens.width_m,
      lensGap_m: lens.gap_m,
      ...pocketLigament({ columnRadius_m, slit_m, count: layout?.perRing ?? 1 }),
      pitchRatio: pitch_m === null ? null : pitch_m / former_m,
    },
  }
}
