import { type Check, checked } from '../../findings/check.ts'
import type { Finding, FindingSlot, Lever, Wish } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among, atLeast, together } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { safetyTemperatures } from '../../tables/exposure.ts'
import { rootZone } from '../../tables/heat-day.ts'
import { oxygenLevels } from '../../tables/oxygen.ts'
import { placeFindings } from './checks-place.ts'
import type { Cooling } from './cooling-facts.ts'
import type { DayFacts, TrappedFacts } from './index.ts'
import { hasSun } from './sky-facts.ts'

const { wanted, bearable } = rootZone.rows
const legionella = safetyTemperatures.rows['legionella-favourable']

/** Ice is frozen in bottles of a size, and no freezer of a household gives more than this in a night. */
const BOTTLE_kg = 0.5
const MOST_ICE_kg = 6
/** Foam is sold by the centimetre. */
const FOAM_m = 0.01

/** What keeps the sun out, slows the day or lets the pump rest. */
function coolers(plan: Plan): readonly Lever[] {
  const r = plan.reservoir
  const sun = hasSun(plan)
  const { timerOn_s, timerOff_s } = plan.pump ?? {}
  return [
    ...(sun && r?.shaded !== true ? [among('reservoir/shaded', [true])] : []),
    ...(sun && r?.colour !== 'white' ? [among('reservoir/colour', ['white', 'foil'])] : []),
    ...(sun && plan.column?.colour !== 'white' ? [among('column/colour', ['white'])] : []),
    along('reservoir/ice/mass', MOST_ICE_kg, 'kg', BOTTLE_kg, r?.ice?.mass_kg ?? 0),
    ...(timerOn_s !== undefined && timerOff_s !== undefined ? [along('pump/timerOff', 4 * timerOn_s, 's', 300)] : []),
  ]
}

/** Several measures at once, the fewest and cheapest first: what keeps the sun out, then foam or ice each day. */
function allTogether(plan: Plan): readonly Lever[] {
  if (!hasSun(plan)) return []
  const sunOut: readonly Wish[] = [
    { set: 'reservoir/colour', to: plan.reservoir?.colour === 'foil' ? 'foil' : 'white' },
    { set: 'column/colour', to: 'white' },
  ]
  const foam = (thickness_m: number): Wish => ({
    set: 'reservoir/insulation',
    to: atLeast(Math.max(thickness_m, plan.reservoir?.insulation_m ?? 0), 'm', FOAM_m),
  })
  const frozen = (mass_kg: number): Wish => ({
    set: 'reservoir/ice/mass',
    to: atLeast(Math.max(mass_kg, plan.reservoir?.ice?.mass_kg ?? 0), 'kg', BOTTLE_kg),
  })
  const shade: Wish = { set: 'reservoir/shaded', to: true }
  return together([
    [shade, ...sunOut],
    [shade, ...sunOut, foam(2 * FOAM_m)],
    ...[1, 2, 4, 6].map((kg): [Wish, ...Wish[]] => [shade, ...sunOut, frozen(kg)]),
    [shade, ...sunOut, foam(4 * FOAM_m), frozen(MOST_ICE_kg)],
  ])
}

/** How far shade, paint and foam go together, and what is left to do where that is not far enough. */
function reach({ together: all }: DayFacts): FindingSlot {
  if (all === null) return ''
  const phrase = all.highest_C <= wanted.high_C ? 'cooling-all' : 'cooling-all-short'
  const price: FindingSlot =
    all.price_money === null ? '' : { phrase: 'cooling-all-price', with: { price: quantity(all.price_money, 'money') } }
  const means: FindingSlot = { phrase: all.foam ? 'cooling-all-foam' : 'cooling-all-paint' }
  return { phrase, with: { means, reached: quantity(all.highest_C, 'C'), price } }
}

/** What gives most for the money among what has a price, which may be what helps most. */
function bestBuy(d: DayFacts, most: Cooling | undefined): FindingSlot {
  const buys = d.cooling.filter((c) => c.perMoney !== null && c.cooler_K > 0)
  const best = buys.toSorted((a, b) => b.perMoney! - a.perMoney!)[0]
  if (best === undefined) return ''
  const price = quantity(best.price_money ?? 0, 'money')
  if (best === most) return { phrase: 'cooling-buy-same', with: { price } }
  const gain = quantity(best.cooler_K, 'K')
  return { phrase: 'cooling-buy', with: { measure: { phrase: `cooling-${best.id}` }, gain, price } }
}

