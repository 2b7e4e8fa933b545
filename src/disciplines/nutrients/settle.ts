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
  cationCharge: components.rows[row.cation as Component].charge,
  anionCharge: anionCharge[row.anion as keyof typeof anionCharge],
}))

/** Components whose form changes neither with pH nor by pairing. */
const changing = new Set<string>([...cations, 'SO4', 'H2PO4', 'HCO3', 'H3BO3', 'H4SiO4', 'citrate', 'phthalate'])
export const inert = (Object.keys(components.rows) as Component[]).filter((id) => !changing.has(id))

/** Ionic strength above which the activity equation is held, to keep hopeless trial points finite. */
const HELD_mol_m3 = 5000
const ROUND_LIMIT = 500
const SETTLED = 1e-12

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
    citrate: chain([k.citric1, k.citric2, k.citric3], aH, γ),
    phthalate: chain([k.phthalic1, k.phthalic2], aH, γ),
  }
}

export interface Settled {
  readonly aH: number
  readonly γ: readonly number[]
  readonly ratio: ReturnType<typeof ratiosAt>
  /** Free ions in the order Ca, Mg, K, Na, NH4, SO4, HPO4, H2PO4, HCO3. */
  readonly free: Float64Array
  readonly pairs: Float64Array
  readonly ionicStrength: number
  /** Whether the carbonate is held by the air. */
  readonly open: boolean
}

