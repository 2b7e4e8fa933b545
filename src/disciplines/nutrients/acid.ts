import type { Component } from '../../tables/components.ts'
import { type Amounts, mixed, type Nutrient } from './composition.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { acidDose, alkalinity, solutionPh } from './equations-ph.ts'

/** What an acid does to a water: the dose that shows the target today, and the one that keeps it in the air. */
export interface AcidPlan {
  /** Dose that gives the target at once, carbon dioxide still in the water. */
  readonly now_mol_m3: number
  /** Dose that gives the target once the water has come into balance with the air. */
  readonly lasting_mol_m3: number
  /** Where the first dose drifts to in the air. */
  readonly driftsTo_pH: number
  /** Where the second dose starts, before carbon dioxide has left. */
  readonly startsAt_pH: number
  readonly alkalinityBefore_mol_m3: number
  /** Left by the lasting dose; negative where the acid's own buffer is counted below zero. */
  readonly alkalinityAfter_mol_m3: number
  /** Nutrients that the lasting dose brings. */
  readonly brings_g_m3: Readonly<Record<Nutrient, number>>
  /** Citrate that the lasting dose brings; microbes eat it, and the pH comes back. */
  readonly citrate_mol_m3: number
}

/** Plans the dose of one acid, given as what a mole of it adds to the water. */
export function acidPlan(given: {
  readonly water: Amounts
  readonly acid: Amounts
  readonly pH: number
  readonly temperature_C: number
  readonly air_Pa: number | null
}): AcidPlan {
  const { water, acid, pH, temperature_C, air_Pa } = given
  const closed = { temperature_C, carbonDioxide_Pa: null }
  const open = { temperature_C, carbonDioxide_Pa: air_Pa }
  const now_mol_m3 = acidDose({ amounts: water, acid, pH, ...closed })
  const lasting_mol_m3 = acidDose({ amounts: water, acid, pH, ...open })
  const dosed = (n: number) =>
    mixed([
      { amounts: water, times: 1 },
      { amounts: acid, times: n },
    ])
  return {
    now_mol_m3,
    lasting_mol_m3,
    driftsTo_pH: solutionPh({ amounts: dosed(now_mol_m3), ...open }),
    startsAt_pH: solutionPh({ amounts: dosed(lasting_mol_m3), ...closed }),
    alkalinityBefore_mol_m3: alkalinity({ amounts: water }),
    alkalinityAfter_mol_m3: alkalinity({ amounts: dosed(lasting_mol_m3) }),
    brings_g_m3: nutrientMasses_g_m3(mixed([{ amounts: acid, times: lasting_mol_m3 }])),
    citrate_mol_m3: (acid.citrate ?? 0) * lasting_mol_m3,
  }
}

/** What one mole of the named acid adds. */
export const acidIons = {
  nitric: { NO3: 1 },
  phosphoric: { H2PO4: 1 },
  sulfuric: { SO4: 1 },
  citric: { citrate: 1 },
} as const satisfies Readonly<Record<string, Readonly<Partial<Record<Component, number>>>>>
