import { readQuantity } from '../kernel/quantity-text.ts'
import { valueAt } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'
import { withSettings } from './apply.ts'
import { type Aim, aims, cures, key, reaches, revealed, worsened } from './compare.ts'
import type { Band, Change, Finding, Lever, Remedy, Setting, Typed, Wish } from './finding.ts'
import { scaleOf } from './steps.ts'

/**
 * Judges a document, without remedies: the whole of it, or the part that is named, which is far less work while the
 * search goes on.
 */
export type Judge = (document: PlanDocument, part?: string) => readonly Finding[]

/** Parts of the judging: all of them, the least work first, and which of them makes a finding. */
export interface Parts {
  readonly parts: readonly string[]
  readonly partOf: (id: string) => string
}

/** Nothing but the whole. */
const WHOLE: Parts = { parts: [], partOf: (id) => id.split('/')[0]! }

const BISECTIONS = 24

interface Search {
  readonly document: PlanDocument
  readonly judge: Judge
  readonly before: readonly Finding[]
  readonly target: Finding
  readonly aim: Aim
  readonly parts: Parts
}

/** Settings that bring the finding as far as is aimed at. */
interface Trial {
  readonly settings: readonly Setting[]
  readonly document: PlanDocument
  /** The finding after the change; null where the question no longer arises. */
  readonly finding: Finding | null
}

/** A trial that stood the whole of the judging. */
interface Proof extends Trial {
  readonly after: readonly Finding[]
}

function trial(s: Search, settings: readonly Setting[]): Trial | null {
  const document = withSettings(s.document, settings)
  const finding = s.judge(document, s.parts.partOf(s.target.id)).find((f) => key(f) === key(s.target))
  return reaches(finding, s.aim) ? { settings, document, finding: finding ?? null } : null
}

/** All findings after a change; null as soon as one of them has become worse. */
function stood(s: Search, document: PlanDocument): readonly Finding[] | null {
  const after: Finding[] = []
  for (const part of s.parts.parts.length === 0 ? [undefined] : s.parts.parts) {
    const found = s.judge(document, part)
    if (worsened(s.before, found)) return null
    after.push(...found)
  }
  return after
}

type Along = Extract<Lever, { along: unknown }>

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
function searchAlong(s: Search, lever: Along): Proof | null {
  const { to, unit, step: wanted } = lever.along
  const start = startOf(s.document, lever)
  const direction = start === null ? 0 : Math.sign(to - start)
  if (start === null || direction === 0 || !(wanted > 0)) return null
  const { step, text } = scaleOf(s.document, lever.set, unit, wanted)
  const from = direction > 0 ? Math.floor(start / step + 1e-9) : Math.ceil(start / step - 1e-9)
  const most = Math.floor(Math.abs(to / step - from) + 1e-9)
  const at = (n: number) => trial(s, [{ set: lever.set, to: text(from + direction * n) }])
  const found = bracket(at, most)
  if (!found) return null
  let { low, high, best } = found
  for (let i = 0; i < BISECTIONS && high - low > 1; i++) {
    const middle = Math.floor((low + high) / 2)
    const here = at(middle)
    if (here) [high, best] = [middle, here]
    else low = middle
  }
  const after = stood(s, best.document)
  return after === null ? null : { ...best, after }
}

const isSet = (document: PlanDocument, { set, to }: Setting): boolean => (valueAt(document, set) ?? null) === to

const stands = (document: PlanDocument, settings: readonly Setting[]): boolean =>
  settings.every((setting) => isSet(document, setting))

/** The first of several settings that cures and reveals nothing; where each reveals something, the first that reveals least. */
function searchTries(s: Search, tries: readonly (readonly Setting[])[]): Proof | null {
  let best: Proof | null = null
  let least = Number.POSITIVE_INFINITY
  for (const settings of tries) {
    const found = stands(s.document, settings) ? null : trial(s, settings)
    if (!found) continue
    const after = stood(s, found.document)
    if (after === null) continue
    const faults = revealed(s.before, after).length
    if (faults < least) [best, least] = [{ ...found, after }, faults]
    if (faults === 0) break
  }
  return best
}

/** A wish as it would be typed; a measure in whole steps of the person's unit. */
function settled(document: PlanDocument, { set, to }: Wish): Setting {
  if (typeof to !== 'object' || to === null) return { set, to }
  const { step, text } = scaleOf(document, set, to.unit, to.step)
  const steps = to.value / step
  return { set, to: text(to.round === 'up' ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6)) }
}

