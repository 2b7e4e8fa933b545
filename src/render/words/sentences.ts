import type { Band, Finding, FindingSlot } from '../../findings/finding.ts'
import { ends, type Quantity, quantity } from '../../kernel/units.ts'
import type { Issue } from '../../plan/issue.ts'
import { bucketFill } from '../bucket.ts'
import { type Display, shownText, telling } from '../display.ts'
import { drillText, isHoleSize } from '../drill.ts'
import { exampleText } from '../example.ts'
import { fill, oneOf } from './fill.ts'
import { choiceName, placeName } from './place-names.ts'
import { remedyText } from './remedies.ts'
import type { Words } from './words.ts'

export { choiceName, placeName }

function slotText(slot: FindingSlot, words: Words, display: Display): string {
  if (typeof slot === 'string') return choiceName(slot, words)
  if (typeof slot === 'number') return String(slot).replace('.', display.decimal)
  if ('drilled' in slot) return drillText(slot.drilled, display)
  if ('filled' in slot) {
    const fills = bucketFill(slot.filled, slot.bucket_m3, display)
    return fills === null ? words.phrases['nothing']! : fill(words.phrases['bucket-fills']!, fills)
  }
  if (!('phrase' in slot)) return shownText(slot, display)
  const own = Object.entries(slot.with ?? {}).map(([k, v]) => [k, slotText(v, words, display)])
  return fill(words.phrases[slot.phrase] ?? slot.phrase, Object.fromEntries(own))
}

/** Findings about heads of water. */
const heads: ReadonlySet<string> = new Set([
  'hydraulics/pump-lifts',
  'hydraulics/static-share',
  'hydraulics/bucket-test',
  'hydraulics/tests-agree',
  'hydraulics/pump-curve',
])

/** Measures of what is bought, in sentences about pipe and cups. */
const bought: ReadonlySet<string> = new Set(['outside', 'listed', 'bore', 'stub', 'column'])

/** The owner's measures for what a finding tells. */
function toldBy(id: string, display: Display): Display {
  if (heads.has(id)) return telling('head', display)
  const [part] = id.split('/')
  return part === 'structure' ? telling('wind', display) : part === 'cuts' ? telling('stock', display) : display
}

const slotDisplay = (id: string, name: string, display: Display): Display =>
  bought.has(name) && id.startsWith('templates/') ? telling('bought', display) : display

/** The limit that a number missed, or the nearer one where it missed none. */
function limitText(measured: Quantity, band: Band, shown: (q: Quantity) => string): string {
  const [low, high] = ends(measured)
  const { min, max } = band
  if (min === undefined && max === undefined) return ''
  const limit = max === undefined || (min !== undefined && low - min < max - high) ? min! : max
  return shown(quantity(limit, measured.unit))
}

/** The sentence of a finding, its short line, and why its limit exists. */
export interface FindingText {
  readonly short: string
  readonly sentence: string
  readonly because: string
  readonly measured: string
  readonly remedies: readonly string[]
}

export function findingText(finding: Finding, words: Words, shownIn: Display): FindingText {
  const display = toldBy(finding.id, shownIn)
  const w = words.findings[finding.id]
  if (!w) throw new RangeError(`findingText: no words for ${finding.id}`)
  const own = Object.fromEntries(
    Object.entries(finding.slots).map(([k, v]) => [k, slotText(v, words, slotDisplay(finding.id, k, display))]),
  )
  const at = placeName(finding.at, words)
  const because = fill(w.because, { ...own, at })
  if (finding.verdict === 'unknown' || finding.measured === null) {
    const needs = finding.needs.map((n) => placeName(n, words))
    const asked = fill(words.phrases['unknown']!, { needs: oneOf(needs, words.phrases['and']!) })
    const told = fill(w.unknown ?? '', own)
    const sentence = told === '' || told.includes('{') ? asked : `${asked} ${told}`
    return { short: w.short, sentence, because, measured: '', remedies: [] }
  }
  const shown = figureOf(finding.id, display)
  const measured = shown(finding.measured)
  const slots = {
    ...own,
    at,
    measured,
    must: limitText(finding.measured, finding.must, shown),
    want: limitText(finding.measured, finding.want, shown),
  }
  const sentence = fill(w[finding.verdict], slots)
  const part = finding.holds === 'part' ? ` ${words.phrases['holds-in-part']}` : ''
  const remedies = finding.remedies.map((r) => remedyText(finding, r, words, shown))
  return { short: w.short, sentence: sentence + part, because, measured, remedies }
}

/** Units in which the same figure would be within its bounds, which stand behind the two bounds. */
function meantText(issue: Issue, words: Words): string {
  const meant = issue.expected.slice(2)
  if (meant.length === 0) return ''
  return fill(words.phrases['did-you-mean']!, { list: oneOf(meant, words.phrases['or']!) })
}

/** A quantity of a finding as its sentences write it: a hole by its drill. */
export const figureOf =
  (id: string, display: Display) =>
  (q: Quantity): string =>
    isHoleSize(id) ? drillText(q, display) : shownText(q, display)

/** Problems whose first expectation is an example of the field. */
const exampled: ReadonlySet<Issue['problem']> = new Set([
  'too-long',
  'wrong-kind',
  'no-unit',
  'unknown-unit',
  'not-a-number',
])

/** What is wrong with a place of the plan document, and what to write there. */
export function issueText(issue: Issue, words: Words, display?: Display): string {
  const [first, ...others] = issue.expected
  return fill(words.issues[issue.problem], {
    at: issue.at === '' ? words.phrases['the-plan']! : placeName(issue.at, words),
    received: issue.received,
    expected: oneOf(issue.expected, words.phrases['or']!),
    first: first === undefined ? '' : exampled.has(issue.problem) ? exampleText(first, display) : first,
    units: oneOf(others, words.phrases['or']!),
    last: issue.expected.at(-1) ?? '',
    second: issue.expected[1] ?? '',
    meant: meantText(issue, words),
    hint:
      issue.expected.length === 0
        ? ''
        : fill(words.phrases['did-you-mean']!, { list: oneOf(issue.expected, words.phrases['or']!) }),
  }).trim()
}
