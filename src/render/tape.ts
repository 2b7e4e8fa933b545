import type { TapeMarks } from '../disciplines/build/index.ts'
import { type Quantity, quantity } from '../kernel/units.ts'
import { type Display, inchFraction, show, shownText, telling, thousandths } from './display.ts'
import { fill } from './words/fill.ts'
import type { Words } from './words/words.ts'

/** Of a length, the share that a tape's rounding may be off before finer inches are said instead. */
const MOST_OFF = 0.1

/** The finest mark of a steel rule. */
const RULE = 64

const inch = (display: Display): string => display.units['in'] ?? 'in'

/** What may be off, by the marks of a steel rule and never more than is allowed; thousandths where it is finer still. */
export function withinInches(length_m: number, display: Display): string {
  const marks = Math.floor((length_m / 0.0254) * RULE + 1e-6)
  const text = marks < 1 ? thousandths(length_m, display.decimal) : inchFraction((marks / RULE) * 0.0254, RULE).text
  return `${text} ${inch(display)}`
}

/** A length that the marks of an inch tape cannot show, by a steel rule or in thousandths; null where they can. */
export function finerThanTape(length_m: number, display: Display): string | null {
  if (display.lengths !== 'in' || length_m === 0) return null
  const { error_m } = inchFraction(length_m, display.inchParts)
  if (Math.abs(error_m) <= MOST_OFF * Math.abs(length_m)) return null
  const byRule = inchFraction(length_m, RULE)
  const held = Math.abs(byRule.error_m) <= MOST_OFF * Math.abs(length_m)
  return `${held ? byRule.text : thousandths(length_m, display.decimal)} ${inch(display)}`
}

/** Holes that may be a little larger or smaller: by the tape where inches are meant. */
const ROUGH: ReadonlySet<string> = new Set(['starter', 'mesh'])

/** Running marks in one list, their unit once: the figures of the sheets and of the page. */
function marksText({ marks_m }: TapeMarks, display: Display): string {
  const told = marks_m.map((m) => show(quantity(m, 'm'), telling('mark', display)))
  return `${told.map((t) => t.figure).join(display.decimal === ',' ? '; ' : ', ')} ${told.at(-1)?.unit ?? ''}`
}

/** Slots of steps that the trade tells in a way of its own; null for others. */
export function tradeSlot(key: string, slot: unknown, words: Words, display: Display): string | null {
  if (typeof slot !== 'object' || slot === null) return null
  if ('marks_m' in slot) return marksText(slot as TapeMarks, display)
  if (key === 'plumb' && 'value' in slot) return slopeText(Number(slot.value), words, display)
  if (!ROUGH.has(key) || display.lengths === 'mm' || !('drilled' in slot)) return null
  return shownText(slot.drilled as Quantity, display)
}

/** Length of the level with which a slope is read: a metre, or a builder's four feet. */
const LEVEL = { mm_m: 1, in_m: 4 * 0.3048, in_ft: 4 }

/** A slope by what the end of a level may be off, never more than is allowed. */
function slopeText(slope: number, words: Words, display: Display): string {
  if (display.lengths === 'mm')
    return fill(words.phrases['slope-metre']!, { rise: shownText(quantity(slope * LEVEL.mm_m, 'm'), display) })
  const parts = 8
  const rise_m = (Math.floor(((slope * LEVEL.in_m) / 0.0254) * parts) / parts) * 0.0254
  const rise = `${inchFraction(rise_m, 16).text} ${inch(display)}`
  return fill(words.phrases['slope-feet']!, { rise, feet: String(LEVEL.in_ft) })
}
