import { type Component, components } from '../../tables/components.ts'
import { type Equilibrium, equilibria, type IonPair, ionPairs } from '../../tables/equilibria.ts'
import { feedConstants } from '../../tables/solvent.ts'
import type { Amounts } from './composition.ts'
import { equilibriumLogK, pairLogK } from './equations-equilibria.ts'
import { activityCoefficient, debyeSlope } from './equations-solvent.ts'

/** The rounds that bring protons, pairs and activities of a solution into agreement; mol/kg inside this file. */

export const cations = ['Ca', 'Mg', 'K', 'Na', 'NH4'] as const
const anions = ['SO4', 'HPO4', 'H2PO4', 'HCO3'] as const
type Paired = (typeof cations)[number] | (typeof anions)[number]
const place = Object.fromEntries([...cations, ...anions].map((ion, i) => [ion, i])) as Readonly<Record<Paired, number>>
const [SO4, HPO4, H2PO4, HCO3, NH4] = [place.SO4, place.HPO4, place.H2PO4, place.HCO3, place.NH4]
const cationCharge = cations.map((id) => components.rows[id].charge)
const anionCharge = { SO4: 2, HPO4: 2, H2PO4: 1, HCO3: 1 }

export const pairs = Object.entries(ionPairs.rows).map(([id, row]) => ({
  id: id as IonPair,
  cation: place[row.cation as Paired],
  anion: place[row.anion as Paired],
  charge: row.charge,
  size: Math.abs(row.charge),
  cationCharge: components.rows[row.cation as Component].charge,
  anionCharge: anionCharge[row.anion as keyof typeof anionCharge],
}))

/** The same as flat lists, for the rounds. */
const pairCation = Uint8Array.from(pairs, (p) => p.cation)
const pairAnion = Uint8Array.from(pairs, (p) => p.anion)
const pairSquare = Uint8Array.from(pairs, (p) => p.charge ** 2)
const cationSquare = Uint8Array.from(cationCharge, (z) => z ** 2)

/** Pairs of each anion, in their order. */
const pairsOf = [...cations, ...anions].map((_, ion) => pairs.flatMap((p, i) => (p.anion === ion ? [i] : [])))
const ammoniumPairs = pairs.flatMap((p, i) => (p.cation === NH4 ? [i] : []))

/** Components whose form changes neither with pH nor by pairing. */
const changing = new Set<string>([...cations, 'SO4', 'H2PO4', 'HCO3', 'H3BO3', 'H4SiO4', 'citrate', 'phthalate'])
export const inert = (Object.keys(components.rows) as Component[]).filter((id) => !changing.has(id))

/** Ionic strength above which the activity equation is held, to keep hopeless trial points finite. */
const HELD_mol_m3 = 5000
const ROUND_LIMIT = 500
const SETTLED = 1e-12

/** Room to work in within one settling, which nothing interrupts: making it anew took a third of the time. */
const scratch = {
  taken: new Float64Array(cations.length + anions.length),
  strength: new Float64Array(pairs.length),
  before: new Float64Array(cations.length + anions.length),
}
/** As many fractions as there are pairs, to be written over. */
const unpaired = pairs.map(() => 0.5)

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

/** Charge, and sum of squared charges, per mole of an acid of several steps that starts at the neutral molecule. */
function chain(steps: readonly number[], aH: number, γ: readonly number[]): { charge: number; squares: number } {
  let term = 1
  let [sum, charge, squares] = [1, 0, 0]
  for (let i = 0; i < steps.length; i++) {
    term *= (steps[i]! * γ[i]!) / (aH * γ[i + 1]!)
    sum += term
    charge -= (i + 1) * term
    squares += (i + 1) ** 2 * term
  }
  return { charge: charge / sum, squares: squares / sum }
}

/** Protonated forms per mole of the ligand that pairs are written with. */
function ratiosAt(k: Constants['k'], aH: number, γ: readonly number[]) {
  const [, g1, g2, g3] = γ as readonly [number, number, number, number]
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
  }
}

const citrateAt = (k: Constants['k'], aH: number, γ: readonly number[]) =>
  chain([k.citric1, k.citric2, k.citric3], aH, γ)
const phthalateAt = (k: Constants['k'], aH: number, γ: readonly number[]) => chain([k.phthalic1, k.phthalic2], aH, γ)

export interface Settled {
  readonly constants: Constants
  readonly aH: number
  readonly γ: readonly number[]
  readonly ratio: ReturnType<typeof ratiosAt>
  /** Free ions in the order Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3. */
  readonly free: number[]
  readonly pairs: number[]
  readonly ionicStrength: number
  /** Whether the carbonate is held by the air. */
  readonly open: boolean
}

