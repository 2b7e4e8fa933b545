import type { Mineral } from '../../tables/equilibria.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type IonCharge, ionCharges } from './charges.ts'
import { type Amounts, nutrientAmount } from './composition.ts'
import { CONDUCTIVITY_VALID, conductivity } from './equations-conductivity.ts'
import { atOwnPh, solutionPh } from './equations-ph.ts'
import { saturationIndex } from './equations-saturation.ts'
import { speciation } from './speciation.ts'

interface Range {
  readonly low: number
  readonly high: number
}

/** What pens should show before anything is measured, and what may fall out. */
export interface Predicted {
  /** At 25 °C, the band that the model claims. */
  readonly conductivity_S_m: Range
  /** False where the solution is too strong for the conductivity model, or too rich in bivalent sulfate. */
  readonly conductivityTrusted: boolean
  readonly pHClosed: Range
  readonly pHInAir: Range
  readonly ionicStrength_mol_m3: number
  /** Charges of the ions in the open tank; they sum to nothing. */
  readonly charges: readonly IonCharge[]
  /** Saturation in the open tank; above zero a solid may fall out. Solids whose ions are absent are left out. */
  readonly saturation: Readonly<Partial<Record<Mineral, number>>>
  /** Share of ammonium in the nitrogen, 0 without nitrogen. */
  readonly ammoniumShare: number
}

const solids: readonly Mineral[] = ['gypsum', 'calcite', 'brushite', 'struvite']
const around = (value: number, half: number): Range => ({ low: value - half, high: value + half })

function trusted({ Ca = 0, Mg = 0, SO4 = 0 }: Amounts, ionicStrength_mol_m3: number): boolean {
  const { ionicStrength_mol_m3: strength, bivalentSulfate_mol_m3: sulfate } = CONDUCTIVITY_VALID
  return ionicStrength_mol_m3 <= strength.max && Math.min(Ca + Mg, SO4) <= sulfate.max
}

/** Predicts readings of a solution in an open tank. */
export function predicted(given: {
  readonly amounts: Amounts
  readonly temperature_C: number
  /** Null for a closed tank: then it lasts as it was mixed. */
  readonly air_Pa: number | null
}): Predicted {
  const { amounts, temperature_C, air_Pa } = given
  const { conductivityAccuracy, phAccuracy, referenceTemperature } = feedConstants.rows
  const tank = atOwnPh({ amounts, temperature_C, carbonDioxide_Pa: air_Pa })
  const t25 = { temperature_C: referenceTemperature.value, carbonDioxide_Pa: air_Pa }
  const κ = conductivity(speciation({ amounts, pH: tank.pH, ...t25 }))
  const saturation = solids
    .map((mineral) => [mineral, saturationIndex({ solution: tank, mineral })] as const)
    .filter(([, index]) => Number.isFinite(index))
  const N = nutrientAmount(amounts, 'N')
  return {
    conductivity_S_m: around(κ, κ * conductivityAccuracy.value),
    conductivityTrusted: trusted(amounts, tank.ionicStrength_mol_m3),
    pHClosed: around(solutionPh({ amounts, temperature_C, carbonDioxide_Pa: null }), phAccuracy.value),
    pHInAir: around(tank.pH, phAccuracy.value),
    ionicStrength_mol_m3: tank.ionicStrength_mol_m3,
    charges: ionCharges(amounts, tank, air_Pa !== null),
    saturation: Object.fromEntries(saturation),
    ammoniumShare: N > 0 ? nutrientAmount(amounts, 'NH4-N') / N : 0,
  }
}
