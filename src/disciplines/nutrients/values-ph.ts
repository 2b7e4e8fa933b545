import { type Published, value } from '../../kernel/published.ts'
import type { Equilibrium, Mineral } from '../../tables/equilibria.ts'
import type { PublishedFeed } from '../../tables/recipes.ts'
import { feedAmounts } from './composition.ts'
import { equilibriumLogK } from './equations-equilibria.ts'
import { acidDose, alkalinity, solutionPh } from './equations-ph.ts'
import { saturationIndex } from './equations-saturation.ts'
import { activityCoefficient, debyeSlope } from './equations-solvent.ts'
import { speciation } from './speciation.ts'

const closed = { carbonDioxide_Pa: null } as const
const inAir = { carbonDioxide_Pa: 42.6 } as const

/** pH of primary buffers, mol/kg, over temperature. */
const equimolar = { K: 25, H2PO4: 50, Na: 50 }
const blood = { K: 8.695, H2PO4: 8.695 + 30.43, Na: 60.86 }
const buffers: readonly (readonly [number, number])[] = [
  [0, 6.984],
  [5, 6.951],
  [10, 6.923],
  [15, 6.9],
  [20, 6.881],
  [25, 6.865],
  [30, 6.853],
  [35, 6.844],
  [40, 6.838],
]
const bloodBuffers: readonly (readonly [number, number])[] = [
  [10, 7.472],
  [20, 7.429],
  [25, 7.413],
  [40, 7.38],
]
const nbs = { source: 'NBS.buffers', absolute: true } as const

/** pK as computed from the printed coefficients. */
const tabled: Readonly<Partial<Record<Equilibrium, readonly number[]>>> = {
  carbonic: [6.516, 6.463, 6.419, 6.382, 6.352, 6.328, 6.297],
  bicarbonate: [10.554, 10.488, 10.428, 10.376, 10.329, 10.288, 10.222],
  carbonDioxideGas: [1.192, 1.269, 1.341, 1.407, 1.468, 1.524, 1.625],
  water: [14.732, 14.534, 14.346, 14.168, 14.0, 13.84, 13.543],
}
const tabled_C = [5, 10, 15, 20, 25, 30, 40] as const
const pK: readonly (readonly [Equilibrium, number, number])[] = [
  ...(Object.entries(tabled) as readonly (readonly [Equilibrium, readonly number[]])[]).flatMap(([id, pKs]) =>
    tabled_C.map((t, i) => [id, t, pKs[i]!] as const),
  ),
  ['phosphoric1', 25, 2.148],
  ['phosphoric2', 25, 7.2005],
  ['boric', 25, 9.235],
  ['bisulfate', 25, 1.988],
  ['calcite', 25, 8.48],
  ['gypsum', 25, 4.58],
  ['ammonium', 25, 9.244],
]
/** Half of the last digit: solids are printed to two decimals, the others to three. */
const halfDigit = (id: Equilibrium) => (id === 'calcite' || id === 'gypsum' ? 0.005 : 6e-4)
const pKSource = (id: Equilibrium) =>
  id.startsWith('phosphoric') ? 'BatesAcree1945' : id === 'boric' ? 'Owen1934' : 'PlummerBusenberg1982'

/** Saturation at a pH and 25 °C. */
function feedSaturation(given: {
  readonly feed: PublishedFeed
  readonly mineral: Mineral
  readonly pH: number
}): number {
  const solution = speciation({ amounts: feedAmounts(given.feed), pH: given.pH, temperature_C: 25, ...closed })
  return saturationIndex({ solution, mineral: given.mineral })
}
const brushiteAt = [5.5, 5.8, 6, 6.5, 7, 7.5] as const
const brushites: readonly (readonly [PublishedFeed, readonly number[]])[] = [
  ['hoagland-1', [-0.78, -0.51, -0.33, 0.03, 0.27, 0.37]],
  ['sonneveld-straver-lettuce', [-0.52, -0.24, -0.07, 0.3, 0.54, 0.65]],
  ['mattson-peters-lettuce', [-1.04, -0.76, -0.58, -0.19, 0.07, 0.2]],
]
const saturations: readonly (readonly [PublishedFeed, Mineral, number, number])[] = [
  ['hoagland-1', 'gypsum', 5.8, -1.15],
  ['sonneveld-straver-lettuce', 'gypsum', 5.8, -1.44],
  ['mattson-peters-lettuce', 'gypsum', 5.8, -1.66],
  ...brushites.flatMap(([feed, indices]) =>
    indices.map((index, i) => [feed, 'brushite' as const, brushiteAt[i]!, index] as const),
  ),
  ['sonneveld-straver-lettuce', 'struvite', 5.8, -3.8],
  ['sonneveld-straver-lettuce', 'struvite', 7, -1.9],
  ['mattson-peters-lettuce', 'struvite', 5.8, -4.2],
  ['mattson-peters-lettuce', 'struvite', 7, -2.1],
]

/** Part of the alkalinity of a calcium bicarbonate water of pH 7.5 that an acid must take, 20 °C, to pH 5.8. */
function neutralisedShare(given: {
  readonly alkalinity_mol_m3: number
  readonly acid: 'NO3' | 'H2PO4'
  readonly open: boolean
}): number {
  const { alkalinity_mol_m3: alk, acid } = given
  const amounts = { Ca: alk / 2, HCO3: bicarbonateAt(alk) }
  const air = given.open ? inAir : closed
  return acidDose({ amounts, pH: 5.8, temperature_C: 20, acid: { [acid]: 1 }, ...air }) / alkalinity({ amounts })
}

