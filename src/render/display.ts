import { edgeUnits } from '../kernel/edge-units.ts'
import { inUnit } from '../kernel/quantity-text.ts'
import { ends, type Quantity, type Unit } from '../kernel/units.ts'

/** How numbers are shown: lengths in millimetres or inches, volumes and flows to match, the decimal sign. */
export interface Display {
  readonly lengths: 'mm' | 'in'
  /** Finest mark on the tape, as a share of an inch: 16 or 32. */
  readonly inchParts: 16 | 32
  readonly decimal: '.' | ','
  readonly currency: string
  /** Units that the language writes otherwise, by their usual spelling. */
  readonly units: Readonly<Record<string, string>>
  /** What is being told, where the trade has a measure of its own for it. */
  readonly tells?: Told
}

/** Gusts, heads of water, lengths and tins as a shop stocks them, measures of what is bought and not made by tape, marks. */
export type Told = 'wind' | 'head' | 'stock' | 'bought' | 'mark'

export const telling = (tells: Told, display: Display): Display => ({ ...display, tells })

export const metric: Display = { lengths: 'mm', inchParts: 16, decimal: '.', currency: '', units: {} }
export const inches: Display = { ...metric, lengths: 'in' }

/** A number as shown: figures and unit apart, so that a page can set them apart. */
export interface Shown {
  readonly figure: string
  readonly unit: string
}

interface Style {
  readonly unit: string
  readonly digits: number
}

const MINUS = '−'
const EN_RULE = '–'

/** Rounded to `digits` decimals, without a negative zero, minus as a minus. */
export function decimals(value: number, digits: number, decimal: '.' | ',' = '.'): string {
  const fixed = (Math.abs(value) < 0.5 * 10 ** -digits ? 0 : value).toFixed(digits)
  return fixed.replace('-', MINUS).replace('.', decimal)
}

/** A length to the nearest mark of an inch tape, with the error of that rounding: shown less exact. */
export function inchFraction(
  length_m: number,
  parts: 4 | 16 | 32 | 64,
): { readonly text: string; readonly error_m: number } {
  const marks = Math.round((length_m / 0.0254) * parts)
  const error_m = (marks / parts) * 0.0254 - length_m
  const sign = marks < 0 ? MINUS : ''
  const whole = Math.floor(Math.abs(marks) / parts)
  let top = Math.abs(marks) - whole * parts
  let under: number = parts
  while (top > 0 && top % 2 === 0) {
    top /= 2
    under /= 2
  }
  const text = top === 0 ? `${whole}` : `${whole === 0 ? '' : `${whole} `}${top}/${under}`
  return { text: sign + text, error_m }
}

/** Inches as a pipe's standard prints them. */
export const thousandths = (length_m: number, decimal: '.' | ',' = '.'): string =>
  decimals(length_m / 0.0254, 3, decimal)
    .replace(/([.,]\d*?)0+$/, '$1')
    .replace(/[.,]$/, '')

function lengthStyle(largest_m: number): Style {
  if (largest_m >= 10) return { unit: 'm', digits: 2 }
  return { unit: 'mm', digits: largest_m >= 0.3 ? 0 : 1 }
}

const inchStyles: Readonly<Partial<Record<Unit, Style>>> = {
  m2: { unit: 'ft2', digits: 2 },
  m3: { unit: 'US gal', digits: 2 },
  m3_s: { unit: 'US gph', digits: 0 },
  m3_d: { unit: 'US gal/day', digits: 2 },
  m_s: { unit: 'ft/s', digits: 1 },
  kg: { unit: 'lb', digits: 1 },
  kg_m2: { unit: 'lb/ft2', digits: 0 },
  C: { unit: '°F', digits: 0 },
  K: { unit: '°F', digits: 1 },
  N: { unit: 'lbf', digits: 0 },
  N_m: { unit: 'lbf ft', digits: 0 },
  Pa: { unit: 'psi', digits: 0 },
}

