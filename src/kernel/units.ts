/**
 * The one unit of each dimension inside the engine. The suffix of a name is its unit: `bore_m`, `flow_m3_s`.
 * Coherent SI with three stated exceptions: °C for temperature, days for calendars, a currency for money.
 */
export const units = {
  m: 'length, head of water',
  m2: 'area',
  m3: 'volume',
  m4: 'second moment of area',
  m_s: 'speed',
  m_s2: 'acceleration',
  m3_s: 'flow',
  m2_s: 'kinematic viscosity, film flow per width',
  s: 'time',
  d: 'calendar time',
  kg: 'mass',
  kg_m: 'mass per length',
  kg_m2: 'load per area',
  kg_m3: 'density',
  kg_m_s: 'film flow per width',
  kg_mol: 'molar mass',
  J_mol: 'molar enthalpy',
  kg_s: 'mass flow',
  N: 'force',
  N_m: 'moment, surface tension',
  Pa: 'pressure, stress',
  Pa_s: 'dynamic viscosity',
  Pa_K: 'vapour pressure per temperature, psychrometric constant',
  Pa_m: 'pressure per depth',
  C: 'temperature',
  K: 'temperature difference',
  mol_m3: 'amount concentration (mmol/L)',
  eq_m3: 'concentration of charge (meq/L)',
  g_m3: 'mass concentration (mg/L)',
  g_m3_s: 'use of a dissolved substance',
  S_m: 'conductivity',
  S_m2_mol: 'molar conductivity',
  umol_m2_s: 'photon flux density',
  umol_s: 'photon flux',
  umol_J: 'photon efficacy',
  mol_m2_d: 'daily light',
  W: 'power',
  VA: 'apparent power',
  dB: 'sound level, weighted as ears hear it',
  W_m2: 'irradiance',
  W_m2_K: 'heat transfer',
  W_m2_K4: 'heat radiation',
  W_m_K: 'heat conduction',
  W_K: 'heat conductance',
  m2_K_W: 'thermal resistance',
  J_K: 'heat capacity',
  J: 'energy',
  J_kg: 'latent heat',
  J_kg_K: 'specific heat',
  V: 'voltage',
  A: 'current',
  As: 'charge',
  rad: 'angle',
  rad_s: 'angular speed',
  money: 'a price in the currency of the plan',
  money_m: 'price per length',
  money_J: 'price per energy',
  per_m: 'curvature, count per length',
  per_m2: 'count per area',
  per_K: 'thermal expansion',
  per_s: 'rate',
  per_d: 'rate per day',
  kg_d: 'mass per day',
  kg_m2_d: 'water use per area per day (mm/d)',
  m3_d: 'water use per day',
  count: 'number of things',
  share: 'share of a whole, 0 to 1',
  '1': 'dimensionless number or share (0 to 1)',
} as const

export type Unit = keyof typeof units

/** A number with its unit, or a band of it where an input is a band. Plain data. */
export type Quantity =
  | { readonly unit: Unit; readonly value: number }
  | { readonly unit: Unit; readonly low: number; readonly high: number }

/** A quantity from a number. */
export const quantity = (value: number, unit: Unit): Quantity => ({ unit, value })

/** A quantity that is only known to lie in a band. */
export const band = (low: number, high: number, unit: Unit): Quantity => ({ unit, low, high })

/** Lowest and highest value of a quantity; the same number twice where it is no band. */
export const ends = (q: Quantity): readonly [number, number] => ('value' in q ? [q.value, q.value] : [q.low, q.high])
