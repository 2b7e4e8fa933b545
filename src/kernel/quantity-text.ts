import { ambiguousUnits, type EdgeUnit, edgeUnits } from './edge-units.ts'
import type { Unit } from './units.ts'

/** What reading a quantity gave: a number in the engine's unit, or the reason why none. */
export type ReadQuantity =
  | { readonly ok: true; readonly value: number; readonly spelled: string }
  | { readonly ok: false; readonly problem: 'empty' | 'not-a-number' | 'too-long' }
  | {
      readonly ok: false
      readonly problem: 'no-unit' | 'unknown-unit'
      readonly accepted: readonly string[]
      readonly found: string
    }
  | {
      readonly ok: false
      readonly problem: 'ambiguous-unit'
      readonly choices: readonly string[]
      readonly found: string
    }
  | {
      readonly ok: false
      readonly problem: 'ambiguous-number'
      readonly choices: readonly string[]
      readonly found: string
    }

const LONGEST = 64

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

const WHOLE = /^\d+$/
const FRACTION = /^(\d+)\/(\d+)$/
const DECIMAL = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?$/i
const GROUPED = /^[1-9]\d{0,2}([.,])\d{3}$/
const MANY_GROUPS = /^[1-9]\d{0,2}(?:,\d{3}){2,}(?:\.\d+)?$|^[1-9]\d{0,2}(?:,\d{3})+\.\d+$/

/** Length text made of feet and inches: 1' 6 3/4". */
const FEET_INCHES = /^(\d+(?:\.\d+)?)\s*(?:'|′|’|ft|feet|foot)\s*(?:(.+?)\s*(?:"|″|”|''|in|inch|inches))?$/

function fraction(text: string): number | null {
  const match = FRACTION.exec(text)
  if (!match) return null
  const under = Number(match[2])
  return under === 0 ? null : Number(match[1]) / under
}

/** A number as typed: `104`, `88,9`, `1 1/2`, `1-1/2`, `3/4`, `½`. Null where it is none. */
export function numberFromText(text: string): number | null {
  const sign = /^[-−]/.test(text) ? -1 : 1
  const body = text.replace(/^[-−+]/, '').trim()
  const parts = body.split(/\s+|(?<=\d)-(?=\d+\/\d)/)
  if (parts.length === 2 && WHOLE.test(parts[0]!)) {
    const rest = fraction(parts[1]!)
    return rest === null ? null : sign * (Number(parts[0]) + rest)
  }
  if (parts.length !== 1) return null
  const only = fraction(body)
  if (only !== null) return sign * only
  if (MANY_GROUPS.test(body)) return sign * Number(body.replaceAll(',', ''))
  if (!DECIMAL.test(body)) return null
  const value = Number(body.replace(',', '.'))
  return Number.isFinite(value) ? sign * value : null
}

/** Smaller than this is nothing: its square, or one over it, is no number that can be reckoned with. */
const NOTHING = 1e-100

function convert(n: number, unit: EdgeUnit): number {
  const value = ((n + (unit.offset ?? 0)) * (unit.times ?? 1)) / (unit.over ?? 1)
  return Math.abs(value) < NOTHING ? 0 : value
}

function findUnit(list: readonly EdgeUnit[], typed: string): EdgeUnit | null {
  const exact = list.find((u) => u.spell.includes(typed))
  if (exact) return exact
  const low = typed.toLowerCase()
  const loose = list.filter((u) => u.spell.some((s) => s.toLowerCase() === low))
  return loose.length === 1 ? loose[0]! : null
}

function feetAndInches(text: string): number | null {
  const match = FEET_INCHES.exec(text)
  if (!match?.[2]) return null
  const inches = numberFromText(match[2])
  return inches === null || inches < 0 || inches >= 12 ? null : Number(match[1]) * 0.3048 + inches * 0.0254
}

function tidy(text: string): string {
  let out = text
    .normalize('NFC')
    .replace(/[\u00a0\u2009\u202f]/g, ' ')
    .trim()
    .replace(/\s+/g, ' ')
  for (const [glyph, plain] of Object.entries(vulgar)) out = out.replaceAll(glyph, ` ${plain}`)
  return out.replace(/⁄/g, '/').trim()
}

/**
 * Reads a quantity as a person types it into the engine's unit.
 *
 * Takes decimal point or comma, fractions, mixed numbers, feet with inches; refuses text that could mean two things
 * (`1,500 mm`, `5 gal`) and says what it could mean. Linear in the length of the text, which is bounded.
 */
export function readQuantity(typed: string, unit: Unit): ReadQuantity {
  if (typed.length > LONGEST) return { ok: false, problem: 'too-long' }
  const text = tidy(typed)
  if (text === '') return { ok: false, problem: 'empty' }
  const list = edgeUnits[unit] ?? []
  if (unit === 'm') {
    const length = feetAndInches(text)
    if (length !== null) return { ok: true, value: length, spelled: 'ft' }
  }
  const split = /^([-−+]?[\d\s.,/-]*(?:e[+-]?\d+)?)(.*)$/i.exec(text)!
  const numberPart = split[1]!.trim()
  const unitPart = split[2]!.trim()
  const accepted = list.map((u) => u.spell[0]!)
  if (numberPart === '') return { ok: false, problem: 'not-a-number' }
  const n = numberFromText(numberPart)
  if (n === null) return { ok: false, problem: 'not-a-number' }
  if (unitPart === '') return { ok: false, problem: 'no-unit', accepted, found: text }
  const found = findUnit(list, unitPart)
  if (!found) {
    const choices = ambiguousUnits[unitPart.toLowerCase()]
    if (choices) return { ok: false, problem: 'ambiguous-unit', choices, found: unitPart }
    return { ok: false, problem: 'unknown-unit', accepted, found: unitPart }
  }
  const bare = numberPart.replace(/^[-−+]/, '')
  if (GROUPED.test(bare)) {
    const mark = GROUPED.exec(bare)![1]!
    if (mark === ',') {
      const choices = [`${bare.replace(',', '')} ${unitPart}`, `${bare.replace(',', '.')} ${unitPart}`]
      return { ok: false, problem: 'ambiguous-number', choices, found: text }
    }
  }
  return { ok: true, value: convert(n, found), spelled: found.spell[0]! }
}

/** A number of the engine in one of the units people write, by its first spelling. Throws RangeError on a unit that is not listed. */
export function inUnit(value: number, unit: Unit, spelled: string): number {
  const found = (edgeUnits[unit] ?? []).find((u) => u.spell.includes(spelled))
  if (!found) throw new RangeError(`inUnit: ${spelled} is no unit of ${unit}`)
  return (value * (found.over ?? 1)) / (found.times ?? 1) - (found.offset ?? 0)
}
