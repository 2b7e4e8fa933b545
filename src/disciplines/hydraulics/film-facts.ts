import { isKnown, type Known } from '../../plan/known.ts'
import { asBuilt, type Pipe } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import {
  filmFallTime,
  filmHoldUp,
  filmRate,
  filmReynolds,
  filmSpeed,
  filmThickness,
  wettingRate,
} from './equations-film.ts'
import { type Range, range } from './range.ts'
import type { SolutionWater } from './temperature.ts'

/** The column's pipe as built, or null where the plan names none. */
export function columnPipe(plan: Plan): Pipe | null {
  const pipe = plan.column?.pipe
  if (pipe === undefined) return null
  return asBuilt(pipe, { circumference_m: plan.measured?.columnCircumference_m, wall_m: plan.measured?.columnWall_m })
}

export interface FilmFacts {
  readonly bore_m: number
  readonly perimeter_m: number
  /** Flow per wetted perimeter, were it spread evenly. */
  readonly rate_kg_m_s: Range
  readonly reynolds: Range
  readonly thickness_m: Range
  readonly speed_m_s: Range
  readonly fallTime_s: Range
  /** Water that hangs in the film of one column. */
  readonly holdUp_m3: Range
  /** Flow of one column that closes dry patches on the whole wall: run in, and new and clean. */
  readonly closesRunIn_m3_s: number
  readonly closesClean_m3_s: number
}

export function filmFacts(plan: Plan, flow: Known<Range>, water: SolutionWater): Known<FilmFacts> {
  const pipe = columnPipe(plan)
  const height_m = plan.column?.length_m
  const needs = [...(pipe === null ? ['column/pipe'] : []), ...(height_m === undefined ? ['column/length'] : [])]
  if (pipe === null || height_m === undefined || !(pipe.bore_m > 0))
    return { needs: needs.length > 0 ? needs : ['column/pipe'] }
  if (!isKnown(flow)) return flow
  const perimeter_m = Math.PI * pipe.bore_m
  const at = (flow_m3_s: number, w: SolutionWater['cold']) => {
    const rate_kg_m_s = filmRate({ flow_m3_s, perimeter_m, density_kg_m3: w.density_kg_m3 })
    const thickness_m = filmThickness({ rate_kg_m_s, ...w })
    const speed_m_s = filmSpeed({ thickness_m, ...w })
    return {
      rate_kg_m_s,
      thickness_m,
      speed_m_s,
      reynolds: filmReynolds({ rate_kg_m_s, ...w }),
      holdUp_m3: filmHoldUp({ perimeter_m, thickness_m, height_m }),
      fallTime_s: speed_m_s > 0 ? filmFallTime({ height_m, speed_m_s }) : 0,
    }
  }
  // Cold water is the thicker: each end is the extreme of flow and temperature together.
  const ends = [flow.known.low, flow.known.high].flatMap((q) => [at(q, water.cold), at(q, water.warm)])
  const span = (of: (e: (typeof ends)[number]) => number): Range =>
    range(Math.min(...ends.map(of)), Math.max(...ends.map(of)))
  const closes = (contactAngle_rad: number) =>
    (wettingRate({ contactAngle_rad, ...water.cold }) * perimeter_m) / water.cold.density_kg_m3
  return {
    known: {
      bore_m: pipe.bore_m,
      perimeter_m,
      rate_kg_m_s: span((e) => e.rate_kg_m_s),
      reynolds: span((e) => e.reynolds),
      thickness_m: span((e) => e.thickness_m),
      speed_m_s: span((e) => e.speed_m_s),
      fallTime_s: span((e) => e.fallTime_s),
      holdUp_m3: span((e) => e.holdUp_m3),
      closesRunIn_m3_s: closes(wallWetting.rows.runIn.contactAngle_rad),
      closesClean_m3_s: closes(wallWetting.rows.cleanPvc.contactAngle_rad),
    },
  }
}