function search(s: Search, lever: Lever): Proof | null {
  if ('along' in lever) return searchAlong(s, lever)
  if ('together' in lever)
    return searchTries(
      s,
      lever.together.map((wishes) => wishes.map((w) => settled(s.document, w))),
    )
  return searchTries(
    s,
    lever.among.map((to) => [{ set: lever.set, to }]),
  )
}

/** What stood at a place, in one text; a pipe by measure by its name, else by its measures; a list by how many. */
function plain(v: unknown): Typed | null {
  if (Array.isArray(v)) return v.length
  if (typeof v === 'string' || typeof v === 'number' || typeof v === 'boolean') return v
  if (typeof v !== 'object' || v === null) return null
  if ('name' in v && typeof v.name === 'string') return v.name
  const measures = Object.values(v).filter((x) => typeof x === 'string' && /^\d/.test(x))
  return measures.length === 0 ? null : measures.join(' × ')
}

const change = (document: PlanDocument, { set, to }: Setting): Change => ({
  set,
  from: plain(valueAt(document, set)),
  to,
})

/** The limits that the change had to come within: those of good practice where there are any and it got so far. */
function aimedAt(after: Finding | null, aim: Aim): Band {
  if (after === null) return {}
  const { must, want } = after
  return aim === 'watch' || Object.keys(want).length === 0 ? must : { ...must, ...want }
}

function remedy(s: Search, lever: Lever): Remedy | null {
  const found = search(s, lever)
  if (!found) return null
  const now = new Map(found.after.map((f) => [key(f), f]))
  const also = s.before.filter(
    (f) => f !== s.target && f.verdict !== 'pass' && f.verdict !== 'unknown' && cures(f, now.get(key(f))),
  )
  // What is as it should be already needs no change.
  const moved = found.settings.filter((setting) => !isSet(s.document, setting))
  const [first, ...rest] = moved.map((m) => change(s.document, m))
  return {
    ...(first as Change & { readonly to: Typed }),
    with: rest,
    leaves: found.finding?.verdict === 'watch' ? 'watch' : 'pass',
    gives: found.finding?.measured ?? null,
    within: aimedAt(found.finding, s.aim),
    alsoCures: also.map((f) => f.id),
    reveals: revealed(s.before, found.after).map((f) => f.id),
  }
}

/** Several findings try the same changes; each part of a changed document is judged once. */
export function remembered(judge: Judge): Judge {
  const documents = new Map<string, PlanDocument>()
  const seen = new Map<string, readonly Finding[]>()
  return (document, part) => {
    const text = JSON.stringify(document)
    // The same text is the same document, so that what was computed for it serves all of its parts.
    const same = documents.get(text) ?? document
    documents.set(text, same)
    const known = seen.get(`${part} ${text}`) ?? judge(same, part)
    seen.set(`${part} ${text}`, known)
    return known
  }
}

/** Remedies of one finding: those with which it holds, and only where there is none those with which it need be watched. */
function remediesOf(s: Omit<Search, 'aim'>): readonly Remedy[] {
  for (const aim of aims(s.target)) {
    const found = s.target.levers.map((lever) => remedy({ ...s, aim }, lever)).filter((r) => r !== null)
    if (found.length > 0) return found
  }
  return []
}

const curable = (f: Finding): boolean => f.verdict === 'fail' || f.verdict === 'watch'

/** The findings of a document, and the remedies of any of them when asked for; what was tried once is remembered. */
export function proof(
  document: PlanDocument,
  judge: Judge,
  parts: Parts = WHOLE,
): { readonly findings: readonly Finding[]; readonly curesOf: (finding: Finding) => readonly Remedy[] } {
  const before = judge(document)
  const once = remembered(judge)
  return {
    findings: before,
    curesOf: (target) => (curable(target) ? remediesOf({ document, judge: once, before, target, parts }) : []),
  }
}

/**
 * The findings of a document with their remedies proved: each is applied to the document and the whole is judged
 * again; it is kept only where it cures its finding and worsens none.
 *
 * `only` limits the work to some findings; each lever costs at most a few dozen evaluations. With `parts` a change is
 * judged part by part and given up where one of them has become worse.
 */
export function withRemedies(
  document: PlanDocument,
  judge: Judge,
  only: (finding: Finding) => boolean = () => true,
  parts: Parts = WHOLE,
): readonly Finding[] {
  const { findings, curesOf } = proof(document, judge, parts)
  return findings.map((f) => (curable(f) && only(f) ? { ...f, remedies: curesOf(f) } : f))
}