/** Carbonate that gives pH 7.5 at 20 °C by the first constant alone, activities near one half of a per cent. */
function bicarbonateAt(alk: number): number {
  const slope = debyeSlope({ temperature_C: 20 })
  const γ = activityCoefficient({ charge: 1, ionicStrength_mol_m3: 1.5 * alk, slope })
  return alk * (1 + (10 ** -7.5 * γ) / 10 ** equilibriumLogK({ equilibrium: 'carbonic', temperature_C: 20 }))
}

/** pH of such a water of 4 meq/L after a dose of nitric acid. */
function dosedPh(given: { readonly nitric_mol_m3: number }): number {
  const amounts = { Ca: 2, HCO3: bicarbonateAt(4), NO3: given.nitric_mol_m3 }
  return solutionPh({ amounts, temperature_C: 20, ...closed })
}

const rows: readonly Published[] = [
  ...buffers.map(([temperature_C, pH]) =>
    value(solutionPh, { amounts: equimolar, temperature_C, ...closed }, pH, {
      ...{ ...nbs, within: 0.005, why: 'primary buffers are certified to 0.005' },
    }),
  ),
  ...bloodBuffers.map(([temperature_C, pH]) =>
    value(solutionPh, { amounts: blood, temperature_C, ...closed }, pH, {
      ...{ ...nbs, within: 0.0055, why: 'primary buffers are certified to 0.005, printed to 0.001' },
    }),
  ),
  value(solutionPh, { amounts: { Na: 75, HCO3: 50 }, temperature_C: 25, ...closed }, 10.012, {
    ...{ ...nbs, within: 0.03, why: 'at 0.1 mol/kg the activity of CO3 is known to 0.03 pH' },
  }),
  value(solutionPh, { amounts: { Na: 75, HCO3: 50 }, temperature_C: 10, ...closed }, 10.179, {
    ...{ ...nbs, within: 0.03, why: 'at 0.1 mol/kg the activity of CO3 is known to 0.03 pH' },
  }),
  value(solutionPh, { amounts: { Na: 20, H3BO3: 40 }, temperature_C: 25, ...closed }, 9.18, {
    ...{ ...nbs, within: 0.01, why: 'two-decimal buffer' },
  }),
  value(solutionPh, { amounts: { K: 50, phthalate: 50 }, temperature_C: 25, ...closed }, 4.006, {
    ...{ source: 'Hetzer1977', within: 0.005, absolute: true, why: 'certified to 0.005' },
  }),
  value(solutionPh, { amounts: equimolar, temperature_C: 25, ...closed }, 6.866, {
    ...{ source: 'USGS.PHREEQC3', within: 0.005, absolute: true, why: 'two models of activity' },
  }),
  value(solutionPh, { amounts: equimolar, temperature_C: 25, ...closed }, 6.86, {
    ...{ source: 'JIS.Z8802', within: 0.0055, absolute: true, why: 'half of the last printed digit' },
  }),
  value(solutionPh, { amounts: {}, temperature_C: 25, ...inAir }, 5.6, {
    ...{ source: 'USGS.PHREEQC3', within: 0.005, absolute: true, why: 'half of the last printed digit' },
  }),
  value(solutionPh, { amounts: feedAmounts('hoagland-1'), temperature_C: 25, ...closed }, 4.925, {
    ...{ source: 'USGS.PHREEQC3', within: 0.01, absolute: true, why: 'two models of activity' },
  }),
  value(dosedPh, { nitric_mol_m3: 3.0435 }, 5.809, {
    ...{ source: 'USGS.PHREEQC3', within: 0.015, absolute: true, why: 'two models of activity; pH 7.5 to 0.01' },
  }),
  ...pK.map(([equilibrium, temperature_C, expected]) =>
    value(equilibriumLogK, { equilibrium, temperature_C }, -expected, {
      ...{
        source: pKSource(equilibrium),
        within: halfDigit(equilibrium),
        absolute: true,
        why: 'half of the last printed digit',
      },
    }),
  ),
  ...(
    [
      [10, 0.4976],
      [20, 0.5052],
      [25, 0.5094],
      [30, 0.5138],
    ] as const
  ).map(([temperature_C, A]) =>
    value(debyeSlope, { temperature_C }, A, {
      ...{ source: 'Davies1938', within: 6e-5, absolute: true, why: 'half of the last printed digit' },
    }),
  ),
  ...saturations.map(([feed, mineral, pH, expected]) =>
    value(feedSaturation, { feed, mineral, pH }, expected, {
      source: 'USGS.PHREEQC3',
      within: mineral === 'struvite' ? 0.06 : 0.04,
      absolute: true,
      why: 'two models of activity and pairs differ by 0.03, and the last printed digit',
      loose: 'a logarithm: 0.04 is 10 % in concentration, of which the feed is a few per cent short of',
    }),
  ),
  ...(
    [
      [2, 'NO3', false, 0.766],
      [4, 'NO3', false, 0.761],
      [2, 'H2PO4', false, 0.727],
      [4, 'H2PO4', false, 0.714],
      [2, 'NO3', true, 0.999],
      [4, 'NO3', true, 0.999],
      [2, 'H2PO4', true, 0.946],
      [4, 'H2PO4', true, 0.938],
    ] as const
  ).map(([alk, acid, open, expected]) =>
    value(neutralisedShare, { alkalinity_mol_m3: alk, acid, open }, expected, {
      source: 'Balance.solution',
      within: 0.003,
      absolute: true,
      why: 'an independent charge balance to three figures; starting pH 7.5 to 0.01',
    }),
  ),
]

export default rows
