/** Which number matters, in words and as a table: one sentence a result, and what to measure first. */
import { quantity, type Unit } from '../../kernel/units.ts'
import { PUMP_SHAPE } from '../../sensitivity/pump-shape.ts'
import type { Improve, ResultSwings, Sensitivity } from '../../sensitivity/swings.ts'
import { type Display, plainFigures, shownText } from '../display.ts'
import { fill, oneOf } from '../words/fill.ts'
import { placeName } from '../words/place-names.ts'
import type { Words } from '../words/words.ts'
import { type Cell, csv } from './csv.ts'

/** A reading by its name: a field, or the curve that no field holds. */
export const readingName = (at: string, words: Words): string =>
  at === PUMP_SHAPE ? words.sensitivity.shape : placeName(at, words)

/** A number without digits that say nothing. */
const plain = (n: number, display: Display): string => {
  const digits = n === 0 ? 0 : Math.max(0, Math.ceil(-Math.log10(n) - 1e-9) + 1)
  return Number(n.toFixed(Math.min(12, digits)))
    .toString()
    .replace('.', display.decimal)
}

/** How much a result changes, in the unit in which the result itself is told. */
export function changeOf(r: Pick<ResultSwings, 'value' | 'unit'>, change: number, display: Display) {
  const { ends, unit } = plainFigures({ unit: r.unit, low: r.value, high: r.value + Math.abs(change) }, display)
  return { figure: (ends[1] ?? 0) - (ends[0] ?? 0), unit }
}

const withUnit = (figure: string, unit: string): string => (unit === '' ? figure : `${figure} ${unit}`)

const TWO = 2

/** A swing with two figures. */
export function swingText(r: ResultSwings, change: number, display: Display): string {
  const { figure, unit } = changeOf(r, change, display)
  return withUnit(plain(Number(figure.toPrecision(TWO)), display), unit)
}

/** A bound that is surely kept: one figure, rounded up. */
function boundText(r: ResultSwings, change: number, display: Display): string {
  const { figure, unit } = changeOf(r, change, display)
  const decade = 10 ** Math.floor(Math.log10(figure))
  return withUnit(plain(Number(((Math.floor(figure / decade) + 1) * decade).toPrecision(1)), display), unit)
}

/** One result: its value, the readings that move it most, and how little all others do. */
export function resultText(r: ResultSwings, words: Words, display: Display): string {
  const w = words.sensitivity
  const slots = { result: w.results[r.id], value: shownText(quantity(r.value, r.unit), display) }
  if (r.swings.length === 0) return fill(w.none, slots)
  const item = (s: ResultSwings['swings'][number]) =>
    fill(w.item, { name: readingName(s.at, words), swing: swingText(r, s.size, display) })
  const list = r.swings.map(item).join(', ')
  const rest = r.rest.size > 0 ? fill(w.rest, { swing: boundText(r, r.rest.size, display) }) : w.alone
  return fill(w.sentence, { ...slots, list, rest })
}

/** What no reading settles; empty where there is nothing. */
export const ownText = (r: ResultSwings, words: Words, display: Display): string =>
  r.own > 0 ? fill(words.sensitivity.own, { swing: swingText(r, r.own, display) }) : ''

/** Both as an answer to a finding that its own band leaves open. */
export function decidesText(r: ResultSwings, words: Words, display: Display): string {
  const told = [resultText(r, words, display), ownText(r, words, display)].filter((text) => text !== '')
  return fill(words.sensitivity.decides, { sentence: told.join(' ') })
}

export const unknownText = ({ id, needs }: Sensitivity['unknown'][number], words: Words): string =>
  fill(words.sensitivity.unknown, {
    result: words.sensitivity.results[id],
    needs: oneOf(
      needs.map((n) => placeName(n, words)),
      words.phrases['and']!,
    ),
  })

/** A reading to improve: how, and for which results. */
export function improveText({ at, reading, results }: Improve, words: Words): string {
  const w = words.sensitivity
  const named = results.map((id) => w.results[id].replace(/^\p{Lu}(?=\p{Ll})/u, (c) => c.toLowerCase()))
  return fill(w.improveItem, { name: readingName(at, words), how: w.how[reading], results: named.join(', ') })
}

/** Readings worth improving first. */
export const IMPROVE_FIRST = 6

const told = (n: number): number => Number(n.toPrecision(5))

/** How far a reading may be off, in the unit in which it is told. */
function offCells(s: ResultSwings['swings'][number], display: Display): readonly Cell[] {
  const { value, unit, off } = s
  const shown = plainFigures({ unit: unit as Unit, low: value ?? 0, high: (value ?? 0) + off.high }, display)
  const below = plainFigures({ unit: unit as Unit, low: (value ?? 0) - off.low, high: value ?? 0 }, display)
  const wide = ({ ends }: typeof shown) => told((ends[1] ?? 0) - (ends[0] ?? 0))
  return [wide(below), wide(shown), shown.unit]
}

/** One line a reading and result, for a spreadsheet. */
export function sensitivityCsv({ results }: Sensitivity, words: Words, display: Display): string {
  const signed = (r: ResultSwings, change: number | null): Cell =>
    change === null ? null : told(Math.sign(change) * changeOf(r, change, display).figure)
  const rows = results.flatMap((r) => {
    const { ends, unit } = plainFigures(quantity(r.value, r.unit), display)
    return r.swings.map((s): readonly Cell[] => [
      ...[words.sensitivity.results[r.id], told(ends[0]!), unit, readingName(s.at, words), s.at],
      ...offCells(s, display),
      ...[signed(r, s.low), signed(r, s.high)],
    ])
  })
  return csv(words.sensitivity.csv, rows, words.decimal)
}