const styles: Readonly<Partial<Record<Unit, Style>>> = {
  m2: { unit: 'm2', digits: 2 },
  m3: { unit: 'L', digits: 1 },
  m3_s: { unit: 'L/min', digits: 1 },
  m3_d: { unit: 'L/day', digits: 2 },
  m_s: { unit: 'm/s', digits: 2 },
  s: { unit: 'min', digits: 0 },
  d: { unit: 'days', digits: 0 },
  kg: { unit: 'kg', digits: 1 },
  kg_m2: { unit: 'kg/m2', digits: 0 },
  N: { unit: 'N', digits: 0 },
  Pa: { unit: 'MPa', digits: 2 },
  C: { unit: '°C', digits: 1 },
  g_m3: { unit: 'mg/L', digits: 1 },
  mol_m3: { unit: 'mmol/L', digits: 2 },
  eq_m3: { unit: 'meq/L', digits: 2 },
  S_m: { unit: 'mS/cm', digits: 2 },
  K: { unit: 'K', digits: 1 },
  dB: { unit: 'dB', digits: 0 },
  N_m: { unit: 'N m', digits: 0 },
  V: { unit: 'V', digits: 0 },
  A: { unit: 'A', digits: 1 },
  VA: { unit: 'VA', digits: 0 },
  W: { unit: 'W', digits: 0 },
  J: { unit: 'kWh', digits: 2 },
  As: { unit: 'Ah', digits: 1 },
  rad: { unit: 'deg', digits: 1 },
  mol_m2_d: { unit: 'mol/m2/d', digits: 1 },
  umol_m2_s: { unit: 'umol/m2/s', digits: 0 },
}

const printed: Readonly<Record<string, string>> = {
  deg: '°',
  days: 'days',
  d: 'days',
  m2: 'm²',
  ft2: 'ft²',
  'kg/m2': 'kg/m²',
  'lb/ft2': 'lb/ft²',
  'umol/m2/s': 'µmol/m²/s',
  'mol/m2/d': 'mol/m²/d',
}

function timeStyle(largest_s: number): Style {
  if (largest_s < 180) return { unit: 's', digits: 0 }
  if (largest_s < 3 * 3600) return { unit: 'min', digits: 0 }
  return { unit: 'h', digits: largest_s < 36_000 ? 1 : 0 }
}

const FOOT_m = 0.3048

/** Of a sixty-fourth, what a length as typed may be off. */
const WHOLE = 1e-6

/** Inch measures by what they tell: a gust in miles an hour, a head in feet, a stock length in whole or half feet. */
function inchStyle(unit: Unit, largest: number, tells: Told | undefined): Style | undefined {
  if (unit === 'm_s' && tells === 'wind') return { unit: 'mph', digits: 0 }
  if (unit === 'm3' && tells === 'stock' && largest < 0.001) return { unit: 'US fl oz', digits: largest < 1e-4 ? 1 : 0 }
  if (unit !== 'm') return inchStyles[unit]
  if (tells === 'head' && largest >= FOOT_m) return { unit: 'ft', digits: 1 }
  const halves = (2 * largest) / FOOT_m
  if (tells === 'stock' && halves >= 8 && Math.abs(halves - Math.round(halves)) < WHOLE)
    return { unit: 'ft', digits: Math.round(halves) % 2 }
  return undefined
}

/** A gust to the metre a second: no place is known closer. */
const GUST: Style = { unit: 'm/s', digits: 0 }

function styleOf(unit: Unit, largest: number, display: Display): Style {
  const inch = display.lengths === 'in' ? inchStyle(unit, largest, display.tells) : undefined
  if (unit === 'm') return inch ?? lengthStyle(largest)
  if (unit === 's') return timeStyle(largest)
  if (unit === 'd') return { unit: 'd', digits: largest < 10 ? 1 : 0 }
  if (unit === 'm3' && largest < 0.001 && !(display.lengths === 'in' && display.tells === 'stock'))
    return { unit: 'mL', digits: largest < 0.00002 ? 1 : 0 }
  if (unit === 'kg' && largest > 0 && largest < 0.001) return { unit: 'mg', digits: largest < 0.00001 ? 1 : 0 }
  if (unit === 'kg' && largest < (display.lengths === 'mm' ? 1 : 0.1))
    return { unit: 'g', digits: largest < 0.01 ? 2 : 0 }
  if (unit === 'g_m3' && largest > 0 && largest < 1) return { unit: 'mg/L', digits: 3 }
  // What a floor carries; a kilopascal is a kilonewton per square metre.
  if (unit === 'Pa' && largest < 1e5) return { unit: 'kPa', digits: 1 }
  if (inch === undefined && unit === 'm_s' && display.tells === 'wind') return GUST
  return inch ?? styles[unit] ?? { unit: '', digits: 2 }
}

