/** What a typed or printed pipe name says, as tests that a row of the table passes or not. */
import type { PipeRow } from './pipes.ts'

interface PipeTest {
  /** How much the word counts where no row passes every test: sizes before standards before classes. */
  readonly weight: number
  readonly holds: (row: PipeRow) => boolean
}

export interface PipeWords {
  readonly tests: readonly PipeTest[]
  /** The size in metres as it was named, to order rows that fit equally badly. */
  readonly size_m: number | null
  /** The size as a shop's name, where the text gives it in inches or as a bore. */
  readonly tradeName: { readonly inch?: string; readonly bore?: string } | null
}

const SIZE = 4
const STANDARD = 3
const SERIES = 2

const standards: readonly (readonly [RegExp, string])[] = [
  [/\b(?:astm ?)?d ?1785\b/, 'ASTM D1785'],
  [/\b(?:astm ?)?d ?2665\b/, 'ASTM D2665'],
  [/\b(?:astm ?)?d ?2729\b/, 'ASTM D2729'],
  [/\b(?:astm ?)?d ?3034\b/, 'ASTM D3034'],
  [/\b(?:astm ?)?d ?2949\b/, 'ASTM D2949'],
  [/\b(?:bs |din |nf |uni )?(?:en )?(?:iso|en) 1452\b(?: ?- ?\d)?/, 'ISO 1452-2'],
  [/\b(?:bs |din |nf |uni )?en 1401\b(?: ?- ?\d)?/, 'EN 1401-1'],
  [/\b(?:bs |din |nf |uni )?en 1329\b(?: ?- ?\d)?/, 'EN 1329-1'],
  [/\bas ?(?:\/ ?nzs)? 1260\b/, 'AS/NZS 1260'],
  [/\bas ?(?:\/ ?nzs)? 1477\b/, 'AS/NZS 1477'],
  [/\bjis ?k? ?6741\b/, 'JIS K 6741'],
  [/\bis ?:? ?4985\b(?: ?: ?\d{4})?/, 'IS 4985'],
]

const fractions: Readonly<Record<string, string>> = { '½': ' 1/2', '¼': ' 1/4', '¾': ' 3/4' }

/** One spelling for quotes, signs, decimal commas, inches and schedules. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[½¼¾]/g, (mark) => fractions[mark] ?? '')
    .replace(/[×✕*]/g, ' x ')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/["”″“]|''|\binch(?:es)?\b/g, ' in ')
    .replace(/(\d)(in|mm|x)\b/g, '$1 $2 ')
    .replace(/(\d) ?x ?(?=\d)/g, '$1 x ')
    .replace(/\bschedule\b|\bsch\./g, 'sch')
    .replace(/\s+/g, ' ')
    .trim()

const seriesOf = (row: PipeRow): string => row.series.toLowerCase().replace(/[^a-z0-9.]+/g, ' ')
const hasWord = (row: PipeRow, word: string): boolean => ` ${seriesOf(row)} `.includes(` ${word} `)

/** Tests from one word of the class, stiffness or schedule: "sch 40", "pn16", "sn 8", "class 5", "vu". */
function seriesTests(text: string, standard: string | null): PipeTest[] {
  const tests: PipeTest[] = []
  const add = (holds: PipeTest['holds']) => tests.push({ weight: SERIES, holds })
  const numbered = text.match(/\b(sch|sdr|sn|pn|class) ?-?(\d+(?:\.\d+)?)/)
  if (numbered !== null) {
    const [, kind, number] = numbered
    const spaced = kind === 'sch' || kind === 'sdr' || kind === 'class'
    add((row) => hasWord(row, spaced ? `${kind} ${number}` : `${kind}${number}`))
  }
  const thickness = text.match(/\b(vp|vu)(?=[ \d]|$)/)
  if (thickness !== null) add((row) => hasWord(row, thickness[1]!))
  if (/\bdwv\b/.test(text)) add((row) => hasWord(row, 'dwv') || row.standard === 'AS/NZS 1260')
  if (/\bsewer\b/.test(text)) add((row) => hasWord(row, 'sewer') || row.standard === 'ASTM D3034')
  const area = standard === 'EN 1329-1' ? text.match(/\b(bd|b)\b/) : null
  if (area !== null) add((row) => seriesOf(row) === area[1])
  return tests
}

