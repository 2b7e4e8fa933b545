import {
  type Equilibrium,
  equilibria,
  type IonPair,
  ionPairs,
  type Mineral,
  minerals,
} from '../../tables/equilibria.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { kelvin } from './equations-solvent.ts'

/**
 * Equilibrium constant at a temperature.
 *
 *   log10 K = a1 + a2 T + a3/T + a4 log10 T + a5/T²
 *
 * Symbols  K equilibrium constant [mol/kg, atm for gases], T temperature [K]
 * Valid    0 to 50 °C; citric and phthalic acid, silica and the third step of phosphoric acid at 25 °C only
 * Source   PlummerBusenberg1982; phosphoric BatesAcree1945, boric Owen1934, others as each row says
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function equilibriumLogK(given: { readonly equilibrium: Equilibrium; readonly temperature_C: number }): number {
  const { a1, a2, a3, a4, a5 } = equilibria.rows[given.equilibrium]
  const T = kelvin(given.temperature_C)
  return a1 + a2 * T + a3 / T + a4 * Math.log10(T) + a5 / (T * T)
}

/** van 't Hoff with a constant enthalpy. */
function shifted(logK: number, enthalpy_J_mol: number, temperature_C: number): number {
  const { gasConstant, referenceTemperature } = feedConstants.rows
  const inverse = 1 / kelvin(referenceTemperature.value) - 1 / kelvin(temperature_C)
  return logK + (enthalpy_J_mol / (Math.LN10 * gasConstant.value)) * inverse
}

/**
 * Formation constant of an ion pair at a temperature.
 *
 *   log10 K = log10 K25 + ΔH/(R ln 10) (1/298.15 - 1/T)
 *
 * Symbols  K formation constant [kg/mol], ΔH enthalpy [J/mol], R gas constant [J/(mol K)], T temperature [K]
 * Valid    0 to 50 °C
 * Source   USGS.wateq4f.dat
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function pairLogK(given: { readonly pair: IonPair; readonly temperature_C: number }): number {
  const { logK, enthalpy_J_mol } = ionPairs.rows[given.pair]
  return shifted(logK, enthalpy_J_mol, given.temperature_C)
}

/**
 * Solubility product of a solid at a temperature.
 *
 *   gypsum and calcite as equilibriumLogK, others log10 K = log10 K25 + ΔH/(R ln 10) (1/298.15 - 1/T)
 *
 * Symbols  K solubility product [mol/kg to the number of ions], ΔH enthalpy of dissolution [J/mol], T temperature [K]
 * Valid    0 to 50 °C; calcium and magnesium phosphates at 25 °C, held at other temperatures
 * Source   USGS.minteq.v4.dat; gypsum USGS.wateq4f.dat, calcite PlummerBusenberg1982, struvite Ronteltap2007
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function mineralLogK(given: { readonly mineral: Mineral; readonly temperature_C: number }): number {
  const { mineral, temperature_C } = given
  if (mineral === 'gypsum' || mineral === 'calcite') return equilibriumLogK({ equilibrium: mineral, temperature_C })
  const { logK, enthalpy_J_mol } = minerals.rows[mineral]
  return shifted(logK, enthalpy_J_mol, temperature_C)
}
