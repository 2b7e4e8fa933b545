import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { columnPipe } from './film-facts.ts'
import type { HydraulicsFacts, WettingFacts } from './index.ts'
import { holes, ofRange } from './levers.ts'

function moreWater(plan: Plan, w: WettingFacts) {
  const bore_m = columnPipe(plan)?.bore_m ?? 0
  const pitch_rad = (2 * Math.PI) / w.holes.count
  const { diameter_m, thickness_m } = plan.distributor ?? {}
  const cup_m = diameter_m === undefined || thickness_m === undefined ? bore_m : diameter_m - 2 * thickness_m
  const edge_m = Math.min(bore_m, cup_m) - w.holes.hole_m
  return [
    ...(plan.distributor?.circle_m !== undefined && edge_m > plan.distributor.circle_m
      ? [along('distributor/circle', edge_m, 'm', 0.001)]
      : []),
    ...(plan.distributor?.turn_rad === undefined
      ? []
      : [along('distributor/turn', plan.distributor.turn_rad + pitch_rad, 'rad', pitch_rad / 12)]),
    ...holes(plan, 'more'),
    among('distributor/kind', ['ring']),
  ]
}

type Site = WettingFacts['worst'][number]

/** Neither a film on any wall nor drops are sure to reach it. */
const unsure = (s: Site): boolean => s.water !== 'wet' && s.drops !== 'sure'

/** Numbers of some sites, runs of them drawn together: 1–4, 7. */
function numbers(sites: readonly Site[], missed: (s: Site) => boolean): string {
  const runs: [number, number][] = []
  for (const site of sites) {
    if (!missed(site)) continue
    const n = Number(site.id)
    const last = runs.at(-1)
    if (last !== undefined && last[1] === n - 1) last[1] = n
    else runs.push([n, n])
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : `${a}–${b}`)).join(', ')
}

const dry: Check<WettingFacts> = {
  id: 'hydraulics/dry-sites',
  at: 'distributor/circle',
  source: 'RivuletWidth',
  judged: (w, plan, terms) => [
    judge('hydraulics/dry-sites', ofRange(w.dry, 'count'), {
      ...terms,
      must: { max: 0 },
      slots: {
        which: numbers(w.asDrawn, unsure),
        sites: w.asDrawn.length,
        drops: w.byDrops,
        flow: quantity(w.flow_m3_s, 'm3_s'),
      },
      levers: moreWater(plan, w),
    }),
  ],
}

const dryAtWorst: Check<WettingFacts> = {
  id: 'hydraulics/dry-sites-worst',
  at: 'distributor/holes',
  source: 'RivuletWidth',
  judged: (w, plan, terms) => [
    judge('hydraulics/dry-sites-worst', ofRange(w.dryAtWorst, 'count'), {
      ...terms,
      want: { max: 0 },
      slots: {
        which: numbers(w.worst, unsure),
        sites: w.worst.length,
        lean: quantity(w.lean_rad, 'rad'),
        shut: quantity(w.cloggedShare, 'share'),
      },
      levers: holes(plan, 'more'),
    }),
  ],
}

/** Roots that hang out to the rain water the plug themselves; until then somebody does. */
function until(w: WettingFacts): FindingSlot {
  if (w.rootGap_m === null || w.rootWeeks === null) return { phrase: 'roots-to-rain-unknown' }
  const { low, high } = w.rootWeeks
  const weeks = { from: Math.round(low), to: Math.round(high) }
  return { phrase: 'roots-to-rain', with: { gap: quantity(w.rootGap_m, 'm'), ...weeks } }
}

/** Sites that water reaches only as drops that strike what stands in the bore. */
const byDrops: Check<WettingFacts> = {
  id: 'hydraulics/drop-sites',
  at: 'distributor/circle',
  source: 'Mundo1995',
  judged: (w, plan, terms) => [
    judge('hydraulics/drop-sites', quantity(w.byDrops, 'count'), {
      ...terms,
      want: { max: 0 },
      slots: {
        which: numbers(w.asDrawn, (s) => s.water === 'drops'),
        sites: w.asDrawn.length,
        until: until(w),
      },
      levers: moreWater(plan, w),
    }),
  ],
}

/** Judges which sites get water, and how. */
export const wettingChecks = (plan: Plan, h: HydraulicsFacts): readonly Finding[] =>
  checked([dry, byDrops, dryAtWorst], h.wetting, plan)