const millimetres = (length_m: number) => Math.round(length_m * 1e6) / 1e3
const within = (a: number, b: number) => Math.abs(a - b) < 0.06

/** A nominal size in inches as the table writes it: "1 1/2" and "1.5" become "1-1/2 in". */
function inchName(whole: string): string {
  const mixed = whole.trim().replace(/[ -]+/, '-')
  const decimals: Readonly<Record<string, string>> = { '.5': '1/2', '.25': '1/4', '.75': '3/4' }
  const decimal = mixed.match(/^(\d*?)0*(\.\d+?)0*$/)
  const part = decimal === null ? undefined : decimals[decimal[2]!]
  if (decimal === null || part === undefined) return `${mixed} in`
  return decimal[1] === '' ? `${part} in` : `${decimal[1]}-${part} in`
}

/** Length in metres of "1-1/2 in". */
function inchLength(name: string): number {
  const parts = name.replace(' in', '').split('-')
  return (
    parts.reduce(
      (sum, part) =>
        sum +
        part
          .split('/')
          .map(Number)
          .reduce((a, b) => a / b),
      0,
    ) * 0.0254
  )
}

interface Size {
  readonly test: PipeTest | null
  readonly tradeName: PipeWords['tradeName']
  readonly size_m: number | null
}

function sizeTest(text: string): Size {
  const size = (size_m: number, holds: PipeTest['holds'], tradeName: PipeWords['tradeName'] = null): Size => ({
    test: { weight: SIZE, holds },
    tradeName,
    size_m,
  })
  const pair = text.match(/(\d+(?:\.\d+)?)(?: mm)? x (\d+(?:\.\d+)?)(?! ?(?:m|ft)\b)/)
  if (pair !== null) {
    const [outside, wall] = [Number(pair[1]), Number(pair[2])]
    return size(
      outside / 1000,
      (row) => within(millimetres(row.outside_m), outside) && within(millimetres(row.wall_m), wall),
    )
  }
  const inches = text.match(/(\d+[ -]+\d\/\d|\d\/\d|\d*\.?\d+)[ -]*in\b/)
  if (inches !== null) {
    const inch = inchName(inches[1]!)
    return size(inchLength(inch), (row) => row.nominal === inch, { inch })
  }
  const bore = text.match(/\b(?:dn|nb) ?(\d+)/) ?? text.match(/\bv[pu] ?(\d+)/)
  if (bore !== null) {
    const [, number] = bore
    return size(Number(number) / 1000, (row) => row.nominal === number || row.nominal === `DN ${number}`, {
      bore: number!,
    })
  }
  const number = text.match(/(?:^|\s)(\d+(?:\.\d+)?)(?: mm)?(?=\s|$)/)?.[1]
  if (number === undefined) return { test: null, tradeName: null, size_m: null }
  const named = (row: PipeRow) => row.nominal.replace(/^DN | mm$| in$/g, '') === number
  const fits = (row: PipeRow) => named(row) || within(millimetres(row.outside_m), Number(number))
  return size(Number(number) / 1000, fits, { bore: number })
}

/** Reads a pipe's name; words that say nothing of size or kind (makers, dates, pressures) are passed over. */
export function pipeWords(text: string): PipeWords {
  const whole = plain(text)
  const found = standards.find(([pattern]) => pattern.test(whole))
  const standard = found === undefined ? null : found[1]
  const rest = found === undefined ? whole : whole.replace(found[0], ' ').trim()
  const series = seriesTests(rest, standard)
  const withoutSeries = rest.replace(/\b(?:sch|sdr|sn|pn|class|series) ?-?\d+(?:\.\d+)?/g, ' ').trim()
  const { test, tradeName, size_m } = sizeTest(withoutSeries)
  const tests = [...(test === null ? [] : [test]), ...series]
  if (standard !== null) tests.push({ weight: STANDARD, holds: (row) => row.standard === standard })
  return { tests, tradeName, size_m }
}
