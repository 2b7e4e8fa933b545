import type { Facts } from '../../evaluate.ts'
import type { Finding } from '../../findings/finding.ts'
import { type Quantity, quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { type Display, decimals, inchFraction, markFigure, shownText, telling, thousandths } from '../display.ts'
import type { Drawing } from '../drawing/primitives.ts'
import { type Areas, areas, type PaperName } from '../paper/size.ts'
import { withinInches } from '../tape.ts'
import type { SheetKey, SheetSentences } from '../words/en/sheets.ts'
import { fill } from '../words/fill.ts'
import type { Words } from '../words/words.ts'

/** What a set of sheets is made from. */
export interface SheetInput {
  readonly plan: Plan
  readonly facts: Facts
  readonly findings: readonly Finding[]
  readonly words: Words
  readonly sentences: SheetSentences
  readonly display: Display
  readonly paper: PaperName
  /** As printed in the title block. */
  readonly date: string
  /** The whole column unrolled, and not only as much as repeats. */
  readonly wrap: boolean
}

export type Say = (key: SheetKey, slots?: Readonly<Record<string, string>>) => string

export interface Context extends SheetInput {
  readonly say: Say
  readonly room: Areas
  /** A length as a figure on a drawing: its unit stands once on the sheet. */
  readonly figure: (length_m: number) => string
  /** A diameter, wall or round, which no tape mark hits: decimal inches where inches are meant. */
  readonly size: (length_m: number) => string
  /** A tolerance: finer than a tape, by a steel rule where inches are meant. */
  readonly within: (length_m: number) => string
  /** The same in millimetres: of the check bar, which is so many millimetres long. */
  readonly ofBar: (length_m: number) => string
  /** A length as a shop stocks it. */
  readonly stock: (length_m: number) => string
  /** A length with its unit. */
  readonly length: (length_m: number) => string
  readonly shown: (q: Quantity) => string
  readonly angle: (angle_rad: number) => string
  readonly unit: string
}

/** One page before it is numbered. */
export interface Draft {
  readonly id: SheetId
  readonly title: string
  readonly subtitle: string
  readonly scale: string
  readonly drawing: Drawing
  /** Shapes at full size about their own origin, for a cutter; none where nothing is at full size. */
  readonly contours?: Drawing
}

/** Every sheet there is, in the order of the set. */
export const sheetIds = [
  'overview',
  'section',
  'marking',
  'strip',
  'pole',
  'hole',
  'wrap',
  'stub',
  'gauge',
  'pocket',
  'cup-hole',
  'fitting',
  'lid',
  'dip-stick',
  'distributor',
  'water',
  'stand',
  'cuts',
  'parts',
  'steps',
  'batch',
  'labels',
  'disposal',
] as const

export type SheetId = (typeof sheetIds)[number]

/** Pages of a sheet, or why there are none: fields of the plan that are missing, or a reason; `null` for a sheet that this plan has no use for. */
export type Drafted =
  | { readonly pages: readonly Draft[] }
  | { readonly needs: readonly string[] }
  | { readonly because: SheetKey }
  | null

/** Millimetres with one decimal where it says something, or inches to the owner's mark. */
export function figureOf(length_m: number, display: Display): string {
  if (display.lengths === 'in') return inchFraction(length_m, display.inchParts).text
  return markFigure(length_m, display)
}

const trimmed = (figure: string): string => figure.replace(/([.,]\d*?)0+$/, '$1').replace(/[.,]$/, '')

export function context(input: SheetInput): Context {
  const { display, sentences } = input
  const unit = display.lengths === 'in' ? sentences.inch : sentences.mm
  const figure = (length_m: number) => figureOf(length_m, display)
  const millimetres = (length_m: number) => `${trimmed(decimals(length_m * 1000, 1, display.decimal))} ${sentences.mm}`
  return {
    ...input,
    say: (key, slots = {}) => fill(sentences[key], slots),
    room: areas(input.paper),
    figure,
    size: (length_m) => (display.lengths === 'in' ? thousandths(length_m, display.decimal) : figure(length_m)),
    within: (length_m) => (display.lengths === 'in' ? withinInches(length_m, display) : millimetres(length_m)),
    ofBar: millimetres,
    stock: (length_m) => shownText(quantity(length_m, 'm'), telling('stock', display)),
    length: (length_m) => `${figure(length_m)} ${unit}`,
    shown: (q) => shownText(q, display),
    angle: (angle_rad) => shownText(quantity(angle_rad, 'rad'), display).replace(/[.,]0°/, '°'),
    unit,
  }
}
