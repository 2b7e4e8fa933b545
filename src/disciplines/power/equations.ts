import { GRAVITY_m_s2 as g } from '../../tables/constants.ts'

/**
 * Power that goes into the water.
 *
 *   P = ρ g Q H
 *
 * Symbols  P power [W], ρ density [kg/m3], g free fall [m/s2], Q flow [m3/s], H head [m]
 * Valid    steady flow
 * Source   Evans.Pumps, water power
 * Throws   RangeError where density, flow or head is negative
 */
export function hydraulicPower(given: {
  readonly density_kg_m3: number
  readonly flow_m3_s: number
  readonly head_m: number
}): number {
  const { density_kg_m3: ρ, flow_m3_s: Q, head_m: H } = given
  if (!(ρ >= 0 && Q >= 0 && H >= 0)) throw new RangeError(`hydraulicPower: ρ = ${ρ}, Q = ${Q}, H = ${H}`)
  return ρ * g * Q * H
}

/**
 * Efficiency from the wire to the water.
 *
 *   η = η_p η_m
 *
 * Symbols  η whole, η_p pump, η_m motor, shares [1]
 * Valid    product, not mean
 * Source   Evans.Pumps, wire-to-water efficiency
 * Throws   RangeError where a share lies outside of 0 to 1
 */
export function wireToWater(given: { readonly pumpEfficiency: number; readonly motorEfficiency: number }): number {
  const { pumpEfficiency: p, motorEfficiency: m } = given
  if (!(p >= 0 && p <= 1 && m >= 0 && m <= 1)) throw new RangeError(`wireToWater: η_p = ${p}, η_m = ${m}`)
  return p * m
}

/**
 * Power at the plug from the power in the water. For small pumps the printed watts are better: they hardly change with flow.
 *
 *   P_el = P/η
 *
 * Symbols  P_el power at the plug [W], P power in the water [W], η efficiency from wire to water [1]
 * Valid    at the duty for which η holds
 * Source   Evans.Pumps, wire-to-water efficiency
 * Throws   RangeError where the efficiency lies outside of 0 to 1 or is 0
 */
export function plugPower(given: { readonly hydraulic_W: number; readonly efficiency: number }): number {
  const { hydraulic_W: P, efficiency: η } = given
  if (!(P >= 0 && η > 0 && η <= 1)) throw new RangeError(`plugPower: P = ${P}, η = ${η}`)
  return P / η
}

/** One thing that draws power for a part of each day. */
export interface Draw {
  readonly power_W: number
  /** Share of the day that it is on. */
  readonly duty: number
}

/**
 * Energy of a day.
 *
 *   E = Σ P_i d_i 86 400 s
 *
 * Symbols  E energy [J], P_i power [W], d_i share of the day [1]
 * Valid    constant power while on
 * Source   derived.energy, power times time
 * Throws   RangeError where power is negative or a duty lies outside of 0 to 1
 */
export function dailyEnergy({ draws }: { readonly draws: readonly Draw[] }): number {
  return draws.reduce((sum, { power_W: P, duty: d }) => {
    if (!(P >= 0 && d >= 0 && d <= 1)) throw new RangeError(`dailyEnergy: P = ${P}, d = ${d}`)
    return sum + P * d * 86_400
  }, 0)
}

/**
 * Cost of energy.
 *
 *   c = E p
 *
 * Symbols  c cost [money], E energy [J], p price [money/J]
 * Valid    one tariff
 * Source   derived.energy, energy times price
 * Throws   RangeError where the energy is negative
 */
export function energyCost(given: { readonly energy_J: number; readonly price_money_J: number }): number {
  const { energy_J: E, price_money_J: p } = given
  if (!(E >= 0)) throw new RangeError(`energyCost: E = ${E} is negative`)
  return E * p
}

/** A timer's round: on and off time. */
export interface Cycle {
  readonly on_s: number
  readonly off_s: number
}

/**
 * Share of the time that a timer is on.
 *
 *   d = t_on/(t_on + t_off)
 *
 * Symbols  d share [1], t_on and t_off times of one round [s]
 * Valid    rounds much shorter than the day
 * Source   derived.energy, share of time
 * Throws   RangeError where a time is negative or both are zero
 */
export function dutyShare({ on_s: on, off_s: off }: Cycle): number {
  if (!(on >= 0 && off >= 0 && on + off > 0)) throw new RangeError(`dutyShare: t_on = ${on}, t_off = ${off}`)
  return on / (on + off)
}

/**
 * Share of the day that a pump runs where day and night have their own rounds.
 *
 *   d = s d_day + (1 - s) d_night
 *
 * Symbols  d share [1], s share of the day that is lit [1], d_day and d_night duty of the rounds [1]
 * Valid    rounds much shorter than the day
 * Source   derived.energy, weighted share of time
 * Throws   RangeError where the lit share lies outside of 0 to 1
 */
export function dayNightDuty(given: { readonly litShare: number; readonly day: Cycle; readonly night: Cycle }): number {
  const { litShare: s, day, night } = given
  if (!(s >= 0 && s <= 1)) throw new RangeError(`dayNightDuty: s = ${s} lies outside of 0 to 1`)
  return s * dutyShare(day) + (1 - s) * dutyShare(night)
}

