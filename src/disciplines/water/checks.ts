import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { safetyTemperatures } from '../../tables/exposure.ts'
import { rootZone } from '../../tables/heat-day.ts'
import { oxygenLevels } from '../../tables/oxygen.ts'
import type { DayFacts } from './index.ts'
import { isOutdoors } from './sky-facts.ts'

const { wanted, bearable, frost } = rootZone.rows
const legionella = safetyTemperatures.rows['legionella-favourable']

/** What keeps the sun out, slows the day or lets the pump rest. */
function coolers(plan: Plan): readonly Lever[] {
  const r = plan.reservoir
  const sun = isOutdoors(plan)
  const { timerOn_s, timerOff_s } = plan.pump ?? {}
  return [
    ...(sun && r?.shaded !== true ? [among('reservoir/shaded', [true])] : []),
    ...(sun && r?.colour !== 'white' ? [among('reservoir/colour', ['white', 'foil'])] : []),
    ...(sun && plan.column?.colour !== 'white' ? [among('column/colour', ['white'])] : []),
    ...(timerOn_s !== undefined && timerOff_s !== undefined ? [along('pump/timerOff', 4 * timerOn_s, 's', 300)] : []),
  ]
}

const best = (d: DayFacts): Readonly<Record<string, FindingSlot>> => {
  const first = d.cooling[0]
  return {
    measure: { phrase: `cooling-${first?.id ?? 'none'}` },
    gain: quantity(Math.max(0, first?.cooler_K ?? 0), 'K'),
  }
}

/** Warmest hour of the hot day, from a full tank to a low one. */
const hot: Check<DayFacts> = {
  id: 'water/hot',
  at: 'reservoir',
  source: 'common-practice',
  judged: (d, plan, terms) => {
    const [full, low] = [d.hotFull.course, d.hotLow.course]
    return [
      judge('water/hot', band(Math.min(full.highest_C, low.highest_C), Math.max(full.highest_C, low.highest_C), 'C'), {
        ...terms,
        must: { max: bearable.high_C },
        want: { max: wanted.high_C },
        slots: {
          at: quantity(low.highestAt_s, 's'),
          hours: quantity(d.hotLow.warmer_s, 's'),
          limit: quantity(wanted.high_C, 'C'),
          ...best(d),
        },
        levers: coolers(plan),
      }),
    ]
  },
}

/** Coldest hour of the coldest day, with the tank low. */
const cold: Check<DayFacts> = {
  id: 'water/cold',
  at: 'reservoir',
  source: 'common-practice',
  judged: (d, plan, terms) => [
    judge('water/cold', quantity(d.cold.course.lowest_C, 'C'), {
      ...terms,
      must: { min: bearable.low_C },
      want: { min: wanted.low_C },
      slots: { hours: quantity(d.cold.colder_s, 's'), limit: quantity(wanted.low_C, 'C') },
      levers: [
        among('reservoir/insulation', ['20 mm', '40 mm']),
        ...(plan.pump?.timerOff_s === undefined ? [] : [along('pump/timerOff', 0, 's', 300)]),
      ],
    }),
  ],
}

/** The band in which the bacterium of warm water grows: authorities decide, rootfall only says so. */
const warm: Check<DayFacts> = {
  id: 'water/legionella-warm',
  at: 'reservoir',
  source: 'CDC.Legionella',
  safety: true,
  judged: (d, plan, terms) => [
    judge('water/legionella-warm', quantity(Math.max(d.hotFull.course.highest_C, d.hotLow.course.highest_C), 'C'), {
      ...terms,
      want: { max: legionella.low_C },
      slots: { hours: quantity(d.hotLow.warmer_s, 's'), high: quantity(legionella.high_C, 'C') },
      levers: coolers(plan),
    }),
  ],
}

/** Oxygen at the foot of the column when the solution is warmest and plants are grown. */
const oxygen: Check<DayFacts> = {
  id: 'water/oxygen',
  at: 'reservoir/airStone',
  source: 'Goto1996',
  judged: (d, plan, terms) => {
    if (!isKnown(d.oxygen)) return [unknown('water/oxygen', { ...terms, needs: d.oxygen.needs })]
    const o = d.oxygen.known
    const stone = plan.reservoir?.airStone_m3_s ?? 0
    const most_m3_s = 0.0002
    return [
      judge('water/oxygen', band(o.foot_g_m3.low, o.foot_g_m3.high, 'g_m3'), {
        ...terms,
        must: { min: oxygenLevels.rows['lettuce-unhurt'].level_g_m3 },
        want: { min: oxygenLevels.rows.wanted.level_g_m3 },
        slots: {
          saturation: quantity(o.saturation_g_m3, 'g_m3'),
          sea: quantity(o.saturationAtSea_g_m3, 'g_m3'),
          temperature: quantity(o.temperature_C, 'C'),
        },
        levers: [...coolers(plan), along('reservoir/airStone', most_m3_s, 'm3_s', most_m3_s / 24, stone)],
      }),
    ]
  },
}

const dayChecks: readonly Check<DayFacts>[] = [hot, cold, warm, oxygen]

/** Colours and sun that nobody stated: the worst stood in for them, and that is said. */
function assumed(d: DayFacts): readonly Finding[] {
  if (d.assumed.length === 0) return []
  return [unknown('water/assumed', { at: d.assumed[0]!, source: 'common-practice', needs: d.assumed })]
}

/** Air that may freeze what stands in hose and pockets. */
function freezing(plan: Plan): readonly Finding[] {
  const airLow_C = plan.place?.airLow_C
  if (airLow_C === undefined || !isOutdoors(plan)) return []
  return [
    judge('water/frost', quantity(airLow_C, 'C'), {
      at: 'place/airLow',
      source: 'common-practice',
      must: { min: frost.low_C },
      want: { min: frost.high_C },
    }),
  ]
}

/** Water that plants give to the air of a room in a day; for the reader to weigh, since rooms differ. */
function roomAir(plan: Plan, use: Known<{ readonly low: number; readonly high: number }>): readonly Finding[] {
  if (isOutdoors(plan) || !isKnown(use)) return []
  const columns = plan.towers?.count ?? 1
  const tanks = Math.ceil(columns / (plan.towers?.perPump ?? columns))
  return [
    judge('water/room-air', band(use.known.low * tanks, use.known.high * tanks, 'm3_d'), {
      at: 'crops',
      source: 'common-practice',
    }),
  ]
}

/** Verdicts on heat and oxygen; those of a day only where it was reckoned. */
export const waterFindings = (
  plan: Plan,
  day: Known<DayFacts> | null,
  use_m3_d: Known<{ readonly low: number; readonly high: number }>,
): readonly Finding[] => [
  ...(day === null ? [] : [...checked(dayChecks, day, plan), ...(isKnown(day) ? assumed(day.known) : [])]),
  ...freezing(plan),
  ...roomAir(plan, use_m3_d),
]
