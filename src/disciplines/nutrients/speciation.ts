import { type Component, components } from '../../tables/components.ts'
import { type Equilibrium, equilibria, type IonPair, ionPairs } from '../../tables/equilibria.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { type Amounts, named } from './composition.ts'
import { equilibriumLogK, pairLogK } from './equations-equilibria.ts'
import { activityCoefficient, debyeSlope } from './equations-solvent.ts'

/** Things dissolved in water: free ions, molecules and pairs. */
export type Species =
  | Exclude<Component, 'unmeasured' | 'citrate' | 'phthalate'>
  | IonPair
  | ('H' | 'OH' | 'HSO4' | 'HPO4' | 'PO4' | 'H3PO4' | 'CO3' | 'CO2' | 'NH3' | 'BO4H4' | 'H3SiO4')

export interface Speciation {
  readonly pH: number
  readonly temperature_C: number
  readonly species_mol_m3: Readonly<Partial<Record<Species, number>>>
  readonly ionicStrength_mol_m3: number
  /** Sum of all charges; zero where the pH is the solution's own. */
  readonly netCharge_mol_m3: number
  /** Mean charge of each component at this pH, pairs counted with the ligand they hold. */
  readonly meanCharge: Readonly<Record<Component, number>>
  /** Charge of hydrogen less hydroxide. */
  readonly waterCharge_mol_m3: number
}

export interface Conditions {
  readonly temperature_C: number
  /** Partial pressure of carbon dioxide that the solution stands open to; null where it is closed. */
  readonly carbonDioxide_Pa: number | null
}

/** Ionic strength above which the activity equation is held, to keep hopeless trial points finite; mol/kg. */
const HELD = 5
const ROUND_LIMIT = 400
const SETTLED = 1e-13

const pairs = Object.entries(ionPairs.rows).map(([id, row]) => ({ id: id as IonPair, ...row }))
const cations = ['Ca', 'Mg', 'K', 'Na', 'NH4'] as const
type Cation = (typeof cations)[number]
type Anion = 'SO4' | 'HPO4' | 'H2PO4' | 'HCO3'

/** Constants of one temperature, so that a search over pH computes them once. */
export interface Constants {
  readonly temperature_C: number
  readonly slope: number
  readonly k: Readonly<Record<Equilibrium, number>>
  readonly pair: readonly number[]
}

export function constantsAt(temperature_C: number): Constants {
  const k = {} as Record<Equilibrium, number>
  for (const equilibrium of Object.keys(equilibria.rows) as Equilibrium[])
    k[equilibrium] = 10 ** equilibriumLogK({ equilibrium, temperature_C })
  const pair = pairs.map(({ id }) => 10 ** pairLogK({ pair: id, temperature_C }))
  return { temperature_C, slope: debyeSlope({ temperature_C }), k, pair }
}

/** Charge and ionic strength of an acid of several steps, per mole of it: the chain starts at the neutral molecule. */
function chain(steps: readonly number[], aH: number, γ: readonly number[]): { charge: number; squares: number } {
  let term = 1
  let [sum, charge, squares] = [1, 0, 0]
  steps.forEach((K, i) => {
    term *= (K * γ[i]!) / (aH * γ[i + 1]!)
    sum += term
    charge -= (i + 1) * term
    squares += (i + 1) ** 2 * term
  })
  return { charge: charge / sum, squares: squares / sum }
}

interface State {
  readonly free: Record<Cation | Anion, number>
  readonly pairs: readonly number[]
  readonly ratio: ReturnType<typeof ratios>
  readonly γ: readonly number[]
}

/** Protonated forms per mole of the ligand that pairs are written with. */
function ratios(k: Constants['k'], aH: number, γ: readonly number[]) {
  const [, g1, g2, g3] = γ as [number, number, number, number]
  const h2po4 = (aH * g2) / (k.phosphoric2 * g1)
  return {
    hso4: (aH * g2) / (k.bisulfate * g1),
    h2po4,
    h3po4: (h2po4 * aH * g1) / k.phosphoric1,
    po4: (k.phosphoric3 * g2) / (aH * g3),
    co2: (aH * g1) / k.carbonic,
    co3: (k.bicarbonate * g1) / (aH * g2),
    nh3: (k.ammonium * g1) / aH,
    boric: k.boric / (aH * g1),
    silicic: k.silicic / (aH * g1),
    citrate: chain([k.citric1, k.citric2, k.citric3], aH, γ),
    phthalate: chain([k.phthalic1, k.phthalic2], aH, γ),
  }
}