interface Solution {
  readonly constants: Constants
  readonly total: readonly number[]
  /** Ionic strength of what never changes, and totals of the weak acids that do not pair. */
  readonly still: number
  readonly weak: {
    readonly citrate: number
    readonly phthalate: number
    readonly boron: number
    readonly silica: number
  }
  /** Dissolved carbon dioxide held by the air, or null. */
  readonly carbonDioxide: number | null
}

/** Component whose total each free ion starts from; all phosphate is counted as H2PO4, and solved for as HPO4. */
const totals = [...cations, 'SO4', 'H2PO4', null, 'HCO3'] as const

const inertSquares = inert.map((id) => components.rows[id].charge ** 2)

/** Totals in the order of the free ions. */
export function prepared(amounts: Amounts, constants: Constants, carbonDioxide_Pa: number | null): Solution {
  const total: number[] = []
  for (const id of totals) total.push(id === null ? 0 : (amounts[id] ?? 0) / 1000)
  let still = 0
  for (let i = 0; i < inert.length; i++) {
    const amount = amounts[inert[i]!]
    if (amount !== undefined) still += inertSquares[i]! * Math.abs(amount / 1000)
  }
  const weak = {
    ...{ citrate: (amounts.citrate ?? 0) / 1000, phthalate: (amounts.phthalate ?? 0) / 1000 },
    ...{ boron: (amounts.H3BO3 ?? 0) / 1000, silica: (amounts.H4SiO4 ?? 0) / 1000 },
  }
  const atmosphere = feedConstants.rows.atmosphere.value
  const carbonDioxide =
    carbonDioxide_Pa === null ? null : (constants.k.carbonDioxideGas * carbonDioxide_Pa) / atmosphere
  return { constants, total, still: still / 2, weak, carbonDioxide }
}

/** New free ions from the old: each total over what its partners and protons take. */
function round(
  s: Solution,
  ratio: Settled['ratio'],
  strength: Float64Array,
  free: number[],
  taken: Float64Array,
): void {
  taken.fill(0)
  const n = strength.length
  for (let i = 0; i < n; i++) taken[pairCation[i]!]! += strength[i]! * free[pairAnion[i]!]!
  taken[NH4]! += ratio.nh3
  for (let i = 0; i < cations.length; i++) free[i] = s.total[i]! / (1 + taken[i]!)
  for (let i = 0; i < n; i++) taken[pairAnion[i]!]! += strength[i]! * free[pairCation[i]!]!
  free[SO4] = s.total[SO4]! / (1 + ratio.hso4 + taken[SO4]!)
  const forms = 1 + ratio.po4 + ratio.h2po4 + ratio.h3po4
  free[HPO4] = s.total[HPO4]! / (forms + taken[HPO4]! + ratio.h2po4 * taken[H2PO4]!)
  free[H2PO4] = free[HPO4] * ratio.h2po4
  free[HCO3] =
    s.carbonDioxide === null ? s.total[HCO3]! / (1 + ratio.co2 + ratio.co3 + taken[HCO3]!) : s.carbonDioxide / ratio.co2
}

function ionicStrength(s: Solution, at: Omit<Settled, 'constants' | 'ionicStrength' | 'open'>): number {
  const { aH, γ, ratio, free } = at
  const { k } = s.constants
  let sum = (aH + s.constants.k.water / aH) / γ[1]!
  for (let i = 0; i < cationSquare.length; i++) sum += cationSquare[i]! * free[i]!
  for (let i = 0; i < pairSquare.length; i++) sum += pairSquare[i]! * at.pairs[i]!
  sum +=
    free[SO4]! * (4 + ratio.hso4) + free[HPO4]! * (4 + ratio.h2po4 + 9 * ratio.po4) + free[HCO3]! * (1 + 4 * ratio.co3)
  if (s.weak.citrate > 0) sum += s.weak.citrate * citrateAt(k, aH, γ).squares
  if (s.weak.phthalate > 0) sum += s.weak.phthalate * phthalateAt(k, aH, γ).squares
  sum += (s.weak.boron * ratio.boric) / (1 + ratio.boric) + (s.weak.silica * ratio.silicic) / (1 + ratio.silicic)
  return s.still + sum / 2
}

/**
 * Brings a solution at a pH into agreement with itself, by substitution in rounds: fast in a feed, slower in a stock.
 * `from` may be the answer at a neighbouring pH.
 */
