import { type Check, checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { BatteryFacts, EnergyFacts, PowerFacts } from './index.ts'

/** What all of it costs in a month: told, not judged. */
const cost: Check<EnergyFacts> = {
  id: 'power/cost',
  at: 'prices/energyPerKWh',
  source: 'derived.energy',
  judged: (e, _plan, terms) => {
    const energy = { energy: quantity(e.day_J, 'J'), lamps: quantity(e.lamps_J, 'J') }
    if (!isKnown(e.cost)) return [unknown('power/cost', { ...terms, needs: e.cost.needs, slots: energy })]
    const { day_money, month_money, savedMonth_money } = e.cost.known
    return [
      judge('power/cost', quantity(month_money, 'money'), {
        ...terms,
        slots: { ...energy, day: quantity(day_money, 'money'), saved: quantity(savedMonth_money, 'money') },
      }),
    ]
  },
}

/** How long the battery stands in, against the longest cut. */
const lasts: Check<BatteryFacts> = {
  id: 'power/battery',
  at: 'pump/battery',
  source: 'derived.energy',
  judged: (b, plan, terms) => {
    const cut_s = plan.pump?.powerCut_s
    const current = quantity(b.current_A, 'A')
    // Without a cut to come through its hours are told, and there is nothing to hold them against.
    if (cut_s === undefined)
      return [
        judge('power/battery', quantity(b.lasts_s, 's'), {
          ...terms,
          slots: { against: { phrase: 'no-cut' }, current },
        }),
      ]
    const most_As = 2 * (b.size_As ?? 0)
    return [
      judge('power/battery', quantity(b.lasts_s, 's'), {
        ...terms,
        must: { min: cut_s },
        slots: {
          against: {
            phrase: 'cut-takes',
            with: { cut: quantity(cut_s, 's'), needed: quantity(b.needed_As ?? 0, 'As') },
          },
          cut: quantity(cut_s, 's'),
          needed: quantity(b.needed_As ?? 0, 'As'),
          size: quantity(b.size_As ?? 0, 'As'),
          current,
        },
        levers: [
          along('pump/battery/charge', most_As, 'As', 3600),
          ...(plan.pump?.timerOff_s === undefined ? [] : [along('pump/timerOff', 8 * plan.pump.timerOff_s, 's', 300)]),
        ],
      }),
    ]
  },
}

/** Whether the battery can feed the pump at all. */
const voltage: Check<BatteryFacts> = {
  id: 'power/battery-voltage',
  at: 'pump/battery/voltage',
  source: 'common-practice',
  judged: (b, plan, terms) => [
    judge('power/battery-voltage', quantity(b.ways, 'count'), {
      ...terms,
      must: { min: 1 },
      slots: { voltage: quantity(b.voltage_V, 'V'), supply: plan.pump?.supply ?? 'mains' },
      levers: [among('pump/battery/inverter', ['15 %'])],
    }),
  ],
}

export const powerFindings = (plan: Plan, facts: PowerFacts): readonly Finding[] => [
  ...checked([cost], facts.energy, plan),
  ...(facts.battery === null ? [] : checked([lasts, voltage], facts.battery, plan)),
]
