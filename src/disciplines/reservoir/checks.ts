import { type Check, checked } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { statedPractice } from '../../tables/stated.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { lineFindings } from './checks-lines.ts'
import type { ReservoirFacts } from './index.ts'

const LITRE_m3 = 0.001
const STEP_m = 0.001

/** The line is turned in the way in which the grower has set it. */
function line(
  plan: Plan,
  which: 'fill' | 'low',
  to: { readonly level_m: number; readonly volume_m3: number },
): readonly Lever[] {
  const r = plan.reservoir
  const byLevel = which === 'fill' ? r?.fillLine_m : r?.lowLine_m
  return byLevel === undefined
    ? [along(`reservoir/${which}Volume`, to.volume_m3, 'm3', LITRE_m3)]
    : [along(`reservoir/${which}Line`, to.level_m, 'm', STEP_m)]
}

const fillPlace = (plan: Plan): string =>
  plan.reservoir?.fillLine_m === undefined && plan.reservoir?.fillVolume_m3 !== undefined
    ? 'reservoir/fillVolume'
    : 'reservoir/fillLine'

const lowPlace = (plan: Plan): string =>
  plan.reservoir?.lowLine_m === undefined && plan.reservoir?.lowVolume_m3 !== undefined
    ? 'reservoir/lowVolume'
    : 'reservoir/lowLine'

const fits: Check<ReservoirFacts> = {
  id: 'reservoir/fill-fits',
  at: 'reservoir/fillLine',
  source: 'derived.volumes',
  judged: ({ tank }, plan, terms) => {
    const beyond = tank.beyondRim.find((b) => b.at.startsWith('reservoir/fill'))
    if (beyond === undefined && !isKnown(tank.fill))
      return [unknown('reservoir/fill-fits', { ...terms, needs: tank.fill.needs })]
    const volume_m3 = beyond?.volume_m3 ?? (isKnown(tank.fill) ? tank.fill.known.volume_m3 : 0)
    return [
      judge('reservoir/fill-fits', quantity(volume_m3, 'm3'), {
        ...terms,
        at: fillPlace(plan),
        must: { max: tank.brim_m3 },
        slots: { brim: quantity(tank.brim_m3, 'm3') },
        levers: line(plan, 'fill', { level_m: 0.1 * tank.depth_m, volume_m3: 0.1 * tank.brim_m3 }),
      }),
    ]
  },
}

const order: Check<ReservoirFacts> = {
  id: 'reservoir/low-below-fill',
  at: 'reservoir/lowLine',
  source: 'derived.volumes',
  judged: ({ tank, usable_m3 }, plan, terms) => {
    if (!isKnown(usable_m3)) return [unknown('reservoir/low-below-fill', { ...terms, needs: usable_m3.needs })]
    const fill = isKnown(tank.fill) ? tank.fill.known.volume_m3 : 0
    const low = isKnown(tank.low) ? tank.low.known.volume_m3 : 0
    return [
      judge('reservoir/low-below-fill', quantity(usable_m3.known, 'm3'), {
        ...terms,
        at: lowPlace(plan),
        must: { min: statedPractice.rows.leastUsable.value },
        slots: { fill: quantity(fill, 'm3'), low: quantity(low, 'm3') },
        levers: line(plan, 'low', { level_m: 0.01, volume_m3: 0.01 * tank.brim_m3 }),
      }),
    ]
  },
}