export function settled(s: Solution, pH: number, from?: Settled): Settled {
  const aH = 10 ** -pH
  const free = from ? from.free.slice() : s.total.slice()
  const { taken, strength, before } = scratch
  const paired = unpaired.slice()
  let I = from?.ionicStrength ?? s.still
  for (let turn = 0; ; turn++) {
    const one = activityCoefficient({
      charge: 1,
      ionicStrength_mol_m3: Math.min(I * 1000, HELD_mol_m3),
      slope: s.constants.slope,
    })
    // log γ grows with the square of the charge
    const four = (one * one) ** 2
    const γ = [1, one, four, four * four * one]
    const ratio = ratiosAt(s.constants.k, aH, γ)
    for (let i = 0; i < pairs.length; i++) {
      const p = pairs[i]!
      strength[i] = (s.constants.pair[i]! * γ[p.cationCharge]! * γ[p.anionCharge]!) / γ[p.size]!
    }
    before.set(free)
    round(s, ratio, strength, free, taken)
    for (let i = 0; i < paired.length; i++) paired[i] = strength[i]! * free[pairCation[i]!]! * free[pairAnion[i]!]!
    const at = { aH, γ, ratio, free, pairs: paired }
    const next = ionicStrength(s, at)
    let moved = Math.abs(next - I) / (next + SETTLED)
    for (let i = 0; i < free.length; i++)
      moved = Math.max(moved, Math.abs(free[i]! - before[i]!) / (free[i]! + SETTLED))
    I = next
    if (moved < SETTLED || turn >= ROUND_LIMIT)
      return { ...at, constants: s.constants, ionicStrength: I, open: s.carbonDioxide !== null }
  }
}

/** Pairs of an anion per mole of the ligand that the ratios refer to. */
function held(at: Settled, anion: number): number {
  const base = at.free[anion === H2PO4 ? HPO4 : anion]!
  if (base === 0) return 0
  let sum = 0
  for (const i of pairsOf[anion]!) sum += at.pairs[i]!
  return sum / base
}

const all = Object.keys(components.rows) as readonly Component[]
/** Charges of the components that keep theirs; the others are overwritten. */
const steady = Float64Array.from(all, (id) => components.rows[id].charge)
const at = Object.fromEntries(all.map((id, i) => [id, i])) as Readonly<Record<Component, number>>

/** Places of components among the mean charges. */
export const placesOf = (ids: readonly Component[]): readonly number[] => ids.map((id) => at[id])

/** Charge that one mole of each component carries, in the order of the table, pairs counted with the ligand they hold. */
export function meanCharges(s: Settled): Float64Array {
  const { constants, aH, γ, ratio, free } = s
  const mean = steady.slice()
  const sulfate = held(s, SO4)
  mean[at.SO4] = -(2 + ratio.hso4 + 2 * sulfate) / (1 + ratio.hso4 + sulfate)
  const [one, two] = [ratio.h2po4 + held(s, H2PO4), 1 + held(s, HPO4)]
  mean[at.H2PO4] = -(one + 2 * two + 3 * ratio.po4) / (one + two + ratio.po4 + ratio.h3po4)
  const bicarbonate = held(s, HCO3)
  mean[at.HCO3] = -(1 + bicarbonate + 2 * ratio.co3) / (1 + bicarbonate + ratio.co3 + ratio.co2)
  let ammonium = 1
  if (free[NH4]! > 0) for (const i of ammoniumPairs) ammonium += s.pairs[i]! / free[NH4]!
  mean[at.NH4] = ammonium / (ammonium + ratio.nh3)
  mean[at.H3BO3] = -ratio.boric / (1 + ratio.boric)
  mean[at.H4SiO4] = -ratio.silicic / (1 + ratio.silicic)
  mean[at.citrate] = citrateAt(constants.k, aH, γ).charge
  mean[at.phthalate] = phthalateAt(constants.k, aH, γ).charge
  return mean
}

/** The same by name. */
export function namedCharges(s: Settled): Readonly<Record<Component, number>> {
  const mean = meanCharges(s)
  return Object.fromEntries(all.map((id, i) => [id, mean[i]!])) as Record<Component, number>
}

/** Charge of hydrogen less hydroxide and of carbonate that the air holds, mol/m³. */
export function heldCharges(s: Settled): { readonly water: number; readonly air: number } {
  const water = ((s.aH - s.constants.k.water / s.aH) / s.γ[1]!) * 1000
  const carbonate = s.free[HCO3]! * (1 + held(s, HCO3) + 2 * s.ratio.co3)
  return { water, air: s.open ? -1000 * carbonate : 0 }
}
