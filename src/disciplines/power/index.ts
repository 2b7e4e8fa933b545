import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { batteries, supplies, supplyVoltages } from '../../tables/power-supply.ts'
import {
  batteryCurrent,
  batterySize,
  batteryTime,
  chargeNeeded,
  dailyEnergy,
  dutySaving,
  dutyShare,
  energyCost,
  generatorSize,
} from './equations.ts'

const DAY_s = 86_400
/** A twelfth of a year. */
const MONTH_d = 365.2425 / 12
const KWH_J = 3.6e6

export interface EnergyFacts {
  /** Pumps and lamps of all towers. */
  readonly day_J: number
  readonly pumps_J: number
  readonly lamps_J: number
  /** Share of the time that the pump runs. */
  readonly duty: number
  /** What the timer saves in a day against running always. */
  readonly saved_J: number
  readonly cost: Known<{ readonly day_money: number; readonly month_money: number; readonly savedMonth_money: number }>
  /** Heat that all of it leaves in a closed room, on the mean of the day. */
  readonly heat_W: number
  /** Rating of a generator that starts and runs the pumps and lamps. */
  readonly generator_VA: number
}

export interface BatteryFacts {
  readonly voltage_V: number
  /** From the battery, while the pump runs. */
  readonly current_A: number
  readonly duty: number
  readonly lasts_s: number
  /** What a cut takes, and the charge printed on the battery to buy; null without a length of the cut. */
  readonly needed_As: number | null
  readonly size_As: number | null
  /** Whether it can feed the pump: by its own voltage, by an inverter, or by a stand-by pump of its own. */
  readonly ways: number
  readonly inverter: boolean
}

export interface PowerFacts {
  readonly energy: Known<EnergyFacts>
  /** Null where the plan has no battery. */
  readonly battery: Known<BatteryFacts> | null
}

export function pumpDuty(plan: Plan): number {
  const { timerOn_s: on_s, timerOff_s: off_s } = plan.pump ?? {}
  return on_s === undefined || off_s === undefined || on_s + off_s <= 0 ? 1 : dutyShare({ on_s, off_s })
}

function energyFacts(plan: Plan): Known<EnergyFacts> {
  const given = needed({ power_W: ['pump/power', plan.pump?.power_W] })
  if (!isKnown(given)) return given
  const columns = plan.towers?.count ?? 1
  const pumps = Math.ceil(columns / (plan.towers?.perPump ?? columns))
  const duty = pumpDuty(plan)
  const pump = { power_W: given.known.power_W * pumps, duty }
  const { count: lamps = 0, power_W: lamp_W = 0, hours_s = 0 } = plan.lamps ?? {}
  const lamp = { power_W: lamps * lamp_W, duty: hours_s / DAY_s }
  const [pumps_J, lamps_J] = [dailyEnergy({ draws: [pump] }), dailyEnergy({ draws: [lamp] })]
  const day_J = dailyEnergy({ draws: [pump, lamp] })
  const saved_J = dutySaving(pump)
  const price = plan.prices?.energyPerKWh
  const cost = (energy_J: number) => energyCost({ energy_J, price_money_J: (price ?? 0) / KWH_J })
  const { 'motor-power-factor': factor, 'start-over-running': start, 'generator-share': share } = supplies.rows
  const loads = [
    ...Array.from({ length: pumps }, () => ({
      power_W: given.known.power_W,
      powerFactor: factor.low,
      startRatio: start.high,
    })),
    { power_W: lamp.power_W, powerFactor: factor.high, startRatio: 1 },
  ]
  return {
    known: {
      day_J,
      pumps_J,
      lamps_J,
      duty,
      saved_J,
      cost:
        price === undefined
          ? { needs: ['prices/energyPerKWh'] }
          : {
              known: {
                day_money: cost(day_J),
                month_money: cost(day_J) * MONTH_d,
                savedMonth_money: cost(saved_J) * MONTH_d,
              },
            },
      heat_W: day_J / DAY_s,
      generator_VA: generatorSize({ loads, loadShare: share.low }),
    },
  }
}

function batteryFacts(plan: Plan): Known<BatteryFacts> {
  const { battery, supply, power_W } = plan.pump ?? {}
  const given = needed({
    voltage_V: ['pump/battery/voltage', battery?.voltage_V],
    charge_As: ['pump/battery/charge', battery?.charge_As],
  })
  if (!isKnown(given)) return given
  const { voltage_V, charge_As } = given.known
  const lost = battery?.inverter ?? 0
  const own_A = battery?.current_A
  if (own_A === undefined && power_W === undefined) return { needs: ['pump/battery/current'] }
  if (own_A === undefined && supply === undefined) return { needs: ['pump/supply'] }
  const current_A = own_A ?? batteryCurrent({ load_W: power_W ?? 0, battery_V: voltage_V, efficiency: 1 - lost })
  const duty = pumpDuty(plan)
  if (!(current_A * duty > 0)) return { needs: ['pump/timerOn'] }
  const usableShare = batteries.rows['lead-acid'].usableShare
  const cut_s = plan.pump?.powerCut_s
  const needed_As = cut_s === undefined ? null : chargeNeeded({ current_A, duty, time_s: cut_s })
  const takes = supplyVoltages.rows[supply ?? 'mains']
  const fits = voltage_V >= takes.low_V && voltage_V <= takes.high_V
  return {
    known: {
      voltage_V,
      current_A,
      duty,
      lasts_s: batteryTime({ charge_As, usableShare, current_A, duty }),
      needed_As,
      size_As: needed_As === null ? null : batterySize({ needed_As, usableShare }),
      ways: [own_A !== undefined, lost > 0, fits].filter(Boolean).length,
      inverter: lost > 0,
    },
  }
}

/** What the towers draw, what it costs, and how long a battery stands in. */
export const powerFacts = (plan: Plan): PowerFacts => ({
  energy: energyFacts(plan),
  battery: plan.pump?.battery === undefined ? null : batteryFacts(plan),
})
