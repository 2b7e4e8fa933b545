import { edgeUnits } from '../kernel/edge-units.ts'
import { inUnit, readQuantity } from '../kernel/quantity-text.ts'
import type { Unit } from '../kernel/units.ts'
import { valueAt, withValue } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'
import type { Finding, Lever, Remedy, Verdict } from './finding.ts'

/**
 * Judges a document, without remedies: the whole of it, or as much as makes the findings of the same discipline as
 * the one `about`, which is far less work while the search goes on.
 */
export type Judge = (document: PlanDocument, about?: string) => readonly Finding[]

const BISECTIONS = 24
const rank: Readonly<Record<Exclude<Verdict, 'unknown'>, number>> = { pass: 0, watch: 1, fail: 2 }

const key = (f: Finding): string => `${f.id} ${f.at}`

interface Trial {
  readonly text: string | number | boolean
  readonly document: PlanDocument
  /** The finding after the change; null where the question no longer arises. */
  readonly finding: Finding | null
}

/** Cured: holds now, or at least no longer fails where it failed; or the question no longer arises. */
function cures(before: Finding, after: Finding | undefined): boolean {
  if (!after) return true
  if (after.verdict === 'unknown') return false
  return before.verdict === 'fail' ? after.verdict !== 'fail' : after.verdict === 'pass'
}

/** Whether a finding got a worse verdict; a number may move within its verdict. What was known must stay known. */
function isWorse(before: Verdict | undefined, after: Verdict): boolean {
  if (before === undefined) return after === 'fail'
  if (before === 'unknown') return false
  return after === 'unknown' || rank[after] > rank[before]
}

function worsened(before: readonly Finding[], after: readonly Finding[]): boolean {
  const was = new Map(before.map((f) => [key(f), f.verdict]))
  return after.some((f) => isWorse(was.get(key(f)), f.verdict))
}

/** Findings that were unknown and fail now that they are known. */
function revealed(before: readonly Finding[], after: readonly Finding[]): readonly Finding[] {
  const hidden = new Set(before.filter((f) => f.verdict === 'unknown').map(key))
  return after.filter((f) => f.verdict === 'fail' && hidden.has(key(f)))
}

/** A length that nearly every plan states: its unit serves for lengths that the plan leaves out. */
const SPOKEN = 'column/stub/lowerSide'

/** The unit that the person used for this field, so that a remedy speaks the same language. */
function spelledAs(document: PlanDocument, path: string, unit: Unit): string {
  const typed = valueAt(document, path)
  if (typeof typed === 'string') {
    const read = readQuantity(typed, unit)
    if (read.ok) return read.spelled === 'ft' ? 'in' : read.spelled
  }
  if (unit === 'm' && path !== SPOKEN) return spelledAs(document, SPOKEN, unit)
  return edgeUnits[unit]?.[0]?.spell[0] ?? ''
}

const INCH_FRACTIONS = 16

/** The step in the person's unit: sixteenths for inches, else what the check asked for, rounded to its own digits. */
function quantityText(value: number, unit: Unit, spelled: string): string {
  const n = inUnit(value, unit, spelled)
  if (spelled !== 'in') return `${Number(n.toPrecision(9))} ${spelled}`
  const sixteenths = Math.round(n * INCH_FRACTIONS)
  const whole = Math.floor(sixteenths / INCH_FRACTIONS)
  let [top, under] = [sixteenths - whole * INCH_FRACTIONS, INCH_FRACTIONS]
  while (top > 0 && top % 2 === 0) [top, under] = [top / 2, under / 2]
  return top === 0 ? `${whole} in` : `${whole === 0 ? '' : `${whole} `}${top}/${under} in`
}

interface Search {
  readonly document: PlanDocument
  readonly judge: Judge
  readonly before: readonly Finding[]
  readonly target: Finding
}

function trial(s: Search, path: string, text: string | number | boolean): Trial | null {
  const document = withValue(s.document, path, text)
  const finding = s.judge(document, s.target.id).find((f) => key(f) === key(s.target))
  return cures(s.target, finding) ? { text, document, finding: finding ?? null } : null
}

type Along = Lever & { along: { to: number; unit: Unit; step: number; from?: number } }

/** Where the quantity stands: as typed, or where the lever says it stands while it is left out. */
function startOf(document: PlanDocument, { set, along }: Along): number | null {
  const typed = valueAt(document, set)
  if (typed === undefined) return along.from ?? null
  const read = typeof typed === 'string' ? readQuantity(typed, along.unit) : null
  return read?.ok ? read.value : null
}

