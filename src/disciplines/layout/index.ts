import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { JointFacts } from '../templates/joint-facts.ts'
import { nearestMouths, plantsPerArea, standArea, type TapeMark, tapeMark } from './equations.ts'
import { type Neighbour, neighbourWays } from './neighbours.ts'
import { columnSites, type Pattern, type Site } from './sites.ts'

export type { Neighbour, Site }

/** A mark along a line, counted from the datum, as exact and as a tape can show it. */
export interface Mark extends TapeMark {
  readonly site: number
}

/** A line along the pipe on which sites stand one above the other. */
export interface Line {
  readonly number: number
  readonly turn_rad: number
  /** Round the outside from line 1, exact and on the tape. */
  readonly arc: TapeMark
  readonly marks: readonly Mark[]
}

export interface LayoutFacts {
  readonly sites: readonly Site[]
  readonly lines: readonly Line[]
  /** Sites of one ring; 1 on a helix. */
  readonly perRing: number
  readonly rings: number
  readonly circumference_m: number
  /** From line to line round the pipe; null where lines stand unevenly, as on a helix. */
  readonly lineSpacing_m: number | null
  /** From mark to mark on one line; null where no line has two. */
  readonly linePitch_m: number | null
  readonly columnLength_m: number
  /** Height of the lid's top above the column's foot; null where the column does not pass a lid. */
  readonly lid_m: number | null
  readonly datum: 'foot' | 'top'
  readonly firstMark_m: number
  readonly lastMark_m: number
  /** Pipe above the highest mark. */
  readonly aboveLast_m: number
  readonly neighbours: readonly Neighbour[]
  /** Between the middles of the mouths of nearest neighbours; null where the stub is not known or there is one site. */
  readonly crown_m: number | null
  readonly columns: number
  /** Sites of all columns. */
  readonly plants: number
  /** Floor under one column with its plants; null where stub or canopy is not known. */
  readonly stand_m2: number | null
  /** Floor with the room to walk round it. */
  readonly floor_m2: number | null
  readonly perFloor_per_m2: number | null
}

const TAPE_STEP: Readonly<Record<string, number>> = { '1 mm': 0.001, '1/16 in': 0.0254 / 16, '1/32 in': 0.0254 / 32 }

function linesOf(
  pattern: Pattern,
  given: { circumference_m: number; length_m: number; datum: 'foot' | 'top'; step_m: number },
): Line[] {
  const numbers = [...new Set(pattern.sites.map((s) => s.line))].sort((a, b) => a - b)
  return numbers.map((number) => {
    const own = pattern.sites.filter((s) => s.line === number)
    const turn_rad = own[0]!.turn_rad
    const from = (mark_m: number) => (given.datum === 'foot' ? mark_m : given.length_m - mark_m)
    return {
      number,
      turn_rad,
      arc: tapeMark({ exact_m: (turn_rad / (2 * Math.PI)) * given.circumference_m, step_m: given.step_m }),
      marks: own
        .map((s) => ({ site: s.number, ...tapeMark({ exact_m: from(s.mark_m), step_m: given.step_m }) }))
        .sort((a, b) => a.exact_m - b.exact_m),
    }
  })
}

/** Lid above the column's foot: where the column stands through the lid, the lid's height; on a flange it stands on it. */
function lidAboveFoot(plan: Plan): Known<number | null> {
  const kind = plan.column?.base?.kind
  if (kind === 'flange on the lid') return { known: 0 }
  if (kind === 'own foot') return { known: null }
  const lid_m = plan.reservoir?.lidHeight_m ?? plan.reservoir?.container?.depth_m
  return lid_m === undefined ? { needs: ['reservoir/lidHeight'] } : { known: lid_m }
}

function firstMark(plan: Plan): Known<{ first_m: number; lid_m: number | null }> {
  const s = plan.column?.sites
  const given = needed({ first_m: ['column/sites/first', s?.first_m], from: ['column/sites/firstFrom', s?.firstFrom] })
  if (!isKnown(given)) return given
  const lid = lidAboveFoot(plan)
  if (given.known.from === 'foot')
    return { known: { first_m: given.known.first_m, lid_m: isKnown(lid) ? lid.known : null } }
  if (!isKnown(lid)) return lid
  if (lid.known === null) return { needs: ['column/sites/firstFrom'] }
  return { known: { first_m: given.known.first_m + lid.known, lid_m: lid.known } }
}

/** Where every site stands, what to mark, how close the plants come. */
export function layoutFacts(plan: Plan, joint: JointFacts | null): Known<LayoutFacts> {
  const given = needed({ pipe: ['column/pipe', plan.column?.pipe], length_m: ['column/length', plan.column?.length_m] })
  if (!isKnown(given)) return given
  const first = firstMark(plan)
  if (!isKnown(first)) return first
  const known = columnSites(plan, first.known.first_m)
  if (!isKnown(known)) return known
  const pattern = known.known
  const { sites, perRing, rings } = pattern
  const { length_m, pipe } = given.known
  const circumference_m = Math.PI * (joint?.column.outside_m ?? pipe.outside_m)
  const datum = plan.column?.sites?.datum ?? 'foot'
  const step_m = TAPE_STEP[plan.tools?.tape ?? '1 mm'] ?? 0.001
  const lines = linesOf(pattern, { circumference_m, length_m, datum, step_m })
  const reach_m = joint === null ? null : joint.axisLength_m * Math.sin(joint.stub.angle_rad)
  const near = neighbourWays(sites, Math.max(2 * (reach_m ?? 0), circumference_m))
  const pitches = lines.flatMap((l) => l.marks.slice(1).map((m, i) => m.exact_m - l.marks[i]!.exact_m))
  const lastMark_m = Math.max(...sites.map((s) => s.mark_m))
  const columns = plan.towers?.count ?? 1
  const canopy_m = plan.column?.sites?.canopy_m
  const walk_m = plan.place?.walkRound_m
  const stand =
    reach_m === null || canopy_m === undefined ? null : standArea({ reach_m, canopy_m, walk_m: walk_m ?? 0 })
  const floor_m2 = walk_m === undefined ? null : (stand?.walkRound_m2 ?? null)
  return {
    known: {
      sites,
      lines,
      perRing,
      rings,
      circumference_m,
      lineSpacing_m: pattern.linesEvenly ? circumference_m / lines.length : null,
      linePitch_m: pitches.length === 0 ? null : Math.min(...pitches),
      columnLength_m: length_m,
      lid_m: first.known.lid_m,
      datum,
      firstMark_m: first.known.first_m,
      lastMark_m,
      aboveLast_m: length_m - lastMark_m,
      neighbours: near,
      crown_m:
        reach_m === null
          ? null
          : nearestMouths({ reach_m, places: sites.map((p) => ({ turn_rad: p.turn_rad, height_m: p.mark_m })) }),
      columns,
      plants: columns * sites.length,
      stand_m2: stand?.footprint_m2 ?? null,
      floor_m2,
      perFloor_per_m2: floor_m2 === null ? null : plantsPerArea({ plants: sites.length, floor_m2 }),
    },
  }
}