const drainBack: Check<ReservoirFacts> = {
  id: 'reservoir/drain-back',
  at: 'reservoir/fillLine',
  source: 'derived.volumes',
  judged: ({ tank, afterStop, safeFill }, plan, terms) => {
    const freeboard_m = plan.reservoir?.freeboard_m
    if (!isKnown(afterStop)) return [unknown('reservoir/drain-back', { ...terms, needs: afterStop.needs })]
    if (freeboard_m === undefined)
      return [unknown('reservoir/drain-back', { ...terms, needs: ['reservoir/freeboard'] })]
    const { low_m, high_m, spilt_m3 } = afterStop.known
    const safe = isKnown(safeFill) ? safeFill.known : null
    return [
      judge('reservoir/drain-back', band(low_m, high_m, 'm'), {
        ...terms,
        at: fillPlace(plan),
        // Water that stands at the rim has run over it.
        must: { max: spilt_m3 > 0 ? tank.depth_m - STEP_m : tank.depth_m },
        want: { max: Math.max(0, tank.depth_m - freeboard_m) },
        slots: {
          rim: quantity(tank.depth_m, 'm'),
          line: quantity(safe?.running_m ?? 0, 'm'),
          spilt: quantity(spilt_m3, 'm3'),
        },
        levers: line(plan, 'fill', { level_m: 0.1 * tank.depth_m, volume_m3: 0.1 * tank.brim_m3 }),
      }),
    ]
  },
}

const covered: Check<ReservoirFacts> = {
  id: 'reservoir/pump-covered',
  at: 'reservoir/lowLine',
  source: 'derived.volumes',
  judged: ({ tank, afterStart, safeLow }, plan, terms) => {
    const cover_m = plan.pump?.minimumDepth_m
    if (!isKnown(afterStart)) return [unknown('reservoir/pump-covered', { ...terms, needs: afterStart.needs })]
    if (cover_m === undefined) return [unknown('reservoir/pump-covered', { ...terms, needs: ['pump/minimumDepth'] })]
    const { low_m, high_m } = afterStart.known
    const safe = isKnown(safeLow) ? safeLow.known : null
    return [
      judge('reservoir/pump-covered', band(low_m, high_m, 'm'), {
        ...terms,
        at: lowPlace(plan),
        must: { min: cover_m },
        slots: { cover: quantity(cover_m, 'm'), line: quantity(safe?.stopped_m ?? tank.depth_m, 'm') },
        levers: line(plan, 'low', { level_m: 0.9 * tank.depth_m, volume_m3: 0.9 * tank.brim_m3 }),
      }),
    ]
  },
}

const days: Check<ReservoirFacts> = {
  id: 'reservoir/days',
  at: 'reservoir/container',
  source: 'common-practice',
  judged: ({ days: between, use_m3_d, usable_m3, tank }, plan, terms) => {
    if (!isKnown(between)) return [unknown('reservoir/days', { ...terms, needs: between.needs })]
    const use = isKnown(use_m3_d) ? use_m3_d.known : { low: 0, high: 0 }
    return [
      judge('reservoir/days', between.known, {
        ...terms,
        want: { min: waterPathPractice.rows.topUpDays.value },
        slots: {
          usable: quantity(Math.max(0, isKnown(usable_m3) ? usable_m3.known : 0), 'm3'),
          use: band(use.low, use.high, 'm3_d'),
        },
        levers: [
          ...line(plan, 'fill', { level_m: tank.depth_m, volume_m3: tank.brim_m3 }),
          ...line(plan, 'low', { level_m: STEP_m, volume_m3: LITRE_m3 }),
        ],
      }),
    ]
  },
}

const room: Check<ReservoirFacts> = {
  id: 'reservoir/room',
  at: 'reservoir/container',
  source: 'common-practice',
  applies: (plan) => plan.column?.base?.kind === 'through the lid' || plan.pump?.volume_m3 !== undefined,
  judged: ({ tank }, _plan, terms) => [
    judge('reservoir/room', quantity(tank.standingShare, 'share'), {
      ...terms,
      must: { max: waterPathPractice.rows.footShare.value },
    }),
  ],
}

/** Judges the tank and its two lines. */
export const reservoirFindings = (plan: Plan, facts: Known<ReservoirFacts>): readonly Finding[] => [
  ...checked([fits, order, drainBack, covered, days, room], facts, plan),
  ...lineFindings(plan, facts),
]