/**
 * Energy that a timer saves in a day against running all the time.
 *
 *   E = P (1 - d) 86 400 s
 *
 * Symbols  E saved [J], P power [W], d share of time on [1]
 * Valid    starts cost nothing
 * Source   derived.energy, power times time off
 * Throws   RangeError where power is negative or the duty lies outside of 0 to 1
 */
export function dutySaving(given: Draw): number {
  return dailyEnergy({ draws: [{ power_W: given.power_W, duty: 1 }] }) - dailyEnergy({ draws: [given] })
}

/**
 * Current that a battery gives for a load.
 *
 *   I = P/(V η)
 *
 * Symbols  I current [A], P power of the load [W], V battery voltage [V], η efficiency of the inverter, 1 without one [1]
 * Valid    voltage taken as constant
 * Source   derived.energy, power over voltage
 * Throws   RangeError where voltage or efficiency is not positive or the load negative
 */
export function batteryCurrent(given: {
  readonly load_W: number
  readonly battery_V: number
  readonly efficiency: number
}): number {
  const { load_W: P, battery_V: V, efficiency: η } = given
  if (!(P >= 0 && V > 0 && η > 0 && η <= 1)) throw new RangeError(`batteryCurrent: P = ${P}, V = ${V}, η = ${η}`)
  return P / (V * η)
}

/**
 * Charge that a cut in power takes from the battery.
 *
 *   Q = I d t
 *
 * Symbols  Q charge [A s], I current while on [A], d share of time on [1], t length of the cut [s]
 * Valid    constant current while on
 * Source   derived.energy, current times time
 * Throws   RangeError where a symbol is negative or the duty is above 1
 */
export function chargeNeeded(given: {
  readonly current_A: number
  readonly duty: number
  readonly time_s: number
}): number {
  const { current_A: I, duty: d, time_s: t } = given
  if (!(I >= 0 && d >= 0 && d <= 1 && t >= 0)) throw new RangeError(`chargeNeeded: I = ${I}, d = ${d}, t = ${t}`)
  return I * d * t
}

/**
 * How long a battery keeps the pump going.
 *
 *   t = u Q/(I d)
 *
 * Symbols  t time [s], Q printed charge [A s], u share that may be used [1], I current while on [A], d share of time on [1]
 * Valid    healthy battery near 20 °C, drawn slowly: printed charge of lead batteries is meant for 20 hours
 * Source   derived.energy, charge over current
 * Throws   RangeError where the drawn current is not positive or a share lies outside of 0 to 1
 */
export function batteryTime(given: {
  readonly charge_As: number
  readonly usableShare: number
  readonly current_A: number
  readonly duty: number
}): number {
  const { charge_As: Q, usableShare: u, current_A: I, duty: d } = given
  if (!(Q >= 0 && u >= 0 && u <= 1 && d <= 1 && I * d > 0))
    throw new RangeError(`batteryTime: Q = ${Q}, u = ${u}, I = ${I}, d = ${d}`)
  return (u * Q) / (I * d)
}

/**
 * Printed charge of the battery to buy.
 *
 *   Q = Q_need/u
 *
 * Symbols  Q printed charge [A s], Q_need charge that the cut takes [A s], u share that may be used [1]
 * Valid    healthy battery near 20 °C; cold and age ask for more
 * Source   derived.energy, charge over usable share
 * Throws   RangeError where the charge is negative or the share lies outside of 0 to 1 or is 0
 */
export function batterySize(given: { readonly needed_As: number; readonly usableShare: number }): number {
  const { needed_As: Q, usableShare: u } = given
  if (!(Q >= 0 && u > 0 && u <= 1)) throw new RangeError(`batterySize: Q_need = ${Q}, u = ${u}`)
  return Q / u
}

/**
 * Rating of a generator or inverter that runs all loads and starts the hardest motor.
 *
 *   S = max(Σ P_i/φ_i, Σ P_i/φ_i + (k - 1) P_m/φ_m over each motor m)/r
 *
 * Symbols  S rating [VA], P_i running power [W], φ_i power factor [1], k start over running current [1], r share of the
 *          rating to load [1]
 * Valid    motors start one after the other
 * Source   common-practice, running sum plus the hardest start
 * Throws   RangeError where a power is negative, or a factor or share not positive
 */
export function generatorSize(given: {
  readonly loads: readonly { readonly power_W: number; readonly powerFactor: number; readonly startRatio: number }[]
  readonly loadShare: number
}): number {
  const { loads, loadShare: r } = given
  if (!(r > 0 && r <= 1)) throw new RangeError(`generatorSize: r = ${r} lies outside of 0 to 1`)
  const apparent = loads.map(({ power_W: P, powerFactor: φ, startRatio: k }) => {
    if (!(P >= 0 && φ > 0 && φ <= 1 && k >= 1)) throw new RangeError(`generatorSize: P = ${P}, φ = ${φ}, k = ${k}`)
    return { running: P / φ, extra: ((k - 1) * P) / φ }
  })
  const running = apparent.reduce((sum, load) => sum + load.running, 0)
  return (running + Math.max(0, ...apparent.map((load) => load.extra))) / r
}
