import type { Finding } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { quantity } from '../../kernel/units.ts'
import type { Component } from '../../tables/components.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { salts } from '../../tables/salts.ts'
import type { BatchFacts } from './batch.ts'
import type { BlendFacts } from './blended.ts'
import { type Amounts, ionsOf, mixed, named } from './composition.ts'
import { conductivity } from './equations-conductivity.ts'
import { acidDemand, phShift } from './equations-ph.ts'
import { exchangeToDilute, topUpStrength } from './equations-strength.ts'
import type { PenFacts } from './instruments.ts'
import type { ShelfProduct } from './shelf.ts'
import { chargeAgainstAmounts, speciation } from './speciation.ts'

/** What was read on a tank; conductivity at 25 °C, as pens with compensation show it. */
export interface Readings {
  readonly volume_m3: number
  readonly conductivity_S_m: number | null
  readonly pH: number | null
  readonly temperature_C: number
}

export interface Wanted {
  readonly line_m3: number
  readonly conductivity_S_m: number
  readonly pH: number | null
}

interface Range {
  readonly low: number
  readonly high: number
}

/** What to pour in today. */
export interface Correction {
  readonly topUp_m3: number
  /** Conductivity of the blended water. */
  readonly water_S_m: number
  /** Strength of the top-up as a share of the recipe; 0 is plain water. */
  readonly strength: number
  /** Solution to take out and replace by plain water after filling up, where it is still too strong. */
  readonly exchange_m3: number
  /** Salts and lasting acids of the top-up, or of what strengthens a full tank. */
  readonly doses_kg: readonly { readonly id: string; readonly mass_kg: number }[]
  /** Charge of acid that brings the pH back, over the drift of the pen; negative is base. Null without a pH. */
  readonly acid_eq: Range | null
  /** Of that, what the alkalinity of the top-up takes. */
  readonly acidOfTopUp_eq: number
  readonly acid: { readonly product: ShelfProduct; readonly mass_kg: Range; readonly first_kg: number } | null
  /** No acid is advised by a pen that is off too far. */
  readonly penHolds: boolean
}

const air = ({ air_Pa }: BatchFacts, temperature_C: number) => ({ temperature_C, carbonDioxide_Pa: air_Pa })

/** Conductivity of the blend as it stands in the air. */
function waterConductivity(amounts: Amounts, batch: BatchFacts): number {
  if (named(amounts).every((id) => amounts[id] === 0)) return 0
  return conductivity(speciation({ amounts, pH: 7, ...air(batch, 25) }))
}

/** Charge that a kilogram of an acid as sold gives at a pH. */
function chargePerKilogram(
  product: ShelfProduct,
  amounts: Amounts,
  at: { readonly pH: number; readonly temperature_C: number; readonly carbonDioxide_Pa: number | null },
): number {
  if (product.salt === null) return 0
  const ions = ionsOf(salts.rows[product.salt].ions)
  const dosed = mixed([
    { amounts, times: 1 },
    { amounts: ions, times: 1e-3 },
  ])
  const mean = chargeAgainstAmounts(at)(dosed).meanCharge()
  const ids = Object.keys(product.amounts_mol_kg) as Component[]
  return -ids.reduce((sum, id) => sum + mean[id] * product.amounts_mol_kg[id]!, 0)
}

/** Acid that lasts before acid that microbes eat; of those, the one that brings no phosphorus. */
const preferred = (shelf: readonly ShelfProduct[]): ShelfProduct | null =>
  [...shelf.filter(({ acid }) => acid)].sort(
    (a, b) => Number(a.passing) - Number(b.passing) || (a.amounts_mol_kg.H2PO4 ?? 0) - (b.amounts_mol_kg.H2PO4 ?? 0),
  )[0] ?? null

interface Given {
  readonly readings: Readings
  readonly wanted: Wanted
  readonly batch: BatchFacts
  readonly blend: BlendFacts
  readonly shelf: readonly ShelfProduct[]
  readonly pen: PenFacts
}

