import type { Correction } from '../../disciplines/nutrients/correction.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, decimals, shownText } from '../display.ts'
import { fill } from '../words/fill.ts'
import type { Words } from '../words/words.ts'

/** Acid smaller than this, in moles of charge, nobody can measure into a tank. */
const NO_ACID_eq = 0.0005

/** What a correction is made for. */
export interface CorrectionGoal {
  readonly pH: number | null
  readonly readPh: number | null
  readonly penWidth: number | null
  /** Strength of the stock bottles, where there are any. */
  readonly factor: number | null
}

function acidText(c: Correction, goal: CorrectionGoal, words: Words, display: Display): readonly string[] {
  const t = words.tables
  if (c.acid_eq === null || goal.pH === null || goal.readPh === null) return []
  const ph = { from: decimals(goal.readPh, 2, display.decimal), to: decimals(goal.pH, 2, display.decimal) }
  if (!c.penHolds) return [fill(t['correct-pen']!, { width: decimals(goal.penWidth ?? 0, 1, display.decimal) })]
  const { low, high } = c.acid_eq
  const charge = `${decimals(Math.abs((low + high) / 2) * 1000, 1, display.decimal)} meq`
  if (low <= NO_ACID_eq && high >= -NO_ACID_eq) return [t['correct-ph-right']!]
  if (high < 0) return [fill(t['correct-base']!, { ...ph, charge })]
  if (c.acid === null) return [fill(t['correct-acid-none']!, { ...ph, charge })]
  const { product, mass_kg, first_kg } = c.acid
  const { density_kg_m3 } = product
  const amount = (kg: number) =>
    density_kg_m3 === null
      ? `${decimals(kg * 1000, 1, display.decimal)} g`
      : `${decimals((kg / density_kg_m3) * 1e6, 1, display.decimal)} mL`
  const slots = {
    ...ph,
    name: product.id,
    low: amount(mass_kg.low),
    high: amount(mass_kg.high),
    first: amount(first_kg),
  }
  return [fill(t['correct-acid']!, slots), words.cautions['acid']!]
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
  for (const { id, mass_kg } of c.doses_kg) lines.push(`  ${decimals(mass_kg * 1000, 2, display.decimal)} g ${id}`)
  if (goal.factor !== null && c.topUp_m3 > 0 && c.strength > 0) {
    const drawn = quantity((c.topUp_m3 * c.strength) / goal.factor, 'm3')
    lines.push(`  ${fill(t['correct-stock']!, { volume: shownText(drawn, display) })}`)
  }
  if (c.exchange_m3 > 0)
    lines.push(fill(t['correct-exchange']!, { volume: shownText(quantity(c.exchange_m3, 'm3'), display) }))
  if (lines.length === 0) lines.push(t['correct-nothing']!)
  return [...lines, ...acidText(c, goal, words, display)]
}