/** What helps most, whatever it costs, and what does for the money, as the sheet ranks it. */
const best = (d: DayFacts): Readonly<Record<string, FindingSlot>> => {
  const first = d.cooling.toSorted((a, b) => b.cooler_K - a.cooler_K)[0]
  return {
    measure: { phrase: `cooling-${first?.id ?? 'none'}` },
    gain: quantity(Math.max(0, first?.cooler_K ?? 0), 'K'),
    buy: bestBuy(d, first),
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
          all: reach(d),
        },
        levers: () => [...coolers(plan), ...allTogether(plan)],
      }),
    ]
  },
}

/** Coldest hour of the coldest day, from a full tank to a low one. */
const cold: Check<DayFacts> = {
  id: 'water/cold',
  at: 'reservoir',
  source: 'common-practice',
  judged: (d, plan, terms) => {
    const [full, low] = [d.coldFull.course.lowest_C, d.coldLow.course.lowest_C]
    return [
      judge('water/cold', band(Math.min(full, low), Math.max(full, low), 'C'), {
        ...terms,
        must: { min: bearable.low_C },
        want: { min: wanted.low_C },
        slots: {
          hours: quantity(Math.max(d.coldFull.colder_s, d.coldLow.colder_s), 's'),
          limit: quantity(wanted.low_C, 'C'),
        },
        levers: [
          among('reservoir/insulation', ['20 mm', '40 mm']),
          ...(plan.pump?.timerOff_s === undefined ? [] : [along('pump/timerOff', 0, 's', 300)]),
        ],
      }),
    ]
  },
}

/** Time of the day as on a clock. */
const clock = (at_s: number): string => {
  const minutes = Math.round(at_s / 60)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}

/** Ice of the plan against what its tank can take. */
const ice: Check<DayFacts> = {
  id: 'water/ice',
  at: 'reservoir/ice/mass',
  source: 'derived.heat-balance',
  applies: (plan) => (plan.reservoir?.ice?.mass_kg ?? 0) > 0,
  judged: (d, _plan, terms) => {
    const i = d.ice
    if (i === null) return []
    return [
      judge('water/ice', quantity(i.mass_kg, 'kg'), {
        ...terms,
        must: { max: i.bearable_kg },
        want: { max: i.wanted_kg },
        slots: {
          water: quantity(i.water_m3, 'm3'),
          without: quantity(i.without_C, 'C'),
          with: quantity(d.hotLow.course.highest_C, 'C'),
          chilled: quantity(i.chilled_C, 'C'),
          hours: i.at_s.map(clock).join(', '),
          warmest: clock(i.warmestAt_s),
          enough: quantity(i.wanted_kg, 'kg'),
          more: { phrase: i.outweighs ? 'ice-more' : 'ice-much' },
        },
        levers: [along('reservoir/ice/mass', BOTTLE_kg, 'kg', BOTTLE_kg)],
      }),
    ]
  },
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

const dayChecks: readonly Check<DayFacts>[] = [hot, cold, ice, warm, oxygen]

/** Colours and sun that nobody stated: the worst stood in for them, and that is said. */
function assumed(d: DayFacts): readonly Finding[] {
  if (d.assumed.length === 0) return []
  return [unknown('water/assumed', { at: d.assumed[0]!, source: 'common-practice', needs: d.assumed })]
}

/** Verdicts on heat and oxygen; those of a day only where it was reckoned. */
export const waterFindings = (
  plan: Plan,
  day: Known<DayFacts> | null,
  use_m3_d: Known<{ readonly low: number; readonly high: number }>,
  trapped: Known<TrappedFacts>,
): readonly Finding[] => [
  ...(day === null ? [] : [...checked(dayChecks, day, plan), ...(isKnown(day) ? assumed(day.known) : [])]),
  ...placeFindings(plan, { use_m3_d, trapped }),
]