/** Salts and strength that bring the tank to its line and its conductivity. */
function strengthening({ readings, wanted, batch, blend }: Given) {
  const { volume_m3: V1, conductivity_S_m: now } = readings
  const water_S_m = waterConductivity(blend.amounts, batch)
  const topUp_m3 = Math.max(0, wanted.line_m3 - V1)
  const full = batch.predicted.conductivity_S_m
  const salts_S_m = Math.max(Number.MIN_VALUE, (full.low + full.high) / 2 - water_S_m)
  const shareOf = (c: number) => Math.max(0, (c - water_S_m) / salts_S_m)
  const none = {
    water_S_m,
    topUp_m3,
    strength: topUp_m3 > 0 ? (batch.refill?.strength ?? 1) : 0,
    exchange_m3: 0,
    strengthened_m3: topUp_m3,
  }
  if (now === null) return none
  const goal = wanted.conductivity_S_m
  if (topUp_m3 === 0) {
    if (now <= goal) return { ...none, strength: shareOf(goal + water_S_m - now), strengthened_m3: V1 }
    const exchange_m3 =
      goal > water_S_m ? exchangeToDilute({ volume_m3: V1, now_S_m: now, wanted_S_m: goal, water_S_m }) : V1
    return { ...none, strength: 0, exchange_m3: Math.min(V1, exchange_m3) }
  }
  const c = topUpStrength({ line_m3: wanted.line_m3, now_m3: V1, wanted_S_m: goal, now_S_m: now })
  const strength = shareOf(c)
  if (c >= water_S_m) return { ...none, strength }
  const filled = (V1 * now + topUp_m3 * water_S_m) / wanted.line_m3
  const terms = { volume_m3: wanted.line_m3, now_S_m: filled, wanted_S_m: goal, water_S_m }
  const exchange_m3 = goal > water_S_m && filled > goal ? exchangeToDilute(terms) : 0
  return { ...none, strength: 0, exchange_m3 }
}

/** Acid for what is in the tank and for the alkalinity of the plain water that comes in. */
function acidOf(
  given: Given,
  topUp_m3: number,
  strength: number,
): Pick<Correction, 'acid_eq' | 'acidOfTopUp_eq' | 'acid'> {
  const { readings, wanted, batch, blend, shelf, pen } = given
  const { pH, volume_m3, temperature_C } = readings
  const none = { acid_eq: null, acidOfTopUp_eq: 0, acid: null }
  if (pH === null || wanted.pH === null) return none
  const full = (batch.predicted.conductivity_S_m.low + batch.predicted.conductivity_S_m.high) / 2
  const now = (readings.conductivity_S_m ?? full) / full
  const amounts = mixed([{ amounts: { ...batch.amounts, HCO3: 0 }, times: now }])
  const toPh = wanted.pH
  const here = air(batch, temperature_C)
  const shift = (fromPh: number) => phShift({ amounts, fromPh, toPh, volume_m3, ...here })
  const drift = pen.pH ?? 0
  // What the salts of the top-up do not bring themselves; a full-strength top-up has its acid in the recipe.
  const plain = acidDemand({ amounts: blend.amounts, pH: toPh, ...here })
  const acidOfTopUp_eq = Math.max(0, plain) * topUp_m3 * Math.max(0, 1 - strength)
  const acid_eq = { low: shift(pH - drift) + acidOfTopUp_eq, high: shift(pH + drift) + acidOfTopUp_eq }
  const product = preferred(shelf)
  const perKilogram = product ? chargePerKilogram(product, amounts, { pH: toPh, ...here }) : 0
  if (product === null || perKilogram <= 0 || acid_eq.high <= 0) return { acid_eq, acidOfTopUp_eq, acid: null }
  const kg = (eq: number) => Math.max(0, eq) / perKilogram
  const mass_kg = { low: kg(acid_eq.low), high: kg(acid_eq.high) }
  const first_kg = ((mass_kg.low + mass_kg.high) / 2) * feedPractice.rows.firstDose.low
  return { acid_eq, acidOfTopUp_eq, acid: { product, mass_kg, first_kg } }
}

/** Today's correction of a tank from its readings. */
export function correction(given: Given): Correction {
  const { strengthened_m3, ...told } = strengthening(given)
  const doses_kg = given.batch.problem.shelf
    .map(({ id }) => ({ id, g_m3: given.batch.found.doses_g_m3[id] ?? 0 }))
    .map(({ id, g_m3 }) => ({ id, mass_kg: (g_m3 / 1000) * told.strength * strengthened_m3 }))
    .filter(({ mass_kg }) => mass_kg > 0)
  const penHolds = given.pen.doses
  const acid = acidOf(given, told.topUp_m3, told.strength)
  return { ...told, doses_kg, penHolds, ...(penHolds ? acid : { ...acid, acid: null }) }
}

/** The gate before planting: what the pen shows of a fresh batch against what was predicted. */
export function penGate({ predicted }: BatchFacts, reading_S_m: number): Finding {
  const { low, high } = feedPractice.rows.penGate
  const mid = (predicted.conductivity_S_m.low + predicted.conductivity_S_m.high) / 2
  return judge('nutrients/pen-gate', quantity(reading_S_m, 'S_m'), {
    at: 'feed',
    source: feedPractice.source,
    must: { min: mid * (1 - high), max: mid * (1 + high) },
    want: { min: mid * (1 - low), max: mid * (1 + low) },
    slots: {
      predicted: quantity(mid, 'S_m'),
      causes: { phrase: reading_S_m < mid ? 'gate-low' : 'gate-high' },
    },
  })
}