/** The least number of steps in 1, 2, 4 … `most` that cures, and the greatest before it that does not. */
function bracket(at: (n: number) => Trial | null, most: number): { low: number; high: number; best: Trial } | null {
  let low = 0
  for (let n = 1; low < most; n = Math.min(most, 2 * n)) {
    const best = at(n)
    if (best) return { low, high: n, best }
    low = n
  }
  return null
}

/** The smallest change along a quantity that cures: doubling, then bisection, on whole steps as they would be typed. */
function searchAlong(s: Search, lever: Along): Trial | null {
  const { to, unit, step: wanted } = lever.along
  const start = startOf(s.document, lever)
  if (start === null) return null
  const spelled = spelledAs(s.document, lever.set, unit)
  const step = spelled === 'in' ? 0.0254 / INCH_FRACTIONS : wanted
  const direction = Math.sign(to - start)
  if (direction === 0 || !(step > 0)) return null
  const from = direction > 0 ? Math.floor(start / step + 1e-9) : Math.ceil(start / step - 1e-9)
  const most = Math.floor(Math.abs(to / step - from) + 1e-9)
  const at = (n: number) => trial(s, lever.set, quantityText((from + direction * n) * step, unit, spelled))
  const found = bracket(at, most)
  if (!found) return null
  let { low, high, best } = found
  for (let i = 0; i < BISECTIONS && high - low > 1; i++) {
    const middle = Math.floor((low + high) / 2)
    const here = at(middle)
    if (here) [high, best] = [middle, here]
    else low = middle
  }
  return best
}

/** The first value that cures and reveals nothing; where each reveals something, the first that reveals least. */
function searchAmong(s: Search, lever: Lever & { among: readonly (string | number | boolean)[] }): Trial | null {
  const now = valueAt(s.document, lever.set)
  let best: Trial | null = null
  let least = Number.POSITIVE_INFINITY
  for (const text of lever.among) {
    if (text === now) continue
    const found = trial(s, lever.set, text)
    if (!found) continue
    const after = s.judge(found.document)
    if (worsened(s.before, after)) continue
    const faults = revealed(s.before, after).length
    if (faults < least) [best, least] = [found, faults]
    if (faults === 0) break
  }
  return best
}

/** What stood at a place, in one text; a pipe by measure by its name, else by its measures. */
function plain(v: unknown): string | number | boolean | null {
  if (typeof v === 'string' || typeof v === 'number' || typeof v === 'boolean') return v
  if (typeof v !== 'object' || v === null) return null
  if ('name' in v && typeof v.name === 'string') return v.name
  const measures = Object.values(v).filter((x) => typeof x === 'string' && /^\d/.test(x))
  return measures.length === 0 ? null : measures.join(' × ')
}

function remedy(s: Search, lever: Lever): Remedy | null {
  const found = 'along' in lever ? searchAlong(s, lever as Along) : searchAmong(s, lever)
  if (!found) return null
  const after = s.judge(found.document)
  if (worsened(s.before, after)) return null
  const now = new Map(after.map((f) => [key(f), f]))
  const also = s.before.filter(
    (f) => f !== s.target && f.verdict !== 'pass' && f.verdict !== 'unknown' && cures(f, now.get(key(f))),
  )
  return {
    set: lever.set,
    from: plain(valueAt(s.document, lever.set)),
    to: found.text,
    gives: found.finding?.measured ?? null,
    alsoCures: also.map((f) => f.id),
    reveals: revealed(s.before, after).map((f) => f.id),
  }
}

/** Several findings try the same changes; each changed document is judged once. */
function remembered(judge: Judge): Judge {
  const seen = new Map<string, readonly Finding[]>()
  return (document, about) => {
    const text = `${about?.split('/')[0] ?? ''} ${JSON.stringify(document)}`
    const known = seen.get(text) ?? judge(document, about)
    seen.set(text, known)
    return known
  }
}

/**
 * The findings of a document with their remedies proved: each is applied to the document and the whole is judged
 * again; it is kept only where it cures its finding and worsens none.
 *
 * `only` limits the work to some findings; each lever costs at most a few dozen evaluations.
 */
export function withRemedies(
  document: PlanDocument,
  judge: Judge,
  only: (finding: Finding) => boolean = () => true,
): readonly Finding[] {
  const before = judge(document)
  const once = remembered(judge)
  return before.map((target) => {
    if ((target.verdict !== 'fail' && target.verdict !== 'watch') || !only(target)) return target
    const s = { document, judge: once, before, target }
    const remedies = target.levers.map((lever) => remedy(s, lever)).filter((r) => r !== null)
    return { ...target, remedies }
  })
}
