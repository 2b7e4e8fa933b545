import type { StopFacts } from '../../disciplines/hydraulics/index.ts'
import { type ReservoirFacts, stickMarks } from '../../disciplines/reservoir/index.ts'
import type { TippingFacts } from '../../disciplines/structure/index.ts'
import type { DayCourse, DayFacts } from '../../disciplines/water/index.ts'
import type { Facts } from '../../evaluate.ts'
import type { Band, Finding } from '../../findings/finding.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import { sources } from '../../tables/sources.ts'
import { type Display, plainFigures } from '../display.ts'
import { findingText, placeName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'
import { type Cell, csv } from './csv.ts'
import { figure, mm } from './figures.ts'

interface Given {
  readonly facts: Facts
  readonly findings: readonly Finding[]
  readonly words: Words
  readonly display: Display
}

const HOUR_s = 3600
const MINUTE_s = 60
const LITRE_m3 = 1e-3
const HOURS = 24

/** Five figures tell more than any of these numbers is known to. */
const told = (n: number): number => Number(n.toPrecision(5))

/** Every finding: one line each, its number in the unit in which it is shown, with the nearer of its limits. */
function findingRow(f: Finding, { words, display }: Given): Cell[] {
  const text = findingText(f, words, display)
  const own = f.measured === null ? null : plainFigures(f.measured, display)
  const limits: Band = f.verdict === 'watch' && Object.keys(f.want).length > 0 ? f.want : { ...f.want, ...f.must }
  // In the unit of the number: a limit of grams beside a number of kilograms would be read as kilograms.
  const limit = (n: number | undefined): Cell =>
    n === undefined || f.measured === null
      ? null
      : told(plainFigures(quantity(n, f.measured.unit), display, f.measured).ends[0]!)
  return [
    f.id,
    text.short,
    placeName(f.at, words),
    words.tables[`verdict-${f.verdict}`] ?? f.verdict,
    own === null ? null : told(own.ends[0]!),
    own === null ? null : told(own.ends[1]!),
    own?.unit ?? null,
    limit(limits.min),
    limit(limits.max),
    text.sentence,
    sources[f.source].cite,
  ]
}

/** The dip stick as a table: each mark and the two lines, from its foot. */
function stickRows(facts: ReservoirFacts, words: Words): Cell[][] {
  const { tank } = facts
  const { stickFill, stickLow } = words.waterPath
  const line = (l: Known<{ readonly level_m: number; readonly volume_m3: number }>, name: string) =>
    isKnown(l) ? [{ ...l.known, name }] : []
  const all = [
    ...stickMarks(facts).map(({ level_m, volume_m3 }) => ({ level_m, volume_m3, name: null })),
    ...line(tank.low, stickLow),
    ...line(tank.fill, stickFill),
  ]
  return all
    .toSorted((a, b) => a.level_m - b.level_m)
    .map((m): Cell[] => [figure(m.level_m * 1000, 1), figure(m.volume_m3 / LITRE_m3, 3), m.name])
}

/** How long plants of each age hold out without water, and in the hottest air how long a timer may rest. */
function stopRows(facts: StopFacts): Cell[][] {
  const row = (week: number, air_C: number, dry_s: { low: number; high: number }, rest_s: number | null): Cell[] => [
    week,
    figure(air_C, 1),
    figure(dry_s.low / HOUR_s, 2),
    figure(dry_s.high / HOUR_s, 2),
    rest_s === null ? null : figure(rest_s / MINUTE_s, 0),
  ]
  return [
    ...facts.times.map((t) => row(t.week, t.air_C, t.dry_s, null)),
    ...facts.hottest.map((t) => row(t.week, t.air_C, t.dry_s, t.pause_s.low)),
  ]
}

/** The two days, hour by hour. */
function dayRows(d: DayFacts): Cell[][] {
  const at = (series: readonly number[], step_s: number, hour: number): number =>
    figure(series[Math.round((hour * HOUR_s) / step_s) % series.length]!, 2)
  const solution = (c: DayCourse, hour: number) => at(c.course.temperature_C, c.course.step_s, hour)
  const air = (c: DayCourse, hour: number) => at(c.air_C, (HOURS * HOUR_s) / c.air_C.length, hour)
  return Array.from({ length: HOURS }, (_, hour): Cell[] => [
    hour,
    air(d.hotLow, hour),
    solution(d.hotFull, hour),
    solution(d.hotLow, hour),
    at(d.hotLow.saturation_g_m3, d.hotLow.course.step_s, hour),
    air(d.coldLow, hour),
    solution(d.coldFull, hour),
    solution(d.coldLow, hour),
  ])
}

/** The tower against the gust, by age of the crop and level of the tank. */
const tippingRows = (t: TippingFacts): Cell[][] =>
  t.cells.map((c) => [
    c.week,
    figure(c.level.volume_m3 / LITRE_m3, 2),
    mm(c.level.level_m),
    figure(c.mass_kg, 2),
    c.ratio === null ? null : figure(c.ratio, 3),
    Number.isFinite(c.falls_m_s) ? figure(c.falls_m_s, 2) : null,
    Number.isFinite(c.free_m_s) ? figure(c.free_m_s, 2) : null,
    figure(c.strap_N, 1),
  ])

/** Findings, dip stick, stop, day and tipping as tables for a spreadsheet; what is not known yet is left out. */
export function runningTables(g: Given): readonly { readonly name: string; readonly text: string }[] {
  const { facts, words } = g
  const table = (name: string, head: readonly string[], rows: readonly (readonly Cell[])[]) =>
    rows.length === 0 ? [] : [{ name, text: csv(head, rows, words.decimal) }]
  const of = <F>(known: Known<F>, rows: (facts: F) => Cell[][]) => (isKnown(known) ? rows(known.known) : [])
  const { reservoir, hydraulics, day, structure } = facts
  return [
    ...table(
      'findings.csv',
      words.csv.findings,
      g.findings.map((f) => findingRow(f, g)),
    ),
    ...table(
      'dip-stick.csv',
      words.csv.dipStick,
      of(reservoir, (r) => stickRows(r, words)),
    ),
    ...table('stop.csv', words.csv.stop, stopRows(hydraulics.stop)),
    ...table('day.csv', words.csv.day, day === null ? [] : of(day, dayRows)),
    ...table('tipping.csv', words.csv.tipping, of(structure.tipping, tippingRows)),
  ]
}