/** One round: cations over what their ligands take, then ligands over what cations and protons take. */
function round(c: Constants, total: Amounts, aH: number, open: number | null, I: number, from: State['free']): State {
  const γ = [0, 1, 2, 3].map((charge) =>
    activityCoefficient({ charge, ionicStrength_mol_m3: 1000 * Math.min(I, HELD), slope: c.slope }),
  )
  const ratio = ratios(c.k, aH, γ)
  const charge = { SO4: 2, HPO4: 2, H2PO4: 1, HCO3: 1 }
  const strength = pairs.map(({ cation, anion, charge: z }, i) => {
    const zc = components.rows[cation as Cation].charge
    return (c.pair[i]! * γ[zc]! * γ[charge[anion as Anion]]!) / γ[Math.abs(z)]!
  })
  const free = { ...from }
  const taken = (end: 'cation' | 'anion', id: string, other: 'cation' | 'anion') =>
    pairs.reduce((sum, row, i) => (row[end] === id ? sum + strength[i]! * free[row[other] as Cation | Anion] : sum), 0)
  for (const id of cations)
    free[id] = (total[id] ?? 0) / 1000 / (1 + (id === 'NH4' ? ratio.nh3 : 0) + taken('cation', id, 'anion'))
  free.SO4 = (total.SO4 ?? 0) / 1000 / (1 + ratio.hso4 + taken('anion', 'SO4', 'cation'))
  const asHPO4 = 1 + ratio.po4 + ratio.h2po4 + ratio.h3po4
  const pairedP = taken('anion', 'HPO4', 'cation') + ratio.h2po4 * taken('anion', 'H2PO4', 'cation')
  free.HPO4 = (total.H2PO4 ?? 0) / 1000 / (asHPO4 + pairedP)
  free.H2PO4 = free.HPO4 * ratio.h2po4
  free.HCO3 =
    open === null
      ? (total.HCO3 ?? 0) / 1000 / (1 + ratio.co2 + ratio.co3 + taken('anion', 'HCO3', 'cation'))
      : open / ratio.co2
  return {
    free,
    pairs: pairs.map((p, i) => strength[i]! * free[p.cation as Cation] * free[p.anion as Anion]),
    ratio,
    γ,
  }
}

/** Components whose form does not change with pH or pairing. */
const inert = (Object.keys(components.rows) as Component[]).filter(
  (id) =>
    !(cations as readonly string[]).includes(id) &&
    !['SO4', 'H2PO4', 'HCO3', 'H3BO3', 'H4SiO4', 'citrate', 'phthalate'].includes(id),
)

function ionicStrength({ free, pairs: paired, ratio, γ }: State, total: Amounts, aH: number, Kw: number): number {
  const { SO4, HPO4, HCO3 } = free
  let sum = (aH + Kw / aH) / γ[1]!
  for (const id of cations) sum += components.rows[id].charge ** 2 * free[id]
  for (const id of inert) sum += components.rows[id].charge ** 2 * Math.abs(total[id] ?? 0) * 1e-3
  pairs.forEach((row, i) => {
    sum += row.charge ** 2 * paired[i]!
  })
  sum += SO4 * (4 + ratio.hso4) + HPO4 * (4 + ratio.h2po4 + 9 * ratio.po4) + HCO3 * (1 + 4 * ratio.co3)
  sum += ((total.citrate ?? 0) * ratio.citrate.squares + (total.phthalate ?? 0) * ratio.phthalate.squares) * 1e-3
  sum += (total.H3BO3 ?? 0) * 1e-3 * (ratio.boric / (1 + ratio.boric))
  return sum / 2
}

/** Charge that one mole of each component carries at this pH. */
function meanCharges({ free, pairs: paired, ratio }: State): Speciation['meanCharge'] {
  const mean = {} as Record<Component, number>
  for (const id of Object.keys(components.rows) as Component[]) mean[id] = components.rows[id].charge
  const held = (anion: Anion) => {
    const base = anion === 'H2PO4' ? free.HPO4 : free[anion]
    if (base === 0) return 0
    return pairs.reduce((sum, row, i) => (row.anion === anion ? sum + paired[i]! / base : sum), 0)
  }
  const pairedSO4 = held('SO4')
  mean.SO4 = -(2 + ratio.hso4 + 2 * pairedSO4) / (1 + ratio.hso4 + pairedSO4)
  const [one, two] = [ratio.h2po4 + held('H2PO4'), 1 + held('HPO4')]
  mean.H2PO4 = -(one + 2 * two + 3 * ratio.po4) / (one + two + ratio.po4 + ratio.h3po4)
  const pairedHCO3 = held('HCO3')
  mean.HCO3 = -(1 + pairedHCO3 + 2 * ratio.co3) / (1 + pairedHCO3 + ratio.co3 + ratio.co2)
  const pairedNH4 =
    free.NH4 === 0 ? 0 : pairs.reduce((s, row, i) => (row.cation === 'NH4' ? s + paired[i]! : s), 0) / free.NH4
  mean.NH4 = (1 + pairedNH4) / (1 + pairedNH4 + ratio.nh3)
  mean.H3BO3 = -ratio.boric / (1 + ratio.boric)
  mean.H4SiO4 = -ratio.silicic / (1 + ratio.silicic)
  mean.citrate = ratio.citrate.charge
  mean.phthalate = ratio.phthalate.charge
  return mean
}