interface Solution {
  readonly constants: Constants
  readonly total: Float64Array
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

/** Totals in the order of the free ions. */
export function prepared(amounts: Amounts, constants: Constants, carbonDioxide_Pa: number | null): Solution {
  const amount = (id: Component) => (amounts[id] ?? 0) / 1000
  const { Ca, Mg, K, Na, NH4: N, SO4: S, H2PO4: P, HCO3: C } = { ...zero, ...amounts }
  const total = Float64Array.of(...[Ca, Mg, K, Na, N, S, P, 0, C].map((n) => n / 1000))
  const still = inert.reduce((sum, id) => sum + components.rows[id].charge ** 2 * Math.abs(amount(id)), 0) / 2
  const weak = {
    ...{ citrate: amount('citrate'), phthalate: amount('phthalate') },
    ...{ boron: amount('H3BO3'), silica: amount('H4SiO4') },
  }
  const atmosphere = feedConstants.rows.atmosphere.value
  const carbonDioxide =
    carbonDioxide_Pa === null ? null : (constants.k.carbonDioxideGas * carbonDioxide_Pa) / atmosphere
  return { constants, total, still, weak, carbonDioxide }
}

const zero = { Ca: 0, Mg: 0, K: 0, Na: 0, NH4: 0, SO4: 0, H2PO4: 0, HCO3: 0 }

/** New free ions from the old: each total over what its partners and protons take. */
function round(
  s: Solution,
  ratio: Settled['ratio'],
  strength: Float64Array,
  free: Float64Array,
  taken: Float64Array,
): void {
  taken.fill(0)
  for (let i = 0; i < pairs.length; i++) taken[pairs[i]!.cation]! += strength[i]! * free[pairs[i]!.anion]!
  taken[NH4]! += ratio.nh3
  for (let i = 0; i < cations.length; i++) free[i] = s.total[i]! / (1 + taken[i]!)
  for (let i = 0; i < pairs.length; i++) taken[pairs[i]!.anion]! += strength[i]! * free[pairs[i]!.cation]!
  free[SO4] = s.total[SO4]! / (1 + ratio.hso4 + taken[SO4]!)
  const forms = 1 + ratio.po4 + ratio.h2po4 + ratio.h3po4
  free[HPO4] = s.total[HPO4]! / (forms + taken[HPO4]! + ratio.h2po4 * taken[H2PO4]!)
  free[H2PO4] = free[HPO4] * ratio.h2po4
  free[HCO3] =
    s.carbonDioxide === null ? s.total[HCO3]! / (1 + ratio.co2 + ratio.co3 + taken[HCO3]!) : s.carbonDioxide / ratio.co2
}

function ionicStrength(s: Solution, at: Omit<Settled, 'ionicStrength' | 'open'>): number {
  const { aH, γ, ratio, free } = at
  let sum = (aH + s.constants.k.water / aH) / γ[1]!
  for (let i = 0; i < cations.length; i++) sum += cationCharge[i]! ** 2 * free[i]!
  for (let i = 0; i < pairs.length; i++) sum += pairs[i]!.charge ** 2 * at.pairs[i]!
  sum +=
    free[SO4]! * (4 + ratio.hso4) + free[HPO4]! * (4 + ratio.h2po4 + 9 * ratio.po4) + free[HCO3]! * (1 + 4 * ratio.co3)
  sum += s.weak.citrate * ratio.citrate.squares + s.weak.phthalate * ratio.phthalate.squares
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
  const taken = new Float64Array(free.length)
  const strength = new Float64Array(pairs.length)
  const paired = new Float64Array(pairs.length)
  const before = new Float64Array(free.length)
  let I = from?.ionicStrength ?? s.still
  for (let turn = 0; ; turn++) {
    const one = activityCoefficient({
      charge: 1,
      ionicStrength_mol_m3: Math.min(I * 1000, HELD_mol_m3),
      slope: s.constants.slope,
    })
    // log γ grows with the square of the charge
    const γ = [1, one, one ** 4, one ** 9]
    const ratio = ratiosAt(s.constants.k, aH, γ)
    for (let i = 0; i < pairs.length; i++) {
      const p = pairs[i]!
      strength[i] = (s.constants.pair[i]! * γ[p.cationCharge]! * γ[p.anionCharge]!) / γ[Math.abs(p.charge)]!
    }
    before.set(free)
    round(s, ratio, strength, free, taken)
    for (let i = 0; i < pairs.length; i++) paired[i] = strength[i]! * free[pairs[i]!.cation]! * free[pairs[i]!.anion]!
    const at = { aH, γ, ratio, free, pairs: paired }
    const next = ionicStrength(s, at)
    let moved = Math.abs(next - I) / (next + SETTLED)
    for (let i = 0; i < free.length; i++)
      moved = Math.max(moved, Math.abs(free[i]! - before[i]!) / (free[i]! + SETTLED))
    I = next
    if (moved < SETTLED || turn >= ROUND_LIMIT) return { ...at, ionicStrength: I, open: s.carbonDioxide !== null }
  }
}

/** Pairs of an anion per mole of the ligand that the ratios refer to. */
function held(at: Settled, anion: number): number {
  const base = at.free[anion === H2PO4 ? HPO4 : anion]!
  if (base === 0) return 0
  let sum = 0
  for (let i = 0; i < pairs.length; i++) if (pairs[i]!.anion === anion) sum += at.pairs[i]!
  return sum / base
}

/** Charge that one mole of each component carries, pairs counted with the ligand they hold. */
export function meanCharges(at: Settled): Record<Component, number> {
  const mean = {} as Record<Component, number>
  for (const id of inert) mean[id] = components.rows[id].charge
  for (const id of cations) mean[id] = components.rows[id].charge
  const { ratio, free } = at
  const sulfate = held(at, SO4)
  mean.SO4 = -(2 + ratio.hso4 + 2 * sulfate) / (1 + ratio.hso4 + sulfate)
  const [one, two] = [ratio.h2po4 + held(at, H2PO4), 1 + held(at, HPO4)]
  mean.H2PO4 = -(one + 2 * two + 3 * ratio.po4) / (one + two + ratio.po4 + ratio.h3po4)
  const bicarbonate = held(at, HCO3)
  mean.HCO3 = -(1 + bicarbonate + 2 * ratio.co3) / (1 + bicarbonate + ratio.co3 + ratio.co2)
  let ammonium = 1
  for (let i = 0; i < pairs.length; i++)
    if (pairs[i]!.cation === NH4 && free[NH4]! > 0) ammonium += at.pairs[i]! / free[NH4]!
  mean.NH4 = ammonium / (ammonium + ratio.nh3)
  mean.H3BO3 = -ratio.boric / (1 + ratio.boric)
  mean.H4SiO4 = -ratio.silicic / (1 + ratio.silicic)
  mean.citrate = ratio.citrate.charge
  mean.phthalate = ratio.phthalate.charge
  return mean
}

/** Charge of hydrogen less hydroxide and of carbonate that the air holds, mol/m³. */
export function heldCharges(at: Settled, constants: Constants): { readonly water: number; readonly air: number } {
  const water = ((at.aH - constants.k.water / at.aH) / at.γ[1]!) * 1000
  const carbonate = at.free[HCO3]! * (1 + held(at, HCO3) + 2 * at.ratio.co3)
  return { water, air: at.open ? -1000 * carbonate : 0 }
}