function figures(low: number, high: number, text: (n: number) => string): string {
  const [a, b] = [text(low), text(high)]
  return a === b ? a : `${a}${EN_RULE}${b}`
}

/** Millimetres with one decimal where it says something. */
export const markFigure = (length_m: number, { decimal }: Display): string =>
  decimals(length_m * 1000, 1, decimal).replace(/[.,]0$/, '')

/** A quantity for people, band and all. */
export function show(q: Quantity, display: Display): Shown {
  const [low, high] = ends(q)
  const { unit } = q
  const largest = Math.max(Math.abs(low), Math.abs(high))
  if (unit === 'count') {
    const text = (n: number) => decimals(n, Number.isInteger(n) ? 0 : 1, display.decimal)
    return { figure: figures(low, high, text), unit: '' }
  }
  if (unit === 'share') {
    const digits = largest < 0.1 ? 1 : 0
    return { figure: figures(low, high, (n) => decimals(n * 100, digits, display.decimal)), unit: '%' }
  }
  if (unit === '1') return { figure: figures(low, high, (n) => decimals(n, 2, display.decimal)), unit: '' }
  if (unit === 'money')
    return { figure: figures(low, high, (n) => decimals(n, 2, display.decimal)), unit: display.currency }
  if (unit === 'm' && display.lengths === 'in' && inchStyle(unit, largest, display.tells) === undefined) {
    // What is less than one mark of an inch tape is told in thousandths, not as nothing.
    const finer = largest > 1e-9 && largest < 0.0254 / display.inchParts
    const byTape = !finer && display.tells !== 'bought'
    const text = (n: number) => (byTape ? inchFraction(n, display.inchParts).text : thousandths(n, display.decimal))
    return { figure: figures(low, high, text), unit: display.units['in'] ?? 'in' }
  }
  if (unit === 'm' && display.tells === 'mark')
    return { figure: figures(low, high, (n) => markFigure(n, display)), unit: display.units['mm'] ?? 'mm' }
  const style = styleOf(unit, largest, display)
  const listed = (edgeUnits[unit] ?? []).some((u) => u.spell.includes(style.unit))
  const text = (n: number) => decimals(listed ? inUnit(n, unit, style.unit) : n, style.digits, display.decimal)
  return { figure: figures(low, high, text), unit: display.units[style.unit] ?? printed[style.unit] ?? style.unit }
}

/** Both ends of a quantity as plain numbers in the unit in which it, or another beside it, is shown: for a spreadsheet. */
export function plainFigures(
  q: Quantity,
  display: Display,
  beside: Quantity = q,
): { readonly ends: readonly number[]; readonly unit: string } {
  const both = ends(q)
  const largest = Math.max(...ends(beside).map(Math.abs))
  if (q.unit === 'share') return { ends: both.map((n) => n * 100), unit: '%' }
  if (q.unit === 'count' || q.unit === '1') return { ends: both, unit: '' }
  if (q.unit === 'money') return { ends: both, unit: display.currency }
  if (q.unit === 'm' && display.lengths === 'in')
    return { ends: both.map((n) => n / 0.0254), unit: display.units['in'] ?? 'in' }
  const { unit } = styleOf(q.unit, largest, display)
  const listed = (edgeUnits[q.unit] ?? []).some((u) => u.spell.includes(unit))
  return {
    ends: both.map((n) => (listed ? inUnit(n, q.unit, unit) : n)),
    unit: display.units[unit] ?? printed[unit] ?? unit,
  }
}

/** Figure and unit in one text, parted by a space; the degree sign stands close. */
export function shownText(q: Quantity, display: Display): string {
  const { figure, unit } = show(q, display)
  return unit === '' ? figure : unit === '°' ? `${figure}°` : `${figure} ${unit}`
}
