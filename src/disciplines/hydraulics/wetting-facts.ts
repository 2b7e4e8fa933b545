import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { orificeDischarge } from '../../tables/hydraulic-orifices.ts'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { DistributorFacts } from './distributor-facts.ts'
import { capillaryLength, rivuletWidth } from './equations-wetting.ts'
import { columnPipe } from './film-facts.ts'
import type { OpeningFacts } from './opening-facts.ts'
import type { Range } from './range.ts'
import { weekOfLength } from './roots-facts.ts'
import type { SolutionWater } from './temperature.ts'
import { type WettingChange, wettingChanges } from './wetting-change.ts'
import { holeAngles, type SiteWater, type WetSite, type WettingCase, worstRow } from './wetting-map.ts'

/** Which sites get water: as drawn (plumb, all holes open) and at the worst that the plan allows (lean, clogged row). */
export interface WettingFacts {
  readonly flow_m3_s: number
  readonly holes: WettingCase['holes']
  readonly asDrawn: readonly SiteWater[]
  readonly worst: readonly SiteWater[]
  readonly lean_rad: number
  readonly cloggedShare: number
  /**
   * Sites that neither film nor drops reach: on the wall that wets most easily, with drills as askew as they are and
   * splashes; and on the one that wets least, drilled square.
   */
  readonly dry: Range
  readonly dryAtWorst: Range
  /** Sites that no film reaches, only falling drops. */
  readonly byDrops: number
  readonly byDropsAtWorst: number
  /** How far roots must hang from the cup to meet the falling water, and the weeks from which they do; null where the cup is not known. */
  readonly rootGap_m: number | null
  readonly rootWeeks: Range | null
  /** The case, so that the smallest cure can be asked for when somebody looks. */
  readonly case: WettingCase
}

const wall = { hard_rad: wallWetting.rows.cleanPvc.contactAngle_rad, easy_rad: wallWetting.rows.runIn.contactAngle_rad }
const NO_LEAN = 0
/** Bearings to which an unknown lean is tried. */
const LEANS = 4

const dryRange = (sites: readonly SiteWater[]): Range => ({
  low: sites.filter((s) => s.water === 'dry').length,
  high: sites.filter((s) => s.water !== 'wet' && s.drops !== 'sure').length,
})

const dropSites = (sites: readonly SiteWater[]): number => sites.filter((s) => s.water === 'drops').length

/** The bearing of the lean, and the place of the clogged row, that leave most sites dry. */
function worstBearing(c: WettingCase, cloggedShare: number): readonly SiteWater[] {
  const tries = c.lean_rad === 0 ? 1 : LEANS
  const maps = Array.from({ length: tries }, (_, i) =>
    worstRow({ ...c, toward_rad: (2 * Math.PI * i) / tries }, wall, cloggedShare),
  )
  const weight = (m: readonly SiteWater[]) => (dryRange(m).low * m.length + dryRange(m).high) * m.length + dropSites(m)
  return maps.reduce((a, b) => (weight(b) > weight(a) ? b : a))
}

function holesOf(plan: Plan, distributor: DistributorFacts | null, bore_m: number): WettingCase['holes'] {
  const first_rad = plan.distributor?.turn_rad ?? 0
  const discharge = orificeDischarge.rows.drilledPlastic.dischargeLow
  // A tee lets its water fall from one mouth in the middle.
  if (distributor === null)
    return { count: 1, first_rad, circle_m: 0, hole_m: Math.min(plan.riser?.bore_m ?? 0.01, bore_m / 2), discharge }
  const circle_m = distributor.kind === 'ring' ? bore_m : Math.min(distributor.circle_m, bore_m)
  return { count: distributor.count, first_rad, circle_m, hole_m: Math.min(distributor.hole_m, bore_m / 2), discharge }
}

