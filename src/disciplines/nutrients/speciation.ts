import type { Component } from '../../tables/components.ts'
import type { IonPair } from '../../tables/equilibria.ts'
import { type Amounts, named } from './composition.ts'
import {
  constantsAt,
  heldCharges,
  inert,
  meanCharges,
  namedCharges,
  pairs,
  placesOf,
  prepared,
  type Settled,
  settled,
} from './settle.ts'

/** Things dissolved in water: free ions, molecules and pairs. */
export type Species =
  | Exclude<Component, 'unmeasured' | 'citrate' | 'phthalate'>
  | IonPair
  | ('H' | 'OH' | 'HSO4' | 'HPO4' | 'PO4' | 'H3PO4' | 'CO3' | 'CO2' | 'NH3' | 'BO4H4' | 'H3SiO4')

export interface Conditions {
  readonly temperature_C: number
  /** Partial pressure of carbon dioxide that the solution stands open to; null where it is closed. */
  readonly carbonDioxide_Pa: number | null
}

export interface Speciation {
  readonly pH: number
  readonly temperature_C: number
  readonly species_mol_m3: Readonly<Partial<Record<Species, number>>>
  readonly ionicStrength_mol_m3: number
  /** Sum of all charges; zero where the pH is the solution's own. */
  readonly netCharge_mol_m3: number
  /** Mean charge of each component at this pH, pairs counted with the ligand they hold. */
  readonly meanCharge: Readonly<Record<Component, number>>
  /** Charge that no component brings: hydrogen less hydroxide, and carbonate that the air holds. */
  readonly heldCharge_mol_m3: number
}

function checked(amounts: Amounts): void {
  for (const id of named(amounts)) {
    const amount = amounts[id]!
    if (!Number.isFinite(amount) || (amount < 0 && id !== 'unmeasured'))
      throw new RangeError(`speciation: ${id} of ${amount} mol/m³`)
  }
}

/** Sum of all charges of a solution against pH; each answer starts from the one before. */
export function chargeAgainstPh(given: Conditions & { readonly amounts: Amounts }): (pH: number) => number {
  checked(given.amounts)
  const constants = constantsAt(given.temperature_C)
  const solution = prepared(given.amounts, constants, given.carbonDioxide_Pa)
  const listed = named(given.amounts)
  const places = placesOf(listed)
  let last: Settled | undefined
  return (pH) => {
    last = settled(solution, pH, last)
    return netCharge(given.amounts, listed, places, last)
  }
}

/** Sum of all charges at a pH against what is dissolved, and the mean charges; each answer starts from the last. */
export function chargeAgainstAmounts(given: Conditions & { readonly pH: number }): (amounts: Amounts) => {
  readonly netCharge_mol_m3: number
  readonly meanCharge: () => Speciation['meanCharge']
} {
  const constants = constantsAt(given.temperature_C)
  let last: Settled | undefined
  return (amounts) => {
    checked(amounts)
    const now = settled(prepared(amounts, constants, given.carbonDioxide_Pa), given.pH, last)
    last = now
    const listed = named(amounts)
    return {
      netCharge_mol_m3: netCharge(amounts, listed, placesOf(listed), now),
      meanCharge: () => namedCharges(now),
    }
  }
}

function netCharge(amounts: Amounts, listed: readonly Component[], places: readonly number[], at: Settled): number {
  const { water, air } = heldCharges(at)
  const mean = meanCharges(at)
  let sum = water + air
  for (let i = 0; i < listed.length; i++) {
    const id = listed[i]!
    if (!at.open || id !== 'HCO3') sum += mean[places[i]!]! * amounts[id]!
  }
  return sum
}

function speciesOf(at: Settled, amounts: Amounts, Kw: number): Speciation['species_mol_m3'] {
  const species: Partial<Record<Species, number>> = {}
  for (const id of inert) if (id !== 'unmeasured' && amounts[id]) species[id as Species] = amounts[id]
  const { ratio, aH, γ } = at
  const [Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3] = Array.from(at.free, (c) => c * 1000) as [
    ...[number, number, number, number, number, number, number, number, number],
  ]
  pairs.forEach(({ id }, i) => {
    species[id] = at.pairs[i]! * 1000
  })
  const [B, Si] = [(amounts.H3BO3 ?? 0) / (1 + ratio.boric), (amounts.H4SiO4 ?? 0) / (1 + ratio.silicic)]
  return {
    ...species,
    ...{ Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3 },
    ...{ H: (aH / γ[1]!) * 1000, OH: (Kw / aH / γ[1]!) * 1000, HSO4: SO4 * ratio.hso4, NH3: NH4 * ratio.nh3 },
    ...{ H3PO4: HPO4 * ratio.h3po4, PO4: HPO4 * ratio.po4, CO2: HCO3 * ratio.co2, CO3: HCO3 * ratio.co3 },
    ...{ H3BO3: B, BO4H4: B * ratio.boric, H4SiO4: Si, H3SiO4: Si * ratio.silicic },
  }
}

/** What is dissolved in a solution at a given pH: protons, pairs and activities agree with each other. */
export function speciation(given: Conditions & { readonly amounts: Amounts; readonly pH: number }): Speciation {
  const { amounts, pH, temperature_C, carbonDioxide_Pa } = given
  checked(amounts)
  const constants = constantsAt(temperature_C)
  const at = settled(prepared(amounts, constants, carbonDioxide_Pa), pH)
  const { water, air } = heldCharges(at)
  const listed = named(amounts)
  return {
    ...{ pH, temperature_C },
    species_mol_m3: speciesOf(at, amounts, constants.k.water),
    ionicStrength_mol_m3: at.ionicStrength * 1000,
    netCharge_mol_m3: netCharge(amounts, listed, placesOf(listed), at),
    meanCharge: namedCharges(at),
    heldCharge_mol_m3: water + air,
  }
}
