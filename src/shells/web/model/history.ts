import { withRemedy } from '../../../findings/apply.ts'
import type { Remedy } from '../../../findings/finding.ts'
import { withValue } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Chosen } from './chosen.ts'

/** What a person did, as data; the sentence is made in the words. */
export type Deed =
  | { readonly kind: 'set'; readonly path: string; readonly from: string; readonly to: string }
  | {
      readonly kind: 'remedy'
      readonly path: string
      readonly from: string
      readonly to: string
      /** What was turned along with it. */
      readonly with?: Remedy['with']
    }
  | { readonly kind: 'opened' | 'merged' | 'outside'; readonly name: string }

/** One undoable step: one section of the document before and after, or (`key` empty) the whole. */
export interface Step {
  readonly number: number
  readonly at_ms: number
  readonly deed: Deed
  readonly key: string
  readonly before: unknown
  readonly after: unknown
}

export interface History {
  readonly document: PlanDocument
  readonly done: readonly Step[]
  readonly undone: readonly Step[]
  /** What the program chose in a plan that it drew from answers. */
  readonly beginning?: readonly Chosen[]
}

/** Steps kept; the oldest are forgotten beyond them. */
export const STEPS_KEPT = 500

export const begun = (document: PlanDocument, beginning: readonly Chosen[] = []): History => ({
  document,
  done: [],
  undone: [],
  ...(beginning.length === 0 ? {} : { beginning }),
})

const without = (document: PlanDocument, key: string): PlanDocument =>
  Object.fromEntries(Object.entries(document).filter(([k]) => k !== key))

/** The document with one section set; a section that was not there is taken away again. */
function placed(document: PlanDocument, key: string, value: unknown): PlanDocument {
  if (key === '') return value as PlanDocument
  return value === undefined ? without(document, key) : { ...document, [key]: value }
}

const shown = (value: unknown): string =>
  value === undefined || value === null ? '' : typeof value === 'object' ? '…' : String(value)

/** Steps of one arrow key held down, or of one figure typed on, are one step. */
const TOGETHER_ms = 700

function joined(history: History, step: Omit<Step, 'number'>): Omit<Step, 'number'> | null {
  const last = history.done.at(-1)
  if (!last || history.undone.length > 0 || last.key !== step.key || step.key === '') return null
  if (last.deed.kind !== 'set' || step.deed.kind !== 'set' || last.deed.path !== step.deed.path) return null
  if (step.at_ms - last.at_ms > TOGETHER_ms || step.at_ms < last.at_ms) return null
  return { ...step, before: last.before, deed: { ...step.deed, from: last.deed.from } }
}

/** The number of the last change: that of the last step, else what the plan's file said. */
export const changeOf = ({ document, done }: History): number => {
  const said = document['change']
  return done.at(-1)?.number ?? (typeof said === 'number' ? said : 0)
}

/** The document as it is judged, printed and saved: with the number of its last change. */
export const numbered = (history: History): PlanDocument =>
  history.done.length === 0 ? history.document : { ...history.document, change: changeOf(history) }

function added(history: History, step: Omit<Step, 'number'>): History {
  const number = changeOf(history) + 1
  return {
    ...history,
    document: placed(history.document, step.key, step.after),
    done: [...history.done, { ...step, number }].slice(-STEPS_KEPT),
    undone: [],
  }
}

/** The value at a path taken out of its section, empty sections on the way kept. */
function removed(document: PlanDocument, path: readonly string[]): PlanDocument {
  const [key, ...rest] = path as [string, ...string[]]
  const inner = document[key]
  if (rest.length === 0) return without(document, key)
  if (typeof inner !== 'object' || inner === null) return document
  if (Array.isArray(inner)) {
    const at = Number(rest[0])
    const list =
      rest.length === 1
        ? inner.filter((_, i) => i !== at)
        : inner.map((v, i) => (i === at ? removed(v, rest.slice(1)) : v))
    return { ...document, [key]: list }
  }
  return { ...document, [key]: removed(inner as PlanDocument, rest) }
}

/** One value set, or taken away where it is undefined. Nothing happens where it is the same. */
export function withChange(
  history: History,
  change: { readonly path: string; readonly value: unknown; readonly from: unknown; readonly at_ms: number },
  kind: 'set' | 'remedy' = 'set',
): History {
  const { path, value, from, at_ms } = change
  if (JSON.stringify(from) === JSON.stringify(value)) return history
  const key = path.split('/')[0]!
  const next =
    value === undefined ? removed(history.document, path.split('/')) : withValue(history.document, path, value)
  // A top section that vanishes would come back in another place of the file: such a step keeps the whole document.
  const whole = !Object.hasOwn(next, key)
  const deed: Deed = { kind, path, from: shown(from), to: shown(value) }
  const step: Omit<Step, 'number'> = {
    at_ms,
    deed,
    key: whole ? '' : key,
    before: whole ? history.document : history.document[key],
    after: whole ? next : next[key],
  }
  const one = joined(history, step)
  return one === null ? added(history, step) : added({ ...history, done: history.done.slice(0, -1) }, one)
}

/** The whole document exchanged, as one step. */
export const withDocument = (history: History, document: PlanDocument, deed: Deed, at_ms: number): History =>
  added(history, { at_ms, deed, key: '', before: history.document, after: document })

/** A proved remedy made, all that it changes as one step. */
export function withCure(history: History, remedy: Remedy, at_ms: number): History {
  const { set: path, from, to } = remedy
  if (remedy.with.length === 0) return withChange(history, { path, value: to, from, at_ms }, 'remedy')
  const deed: Deed = { kind: 'remedy', path, from: shown(from), to: shown(to), with: remedy.with }
  return withDocument(history, withRemedy(history.document, remedy), deed, at_ms)
}

export function undo(history: History): History {
  const step = history.done.at(-1)
  if (!step) return history
  return {
    ...history,
    document: placed(history.document, step.key, step.before),
    done: history.done.slice(0, -1),
    undone: [...history.undone, step],
  }
}

export function redo(history: History): History {
  const step = history.undone.at(-1)
  if (!step) return history
  return {
    ...history,
    document: placed(history.document, step.key, step.after),
    done: [...history.done, step],
    undone: history.undone.slice(0, -1),
  }
}
