import { both, type Check, checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TankFacts } from '../reservoir/tank.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { DRAIN_VALID } from './equations-drain.ts'
import { capillaryLength } from './equations-wetting.ts'
import type { DrainFacts, FilmFacts, HydraulicsFacts } from './index.ts'
import { boreUp, footHoles, ofRange, pumpHeadUp } from './levers.ts'
import type { Range } from './range.ts'

interface Filmed extends FilmFacts {
  readonly column_m3_s: Range
  readonly bridge_m: number
}

const closes: Check<Filmed> = {
  id: 'hydraulics/film-closes',
  at: 'riser/neededFlow',
  source: 'HartleyMurgatroyd1964',
  judged: (f, plan, terms) => [
    judge('hydraulics/film-closes', ofRange(f.column_m3_s, 'm3_s'), {
      ...terms,
      want: { min: f.closesRunIn_m3_s },
      slots: { clean: quantity(f.closesClean_m3_s, 'm3_s'), film: ofRange(f.thickness_m, 'm') },
      levers: [...boreUp(plan), ...pumpHeadUp(plan)],
    }),
  ],
}

const splash: Check<Filmed & TemplatesFacts> = {
  id: 'hydraulics/splash-margin',
  at: 'column/stub/lowerSide',
  source: 'common-practice',
  applies: (plan) => (plan.column?.sites?.method ?? 'stub') === 'stub',
  judged: (f, plan, terms) => {
    const side_m = plan.column?.stub?.lowerSide_m
    return [
      judge('hydraulics/splash-margin', quantity(f.stub.freeboard_m, 'm'), {
        ...terms,
        // A film swollen by surface tension climbs this high; less than that runs out without any splash.
        must: { min: f.bridge_m + f.thickness_m.high },
        want: { min: waterPathPractice.rows.lipRise.value },
        slots: { angle: quantity(f.joint.stub.angle_rad, 'rad') },
        levers: side_m === undefined ? [] : [along('column/stub/lowerSide', 2 * side_m, 'm', 0.001)],
      }),
    ]
  },
}

interface Footed extends DrainFacts {
  /** From the water outside the foot to the lowest opening of the column. */
  readonly room_m: number
}

const foot: Check<Footed> = {
  id: 'hydraulics/foot-water',
  at: 'drain/holes',
  source: 'Torricelli',
  judged: (d, plan, terms) => [
    judge('hydraulics/foot-water', ofRange(d.head_m, 'm'), {
      ...terms,
      must: { max: d.room_m },
      want: { max: waterPathPractice.rows.footWater.value },
      slots: { room: quantity(d.room_m, 'm'), shut: quantity(d.cloggedShare, 'share'), enough: d.enough },
      levers: footHoles(plan),
    }),
  ],
}

const returns = (plan: Plan): boolean =>
  plan.drain?.bore_m !== undefined || plan.drain?.length_m !== undefined || plan.drain?.fall_m !== undefined

const returnPipe: Check<DrainFacts> = {
  id: 'hydraulics/return-pipe',
  at: 'drain/bore',
  source: 'Manning1891',
  applies: returns,
  judged: ({ returnShare }, plan, terms) => {
    if (returnShare === null) {
      const { bore_m, length_m, fall_m } = plan.drain ?? {}
      const gaps = { 'drain/bore': bore_m, 'drain/length': length_m, 'drain/fall': fall_m }
      const needs = Object.entries(gaps).flatMap(([path, v]) => (v === undefined ? [path] : []))
      return [unknown('hydraulics/return-pipe', { ...terms, needs })]
    }
    const { bore_m = 0, fall_m = 0 } = plan.drain ?? {}
    return [
      judge('hydraulics/return-pipe', quantity(returnShare, 'share'), {
        ...terms,
        must: { max: DRAIN_VALID.fullestShare },
        want: { max: waterPathPractice.rows.returnFull.value },
        levers: [along('drain/bore', 2.5 * bore_m, 'm', 0.001), along('drain/fall', 4 * fall_m, 'm', 0.01)],
      }),
    ]
  },
}

/** How far the opening of a site reaches below its mark, by the way in which it is made. */
function belowMark(plan: Plan, templates: Known<TemplatesFacts>): Known<number> {
  const method = plan.column?.sites?.method ?? 'stub'
  // A pocket's slit lies on its mark: the lip under it is drawn outward, and holds nothing back.
  if (method === 'pocket') return { known: 0 }
  if (method === 'hole') {
    const body_m = plan.column?.cup?.body_m
    return body_m === undefined ? { needs: ['column/cup/body'] } : { known: body_m / 2 }
  }
  if (method === 'fitting') {
    const branch = plan.column?.stub?.pipe
    return branch === undefined ? { needs: ['column/stub/pipe'] } : { known: branch.bore_m / 2 }
  }
  if (!isKnown(templates)) return templates
  const { joint, holeAlong } = templates.known
  return { known: joint.markRise_m - holeAlong.extent.bottom_m }
}

/** Room under the lowest opening, above the water that stands outside the foot. */
function footed(h: HydraulicsFacts, plan: Plan, near: Near): Known<Footed> {
  if (!isKnown(h.drain)) return h.drain
  const { layout, templates, tank } = near
  if (!isKnown(layout)) return layout
  const below = belowMark(plan, templates)
  if (!isKnown(below)) return below
  const opening_m = Math.min(...layout.known.sites.map((s) => s.mark_m)) - below.known
  if (plan.column?.base?.kind !== 'through the lid') return { known: { ...h.drain.known, room_m: opening_m } }
  if (!isKnown(tank)) return tank
  const { fill } = tank.known
  return isKnown(fill) ? { known: { ...h.drain.known, room_m: opening_m - fill.known.level_m } } : fill
}

export interface Near {
  readonly layout: Known<LayoutFacts>
  readonly templates: Known<TemplatesFacts>
  readonly tank: Known<TankFacts>
}

export function columnChecks(plan: Plan, h: HydraulicsFacts, near: Near): readonly Finding[] {
  const film: Known<Filmed> =
    isKnown(h.film) && isKnown(h.column_m3_s)
      ? { known: { ...h.film.known, column_m3_s: h.column_m3_s.known, bridge_m: capillaryLength(h.water.cold) } }
      : {
          needs: [...('needs' in h.film ? h.film.needs : []), ...('needs' in h.column_m3_s ? h.column_m3_s.needs : [])],
        }
  return [
    ...checked([closes], film, plan),
    ...checked([splash], both(film, near.templates), plan),
    ...checked([foot], footed(h, plan, near), plan),
    ...checked([returnPipe], h.drain, plan),
  ]
}