export function wettingFacts(
  plan: Plan,
  given: {
    readonly flow: Known<Range>
    readonly water: SolutionWater
    readonly distributor: Known<DistributorFacts | null>
    readonly layout: Known<LayoutFacts>
    readonly opening: Known<OpeningFacts>
  },
): Known<WettingFacts> {
  const pipe = columnPipe(plan)
  if (pipe === null || !(pipe.bore_m > 0)) return { needs: ['column/pipe'] }
  if (!isKnown(given.layout)) return given.layout
  if (!isKnown(given.distributor)) return given.distributor
  if (!isKnown(given.flow)) return given.flow
  if (!isKnown(given.opening)) return given.opening
  const { halfAngle_rad, cup_m, end_m } = given.opening.known
  const reach_m = Math.min(Math.max(0, cup_m ?? 0), pipe.bore_m / 2)
  const top_m = given.layout.known.columnLength_m
  const empty = new Set(plan.column?.sites?.empty ?? [])
  const sites = given.layout.known.sites.flatMap((s): WetSite[] =>
    empty.has(s.number)
      ? []
      : [
          {
            id: String(s.number),
            angle_rad: s.turn_rad,
            depth_m: Math.max(0, top_m - s.mark_m),
            halfAngle_rad,
            reach_m,
            end_m,
          },
        ],
  )
  const holes = holesOf(plan, given.distributor.known, pipe.bore_m)
  const lean_rad = given.distributor.known?.lean_rad ?? plan.distributor?.tilt_rad ?? NO_LEAN
  const cloggedShare = given.distributor.known?.cloggedShare ?? 0
  const flow_m3_s = given.flow.known.low
  const wettingCase: WettingCase = {
    flow_m3_s,
    water: given.water.cold,
    contactAngle_rad: wall.easy_rad,
    bore_m: pipe.bore_m,
    lean_rad,
    toward_rad: 0,
    holes,
    sites,
  }
  const asDrawn = worstRow({ ...wettingCase, lean_rad: NO_LEAN }, wall, 0)
  const worst = worstBearing(wettingCase, cloggedShare)
  const stream_m = pipe.bore_m / 2 - Math.min(holes.circle_m, pipe.bore_m) / 2
  const rootGap_m = cup_m === null ? null : Math.max(0, stream_m - cup_m)
  return {
    known: {
      flow_m3_s,
      holes,
      asDrawn,
      worst,
      lean_rad,
      cloggedShare,
      dry: dryRange(asDrawn),
      dryAtWorst: dryRange(worst),
      byDrops: dropSites(asDrawn),
      byDropsAtWorst: dropSites(worst),
      rootGap_m,
      rootWeeks: rootGap_m === null ? null : weekOfLength(rootGap_m),
      case: wettingCase,
    },
  }
}

/** The smallest changes that wet every site at the worst; asked for when somebody looks, since the search takes its time. */
export const wettingCures = (plan: Plan, facts: WettingFacts): readonly WettingChange[] =>
  wettingChanges(facts.case, {
    cloggedShare: facts.cloggedShare,
    mostFlow_m3_s: 3 * Math.max(facts.flow_m3_s, plan.riser?.neededFlow_m3_s ?? 0),
    mostHoles: 3 * facts.holes.count,
  })

/** A stream below the plate, column plumb and all holes open: where it runs and how wide it keeps the wall wet. */
export interface Strip {
  readonly turn_rad: number
  /** On the wall; else it falls free and is seen at its bearing only. */
  readonly onWall: boolean
  readonly widest_m: number
  readonly narrowest_m: number
}

export function strips(facts: WettingFacts): readonly Strip[] {
  const { holes, case: c } = facts
  const flow_m3_s = facts.flow_m3_s / holes.count
  const onWall = (c.bore_m - holes.hole_m - Math.min(holes.circle_m, c.bore_m)) / 2 <= capillaryLength(c.water)
  const width = (contactAngle_rad: number) => rivuletWidth({ flow_m3_s, water: c.water, contactAngle_rad })
  return holeAngles(holes).map((turn_rad) => ({
    turn_rad,
    onWall,
    widest_m: width(wall.easy_rad),
    narrowest_m: width(wall.hard_rad),
  }))
}
