import type { Band, Change, Finding, Remedy, Typed } from '../../findings/finding.ts'
import { type Quantity, quantity } from '../../kernel/units.ts'
import { fill, oneOf } from './fill.ts'
import { choiceName, placeName } from './place-names.ts'
import type { Words } from './words.ts'

/** Acts by field, and what comes of them by finding. */
export interface RemedyWords {
  readonly act: string
  /** The same for a field that the plan leaves out, and for one that is taken out. */
  readonly 'act+': string
  readonly 'act-': string
  /** A pump by its box. */
  readonly pump: string
  readonly comes: string
  readonly other: string
  readonly min: string
  readonly max: string
  readonly both: string
  readonly acts: Readonly<Record<string, string>>
  readonly outcomes: Readonly<Record<string, string>>
}

const isNumber = (key: string): boolean => /^\d+$/.test(key)

/** A quantity as the person typed it, but with the decimal sign of the language. */
const typedText = (value: Typed | null, words: Words): string =>
  value === null
    ? words.phrases['nothing']!
    : typeof value === 'boolean'
      ? words.tables[value ? 'yes' : 'no']!
      : choiceName(String(value), words).replace(/^(-?\d+)\.(\d+)(?=$| [^.]*$)/, `$1${words.decimal}$2`)

/** One change as an act: its own sentence where there is one for this field and value. */
function actText({ set, from, to }: Change, words: Words): string {
  const { remedies } = words
  const keys = set.split('/')
  const path = keys.filter((k) => !isNumber(k)).join('/')
  const ending = to === null ? (isNumber(keys.at(-1)!) ? '/-' : '-') : from === null ? '+' : ''
  const act =
    remedies.acts[`${path}=${to}`] ??
    remedies.acts[`${path}${ending}`] ??
    remedies[ending === '' ? 'act' : ending === '+' ? 'act+' : 'act-']
  return fill(act, {
    place: placeName(set, words),
    from: typedText(from, words),
    to: typedText(to, words),
    n: String(Number(keys.find(isNumber) ?? 0) + 1),
  })
}

/** The acts of a remedy; head and flow of a pump are one act, that of taking another pump. */
function acts(changes: readonly Change[], words: Words): readonly string[] {
  const head = changes.find((c) => c.set === 'pump/maxHead')
  const flow = changes.find((c) => c.set === 'pump/maxFlow')
  if (head === undefined || flow === undefined) return changes.map((c) => actText(c, words))
  const pump = fill(words.remedies.pump, { head: typedText(head.to, words), flow: typedText(flow.to, words) })
  return [pump, ...changes.filter((c) => c !== head && c !== flow).map((c) => actText(c, words))]
}

function withinText({ min, max }: Band, words: Words, shown: (value: number) => string): string {
  const { remedies } = words
  if (min === undefined && max === undefined) return ''
  const ends = { min: min === undefined ? '' : shown(min), max: max === undefined ? '' : shown(max) }
  return ` ${fill(remedies[max === undefined ? 'min' : min === undefined ? 'max' : 'both'], ends)}`
}

/** What the finding's number is after the change, named, with its limit. */
function outcomeText(finding: Finding, remedy: Remedy, words: Words, shown: (q: Quantity) => string): string {
  const { gives, within } = remedy
  const own = words.remedies.outcomes[finding.id] ?? words.remedies.other
  if (gives === null || !own.includes('{gives}')) return own
  const slots = { gives: shown(gives), short: words.findings[finding.id]?.short ?? finding.id }
  return fill(own, slots) + withinText(within, words, (value) => shown(quantity(value, gives.unit)))
}

/** What a person reads of a remedy, apart: the act with what comes of it, what is left, cured as well and brought to light. */
export interface RemedyText {
  readonly says: string
  readonly leaves: string
  readonly also: string
  readonly reveals: string
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A proved remedy of a finding: what to do, what comes of it, and what else it cures or brings to light. */
export function remedyTexts(
  finding: Finding,
  remedy: Remedy,
  words: Words,
  shown: (q: Quantity) => string,
): RemedyText {
  const { phrases } = words
  const done = oneOf(acts([remedy, ...remedy.with], words), phrases['and']!)
  const whole =
    remedy.gives === null
      ? fill(phrases['remedy-ends']!, { acts: done })
      : fill(words.remedies.comes, { acts: done, outcome: outcomeText(finding, remedy, words, shown) })
  const short = (ids: readonly string[]) =>
    [...new Set(ids)].map((id) => words.findings[id.split(' ')[0]!]?.short ?? id).join(', ')
  return {
    says: capital(whole),
    leaves: remedy.leaves === 'pass' ? '' : phrases['leaves-watch']!,
    also: remedy.alsoCures.length === 0 ? '' : fill(phrases['also-cures']!, { list: short(remedy.alsoCures) }),
    reveals: remedy.reveals.length === 0 ? '' : fill(phrases['reveals']!, { list: short(remedy.reveals) }),
  }
}

/** The same in one run of sentences, as the terminal and the paper tell it. */
export function remedyText(finding: Finding, remedy: Remedy, words: Words, shown: (q: Quantity) => string): string {
  const { says, leaves, also, reveals } = remedyTexts(finding, remedy, words, shown)
  return [says, leaves, also, reveals].filter((text) => text !== '').join(' ')
}

/** What a remedy does, without what comes of it: a line of a log, a note over a drawing. */
export const actsText = (remedy: Change & Pick<Remedy, 'with'>, words: Words): string =>
  capital(oneOf(acts([remedy, ...remedy.with], words), words.phrases['and']!))
