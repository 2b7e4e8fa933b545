import type { Finding } from '../../../findings/finding.ts'
import { type Quantity, quantity } from '../../../kernel/units.ts'
import { orNull } from '../../../plan/known.ts'
import type { Plan, PlanDocument } from '../../../plan/plan.ts'
import { type Display, shownText } from '../../../render/display.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { label, say } from '../words.ts'
import { findingKey, type Told } from '../workers/protocol.ts'
import { fieldAt } from './fields.ts'
import { ofField, ofFinding, type Reason } from './reasons.ts'

export interface Difference {
  readonly why: Reason
  readonly name: string
  readonly here: string
  readonly there: string
}

type Flat = ReadonlyMap<string, string>

function flat(value: unknown, path: string, into: Map<string, string>): Map<string, string> {
  if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value)) flat(inner, path === '' ? key : `${path}/${key}`, into)
  else into.set(path, String(value))
  return into
}

const named = (path: string): string => {
  const name = placeName(path, words())
  return name === path ? label(path, fieldAt(path)) : name
}

/** Entries that stand differently in two plans, in the order of the first. */
export function fieldDifferences(here: PlanDocument, there: PlanDocument): readonly Difference[] {
  const a: Flat = flat(here, '', new Map())
  const b: Flat = flat(there, '', new Map())
  return [...new Set([...a.keys(), ...b.keys()])]
    .filter((path) => path !== 'change' && path !== 'rootfall' && a.get(path) !== b.get(path))
    .map((path) => ({ why: ofField(path), name: named(path), here: a.get(path) ?? '', there: b.get(path) ?? '' }))
}

function judged(f: Finding | undefined, display: Display): string {
  if (!f) return ''
  const verdict = say(f.verdict === 'unknown' ? 'unknownVerdict' : f.verdict)
  return f.measured === null ? verdict : `${shownText(f.measured, display)}, ${verdict}`
}

/** What two designs are weighed by: how many plants, on how much floor, for what sum. */
const measures: readonly {
  readonly name: 'compare-sites' | 'compare-weekly' | 'compare-floor' | 'compare-price'
  readonly why: Reason
  readonly of: (t: Told) => Quantity | null
}[] = [
  {
    name: 'compare-sites',
    why: ofField('column/sites/rings'),
    of: ({ facts }) => countOf(orNull(facts.layout)?.plants),
  },
  { name: 'compare-weekly', why: ofField('crops/0/perWeek'), of: ({ plan }) => countOf(weekly(plan)) },
  {
    name: 'compare-floor',
    why: ofField('place/walkRound'),
    of: ({ facts }) => floorOf(orNull(facts.layout)?.floor_m2 ?? null),
  },
  {
    name: 'compare-price',
    why: ofField('prices/currency'),
    of: ({ facts }) => priceOf(orNull(facts.parts)?.total.known_money),
  },
]

const countOf = (n: number | undefined): Quantity | null => (n === undefined ? null : quantity(n, 'count'))
const floorOf = (n: number | null): Quantity | null => (n === null ? null : quantity(n, 'm2'))
const priceOf = (n: number | undefined): Quantity | null => (n === undefined ? null : quantity(n, 'money'))

/** Plants wanted each week of all crops; undefined where no crop says it. */
function weekly({ crops = [] }: Plan): number | undefined {
  const said = crops.flatMap((c) => (c.perWeek === undefined ? [] : [c.perWeek]))
  return said.length === 0 ? undefined : said.reduce((sum, n) => sum + n, 0)
}

/** The measures of two designs that differ. */
export function measureDifferences(here: Told, there: Told, display: Display): readonly Difference[] {
  const text = (q: Quantity | null): string => (q === null ? '' : shownText(q, display))
  return measures
    .map(({ name, why, of }) => ({ why, name: say(name), here: text(of(here)), there: text(of(there)) }))
    .filter((d) => d.here !== d.there)
}

/** Whether two designs have different numbers of sites, so that what is counted by site is counted on different totals. */
export const sitesDiffer = (here: Told, there: Told): boolean =>
  orNull(here.facts.layout)?.plants !== orNull(there.facts.layout)?.plants

/** Findings whose number or verdict differs. */
export function findingDifferences(
  here: readonly Finding[],
  there: readonly Finding[],
  display: Display,
): readonly Difference[] {
  const a = new Map(here.map((f) => [findingKey(f), f]))
  const b = new Map(there.map((f) => [findingKey(f), f]))
  return [...new Set([...a.keys(), ...b.keys()])]
    .map((key) => ({
      why: ofFinding(key),
      name: words().findings[(a.get(key) ?? b.get(key))!.id]?.short ?? key,
      here: judged(a.get(key), display),
      there: judged(b.get(key), display),
    }))
    .filter((d) => d.here !== d.there)
}