function speciesOf({ free, pairs: paired, ratio, γ }: State, total: Amounts, aH: number, Kw: number) {
  const species: Partial<Record<Species, number>> = {}
  for (const id of inert) if (id !== 'unmeasured' && total[id]) species[id as Species] = total[id]
  const { Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3 } = free
  const list: Partial<Record<Species, number>> = {
    ...{ Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3 },
    ...{ H: aH / γ[1]!, OH: Kw / aH / γ[1]!, HSO4: SO4 * ratio.hso4, NH3: NH4 * ratio.nh3 },
    ...{ H3PO4: HPO4 * ratio.h3po4, PO4: HPO4 * ratio.po4, CO2: HCO3 * ratio.co2, CO3: HCO3 * ratio.co3 },
  }
  for (const [id, amount] of Object.entries(list)) species[id as Species] = amount * 1000
  pairs.forEach(({ id }, i) => {
    species[id] = paired[i]! * 1000
  })
  const [B, Si] = [total.H3BO3 ?? 0, total.H4SiO4 ?? 0]
  Object.assign(species, { H3BO3: B / (1 + ratio.boric), BO4H4: (B * ratio.boric) / (1 + ratio.boric) })
  Object.assign(species, { H4SiO4: Si / (1 + ratio.silicic), H3SiO4: (Si * ratio.silicic) / (1 + ratio.silicic) })
  return species
}

/**
 * What is dissolved in a solution at a given pH: protons, pairs and activities agree with each other.
 * Substitution in rounds; each round lowers the error, fast in a feed and slower in a stock.
 */
export function speciation(
  given: Conditions & { readonly amounts: Amounts; readonly pH: number; readonly constants?: Constants },
): Speciation {
  const { amounts: total, pH, temperature_C, carbonDioxide_Pa } = given
  const c = given.constants ?? constantsAt(temperature_C)
  for (const id of named(total))
    if (!Number.isFinite(total[id]!) || (total[id]! < 0 && id !== 'unmeasured'))
      throw new RangeError(`speciation: ${id} of ${total[id]} mol/m³`)
  const aH = 10 ** -pH
  const open =
    carbonDioxide_Pa === null ? null : (c.k.carbonDioxideGas * carbonDioxide_Pa) / feedConstants.rows.atmosphere.value
  const amount = (id: Component) => (total[id] ?? 0) / 1000
  const [Ca, Mg, K, Na, NH4, SO4] = [
    amount('Ca'),
    amount('Mg'),
    amount('K'),
    amount('Na'),
    amount('NH4'),
    amount('SO4'),
  ]
  const half = amount('H2PO4') / 2
  let state = round(c, total, aH, open, 0, { Ca, Mg, K, Na, NH4, SO4, HPO4: half, H2PO4: half, HCO3: amount('HCO3') })
  let I = ionicStrength(state, total, aH, c.k.water)
  for (let turn = 0; turn < ROUND_LIMIT; turn++) {
    const before = state.free
    state = round(c, total, aH, open, I, before)
    const next = ionicStrength(state, total, aH, c.k.water)
    const moved = Math.max(
      Math.abs(next - I) / (I + SETTLED),
      ...(['SO4', 'HPO4', 'HCO3', 'Ca', 'Mg'] as const).map(
        (id) => Math.abs(state.free[id] - before[id]) / (before[id] + SETTLED),
      ),
    )
    I = next
    if (moved < SETTLED) break
  }
  const mean = meanCharges(state)
  const waterCharge_mol_m3 = ((aH - c.k.water / aH) / state.γ[1]!) * 1000
  const { HCO3 } = state.free
  const openCharge =
    -1000 *
    (HCO3 * (1 + 2 * state.ratio.co3) +
      pairs.reduce((s, row, i) => (row.anion === 'HCO3' ? s + state.pairs[i]! : s), 0))
  let netCharge_mol_m3 = waterCharge_mol_m3 + (open === null ? 0 : openCharge)
  for (const id of named(total)) if (open === null || id !== 'HCO3') netCharge_mol_m3 += mean[id] * total[id]!
  const species_mol_m3 = speciesOf(state, total, aH, c.k.water)
  const ionicStrength_mol_m3 = I * 1000
  return {
    pH,
    temperature_C,
    species_mol_m3,
    ionicStrength_mol_m3,
    netCharge_mol_m3,
    meanCharge: mean,
    waterCharge_mol_m3,
  }
}
