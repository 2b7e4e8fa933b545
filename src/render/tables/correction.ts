import type { Correction } from '../../disciplines/nutrients/correction.ts'
import { molarMass } from '../../disciplines/nutrients/equations-formula.ts'
import type { PenReading } from '../../disciplines/nutrients/pen-reading.ts'
import type { WeakStock, Weighed } from '../../disciplines/nutrients/recipe-weighing.ts'
import { quantity } from '../../kernel/units.ts'
import { salts } from '../../tables/salts.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'
import { millilitres } from './feed.ts'

/** Acid smaller than this, in moles of charge, nobody can measure into a tank. */
const NO_ACID_eq = 0.0005

/** What a correction is made for. */
export interface CorrectionGoal {
  readonly pH: number | null
  readonly readPh: number | null
  readonly penWidth: number | null
  /** Strength of the stock bottles, where there are any. */
  readonly factor: number | null
  /** Doses of the whole batch, of which some are taken from a weak stock. */
  readonly doses: readonly Weighed[]
}

/** The mildest base, by its mass for a charge. */
const bicarbonate = (charge_eq: number, display: Display): string =>
  `${decimals(charge_eq * molarMass({ formula: salts.rows['potassium-bicarbonate'].formula }) * 1000, 1, display.decimal)} g`

function acidText(c: Correction, goal: CorrectionGoal, words: Words, display: Display): readonly string[] {
  const t = words.tables
  if (c.acid_eq === null || goal.pH === null || goal.readPh === null) return []
  const ph = { from: decimals(goal.readPh, 2, display.decimal), to: decimals(goal.pH, 2, display.decimal) }
  if (!c.penHolds && goal.penWidth === null) return [t['correct-pen-unknown']!]
  if (!c.penHolds) return [fill(t['correct-pen']!, { width: decimals(goal.penWidth ?? 0, 1, display.decimal) })]
  const { low, high } = c.acid_eq
  const charge = `${decimals(Math.abs((low + high) / 2) * 1000, 1, display.decimal)} meq`
  if (low <= NO_ACID_eq && high >= -NO_ACID_eq) return [t['correct-ph-right']!]
  if (high < 0) return [fill(t['correct-base']!, { ...ph, charge, grams: bicarbonate(-(low + high) / 2, display) })]
  if (c.acid === null) return [fill(t['correct-acid-none']!, { ...ph, charge })]
  const { product, mass_kg, first_kg } = c.acid
  const { density_kg_m3 } = product
  const amount = (kg: number) =>
    density_kg_m3 === null
      ? `${decimals(kg * 1000, 1, display.decimal)} g`
      : `${decimals((kg / density_kg_m3) * 1e6, 1, display.decimal)} mL`
  const slots = {
    ...ph,
    name: choiceName(product.id, words),
    low: amount(mass_kg.low),
    high: amount(mass_kg.high),
    first: amount(first_kg),
  }
  return [fill(t['correct-acid']!, slots), words.cautions['acid']!]
}

const weakOf = (doses: CorrectionGoal['doses'], id: string) => doses.find((d) => d.id === id)?.weakStock ?? null

/** A dose by the scale, or by volume of the weak stock that the batch has for it. */
function doseText(mass_kg: number, weak: WeakStock | null, t: Words['tables'], display: Display): string {
  if (weak !== null) {
    const perVolume = weak.dissolve_kg / weak.volume_m3 / (weak.thin_m3 === null ? 1 : weak.volume_m3 / weak.thin_m3)
    return fill(t['correct-weak']!, { amount: millilitres(mass_kg / perVolume, display) })
  }
  return mass_kg >= LEAST_GRAM_kg
    ? `${decimals(mass_kg * 1000, 2, display.decimal)} g`
    : `${decimals(mass_kg * 1e6, 1, display.decimal)} mg`
}

/** Below this a mass is told in milligrams. */
const LEAST_GRAM_kg = 5e-5

/** What has to be asked about a reading of the conductivity pen; null where it was read. */
export function penQuestion(read: PenReading, typed: string, words: Words, display: Display): string | null {
  const t = words.tables
  const shown = (S_m: number) => shownText(quantity(S_m, 'S_m'), display)
  if ('read_S_m' in read) return null
  if ('unread' in read) return fill(t['correct-unread']!, { typed, example: '1.4 mS/cm' })
  if ('beyond_S_m' in read)
    return fill(t['correct-no-feed']!, { typed, read: shown(read.beyond_S_m), perhaps: shown(read.perhaps_S_m) })
  const { onScales_S_m: on } = read
  const slots = { on500: shown(on['ppm-500']), on640: shown(on['ppm-640']), on700: shown(on['ppm-700']) }
  return fill(t['correct-which-scale']!, { typed, ...slots })
}

/** Today's correction in sentences, in the order in which it is done. */
export function correctionTexts(
  c: Correction,
  goal: CorrectionGoal,
  words: Words,
  display: Display,
): readonly string[] {
  const t = words.tables
  const volume = shownText(quantity(c.topUp_m3, 'm3'), display)
  const lines: string[] = []
  if (c.topUp_m3 > 0 && c.strength > 0)
    lines.push(fill(t['correct-top-up']!, { volume, strength: decimals(100 * c.strength, 0) }))
  else if (c.topUp_m3 > 0) lines.push(fill(t['correct-plain']!, { volume }))
  else if (c.doses_kg.length > 0) lines.push(t['correct-stronger']!)
  for (const { id, mass_kg } of c.doses_kg)
    lines.push(`  ${doseText(mass_kg, weakOf(goal.doses, id), t, display)} ${choiceName(id, words)}`)
  if (goal.factor !== null && c.topUp_m3 > 0 && c.strength > 0) {
    const drawn = quantity((c.topUp_m3 * c.strength) / goal.factor, 'm3')
    lines.push(`  ${fill(t['correct-stock']!, { volume: shownText(drawn, display) })}`)
  }
  if (c.exchange_m3 > 0)
    lines.push(fill(t['correct-exchange']!, { volume: shownText(quantity(c.exchange_m3, 'm3'), display) }))
  if (lines.length === 0) lines.push(t['correct-nothing']!)
  return [...lines, ...acidText(c, goal, words, display)]
}
