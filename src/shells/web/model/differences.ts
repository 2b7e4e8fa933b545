import type { Finding } from '../../../findings/finding.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { type Display, shownText } from '../../../render/display.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { label, say } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
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
