import { type Ion, ions } from '../../tables/ions.ts'
import { feedConstants, solvent } from '../../tables/solvent.ts'
import { kelvin, permittivity, solventViscosity } from './equations-solvent.ts'
import { positive } from './impossible.ts'
import type { Speciation } from './speciation.ts'

/** Ionic strength up to which the conductivity is trusted; a stock bottle lies far outside. */
export const CONDUCTIVITY_VALID = {
  ionicStrength_mol_m3: { max: 50 },
  /** Calcium and magnesium that meet as much sulfate: 6 % low at 10 mmol/L of magnesium sulfate. */
  bivalentSulfate_mol_m3: { max: 6 },
} as const

/**
 * Limiting conductivity of an ion at a temperature, per mole of charge.
 *
 *   λ(t) = λ25 p(t)/p(25), p = a t² + b t + c; without a fit λ25 η(25)/η(t)
 *
 * Symbols  λ limiting conductivity [S m²/mol], t temperature [°C], η viscosity of water [Pa s]
 * Valid    0 to 40 °C
 * Source   CRC.conductivity; change with temperature McCleskey2012
 * Throws   RangeError where the temperature is not above absolute zero
 */
export function limitingConductivity(given: { readonly ion: Ion; readonly temperature_C: number }): number {
  const { perCharge_S_m2_mol, a, b, c } = ions.rows[given.ion]
  kelvin(given.temperature_C)
  const [t, t25] = [given.temperature_C, feedConstants.rows.referenceTemperature.value]
  if (a === null || b === null || c === null) {
    const thinner = solventViscosity({ temperature_C: t25 }) / solventViscosity({ temperature_C: t })
    return perCharge_S_m2_mol * thinner
  }
  return (perCharge_S_m2_mol * (a * t * t + b * t + c)) / (a * t25 * t25 + b * t25 + c)
}

/** Coefficients of relaxation, electrophoresis and screening at a temperature. */
function slopes(temperature_C: number) {
  const T = kelvin(temperature_C)
  const εT = permittivity({ temperature_C }) * T
  const η_poise = solventViscosity({ temperature_C }) * 10
  const { relaxation, electrophoresis, screening, ionSize } = solvent.rows
  return {
    B1: relaxation.value / εT ** 1.5,
    // S cm²/mol in the handbook's form
    B2: electrophoresis.value / (η_poise * Math.sqrt(εT)) / 1e4,
    Ba: (screening.value / Math.sqrt(εT)) * ionSize.value,
  }
}

/**
 * Electrical conductivity of a solution from its ions and charged pairs.
 *
 *   κ = Σ |z| c λ',  λ' = λ - [B1 z z' q/(1 + √q) λ + B2 z] √I/(1 + B a √I)
 *   q = z+ z- (l+ + l-) / [(z+ + z-)(z+ l- + z- l+)]
 *
 * Symbols  κ conductivity [S/m], c concentration [mol/m³], z charge number, z' mean charge of the other sign,
 *          z± and l± means over cations and anions, λ limiting conductivity per charge [S m²/mol],
 *          I ionic strength [mol/L], B1, B2, B relaxation, electrophoresis and screening, a size of an ion [Å]
 * Valid    I up to 0.05 mol/L, 0 to 40 °C; 3 % for feeds, 1 % for simple salts below 0.02 eq/L;
 *          Ca + Mg that meet as much SO4 up to 6 mmol/L: MgSO4 alone reads 1 % low at 2 and 6 % low at 10 mmol/L
 * Source   RobinsonStokes1959, for mixed charges Onsager1927
 * Throws   RangeError where ions of one sign are absent, or the temperature is not above absolute zero
 * Why      without pairs a feed would read 5 to 8 % too high; the pair MgSO4 has log K 2.37 of the same database as
 *          all others: 2.26 would bring MgSO4 alone within 2 %, and leave a fifth too little of the pair in a feed
 */
export function conductivity(
  given: Pick<Speciation, 'species_mol_m3' | 'ionicStrength_mol_m3' | 'temperature_C'>,
): number {
  const { temperature_C } = given
  const present = (Object.keys(ions.rows) as Ion[]).flatMap((ion) => {
    const c = (given.species_mol_m3 as Readonly<Record<string, number | undefined>>)[ion] ?? 0
    const charge = ions.rows[ion].charge
    return c > 0 ? [{ charge, z: Math.abs(charge), c, λ: limitingConductivity({ ion, temperature_C }) }] : []
  })
  const side = (sign: number) => {
    let [eq, squares, carried] = [0, 0, 0]
    for (const { charge, z, c, λ } of present)
      if (charge * sign > 0) {
        eq += c * z
        squares += c * z * z
        carried += c * z * λ
      }
    return { z: squares / eq, l: carried / eq }
  }
  const [plus, minus] = [side(1), side(-1)]
  if (!(plus.z > 0 && minus.z > 0)) throw new RangeError('conductivity: z+ or z- is missing, ions of one sign only')
  const { B1, B2, Ba } = slopes(temperature_C)
  const q = (plus.z * minus.z * (plus.l + minus.l)) / ((plus.z + minus.z) * (plus.z * minus.l + minus.z * plus.l))
  const s = Math.sqrt(given.ionicStrength_mol_m3 / 1000)
  const brake = s / (1 + Ba * s)
  return present.reduce((κ, { charge, z, c, λ }) => {
    const other = charge > 0 ? minus.z : plus.z
    return κ + z * c * (λ - ((B1 * z * other * q * λ) / (1 + Math.sqrt(q)) + B2 * z) * brake)
  }, 0)
}

/**
 * Conductivity at 25 °C from a reading at another temperature.
 *
 *   κ25 = κ / (1 + α (t - 25))
 *
 * Symbols  κ reading without compensation [S/m], κ25 at 25 °C [S/m], α coefficient [1/K], t temperature [°C]
 * Valid    10 to 35 °C; α 0.019 for feed within 1 % of the reading at 15 °C; pens use 0.019 to 0.02
 * Source   Hayashi2004
 * Throws   RangeError where the compensation is not above zero
 */
export function compensatedConductivity(given: {
  readonly reading_S_m: number
  readonly temperature_C: number
  readonly coefficient_per_K: number
}): number {
  const { reading_S_m: κ, temperature_C: t, coefficient_per_K: α } = given
  const factor = 1 + α * (t - feedConstants.rows.referenceTemperature.value)
  positive('compensatedConductivity', { '1 + α (t - 25)': factor })
  return κ / factor
}

/**
 * What a pen without compensation reads, from the conductivity at 25 °C.
 *
 *   κ = κ25 (1 + α (t - 25))
 *
 * Symbols  κ25 conductivity at 25 °C [S/m], α coefficient [1/K], t temperature [°C]
 * Valid    as compensatedConductivity, of which it is the inverse
 * Source   Hayashi2004
 * Throws   RangeError where the compensation is not above zero
 */
export function rawConductivity(given: {
  readonly at25_S_m: number
  readonly temperature_C: number
  readonly coefficient_per_K: number
}): number {
  const { at25_S_m: κ25, temperature_C: t, coefficient_per_K: α } = given
  const factor = 1 + α * (t - feedConstants.rows.referenceTemperature.value)
  positive('rawConductivity', { '1 + α (t - 25)': factor })
  return κ25 * factor
}
