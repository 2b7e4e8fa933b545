import { edgeUnits } from '../kernel/edge-units.ts'
import { inUnit, readQuantity } from '../kernel/quantity-text.ts'
import type { Unit } from '../kernel/units.ts'
import { valueAt, withValue } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'
import type { Finding, Lever, Remedy, Verdict } from './finding.ts'

/** Judges a document: the whole evaluation, without remedies. */
export type Judge = (document: PlanDocument) => readonly Finding[]

const BISECTIONS = 24
const worse: Readonly<Record<Verdict, number>> = { pass: 0, unknown: 1, watch: 2, fail: 3 }

const key = (f: Finding): string => `${f.id} ${f.at}`

interface Trial {
  readonly text: string | number | boolean
  readonly after: readonly Finding[]
  readonly finding: Finding
}

/** Cured: holds now, or at least no longer fails where it failed. */
function cures(before: Finding, after: Finding | undefined): boolean {
  if (!after || after.verdict === 'unknown') return false
  return before.verdict === 'fail' ? after.verdict !== 'fail' : after.verdict === 'pass'
}

/** Findings that got a worse verdict; a number may move within its verdict. */
function worsened(before: readonly Finding[], after: readonly Finding[]): boolean {
  const was = new Map(before.map((f) => [key(f), worse[f.verdict]]))
  return after.some((f) => {
    const old = was.get(key(f))
    return old === undefined ? f.verdict === 'fail' : worse[f.verdict] > old
  })
}

/** The unit that the person used for this field, so that a remedy speaks the same language. */
function spelledAs(document: PlanDocument, path: string, unit: Unit): string {
  const typed = valueAt(document, path)
  if (typeof typed === 'string') {
    const read = readQuantity(typed, unit)
    if (read.ok) return read.spelled === 'ft' ? 'in' : read.spelled
  }
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
  const after = s.judge(withValue(s.document, path, text))
  const finding = after.find((f) => key(f) === key(s.target))
  return finding && cures(s.target, finding) ? { text, after, finding } : null
}

/** The smallest change along a quantity that cures: bisection on whole steps, then the proof on the rounded text. */
function searchAlong(s: Search, lever: Lever & { along: { to: number; unit: Unit; step: number } }): Trial | null {
  const { to, unit, step: wanted } = lever.along
  const typed = valueAt(s.document, lever.set)
  const read = typeof typed === 'string' ? readQuantity(typed, unit) : null
  if (!read?.ok) return null
  const spelled = spelledAs(s.document, lever.set, unit)
  const step = spelled === 'in' ? 0.0254 / INCH_FRACTIONS : wanted
  const direction = Math.sign(to - read.value)
  if (direction === 0 || !(step > 0)) return null
  const from = direction > 0 ? Math.floor(read.value / step + 1e-9) : Math.ceil(read.value / step - 1e-9)
  const most = Math.floor(Math.abs(to / step - from) + 1e-9)
  if (most < 1) return null
  const at = (n: number) => trial(s, lever.set, quantityText((from + direction * n) * step, unit, spelled))
  let best = at(most)
  if (!best) return null
  let [low, high] = [0, most]
  for (let i = 0; i < BISECTIONS && high - low > 1; i++) {
    const middle = Math.floor((low + high) / 2)
    const here = at(middle)
    if (here) [high, best] = [middle, here]
    else low = middle
  }
  return best
}

function searchAmong(s: Search, lever: Lever & { among: readonly (string | number | boolean)[] }): Trial | null {
  for (const text of lever.among) {
    const found = trial(s, lever.set, text)
    if (found && !worsened(s.before, found.after)) return found
  }
  return null
}

const plain = (v: unknown): string | number | boolean | null =>
  typeof v === 'string' || typeof v === 'number' || typeof v === 'boolean' ? v : null

function remedy(s: Search, lever: Lever): Remedy | null {
  const found = 'along' in lever ? searchAlong(s, lever) : searchAmong(s, lever)
  if (!found || !found.finding.measured || worsened(s.before, found.after)) return null
  const now = new Map(found.after.map((f) => [key(f), f]))
  const also = s.before.filter(
    (f) => f !== s.target && f.verdict !== 'pass' && f.verdict !== 'unknown' && cures(f, now.get(key(f))),
  )
  return {
    set: lever.set,
    from: plain(valueAt(s.document, lever.set)),
    to: found.text,
    gives: found.finding.measured,
    alsoCures: also.map((f) => f.id),
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
  return before.map((target) => {
    if ((target.verdict !== 'fail' && target.verdict !== 'watch') || !only(target)) return target
    const s = { document, judge, before, target }
    const remedies = target.levers.map((lever) => remedy(s, lever)).filter((r) => r !== null)
    return { ...target, remedies }
  })
}
