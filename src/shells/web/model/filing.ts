import { batch } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Chosen } from './chosen.ts'
import { begun, type History, numbered, withDocument } from './history.ts'
import { recalled, remember } from './journal.ts'
import { freshId, type Listed, listPlans, readPlan, savePlan } from './plans.ts'
import type { SavedState, State } from './state.ts'

const SAVE_AFTER_ms = 400

/** The form of a plan's file, fetched when the first one is read or written. */
const filed = () => import('../../../plan/document.ts')

/** Saves the plan soon after each change, over exactly the text that was read. */
export function createSaving(s: State) {
  let timer: ReturnType<typeof setTimeout> | undefined
  let writing: Promise<void> = Promise.resolve()

  const write = async (): Promise<void> => {
    const history = s.history()
    let id = s.id()
    if (id === null) {
      const taken = await listPlans().catch(() => [])
      id = freshId(
        String(history.document['name'] ?? ''),
        taken.map((p) => p.id),
      )
      s.setId(id)
    }
    const { planText } = await filed()
    const text = planText(numbered(history))
    const done = await savePlan(id, text, s.revision())
    if (done.kind === 'saved') {
      s.setRevision(done.revision)
      s.setSettings({ last: id })
      await remember({ id, text, history })
      if (s.history() === history) s.setSaved({ kind: 'saved' })
      return
    }
    s.setSaved(done)
    if (done.kind === 'conflict') s.setPanel('conflict')
  }

  const soon = (): void => {
    if (s.saved().kind === 'conflict') return
    s.setSaved({ kind: 'saving' })
    clearTimeout(timer)
    timer = setTimeout(() => {
      writing = writing.then(write)
    }, SAVE_AFTER_ms)
  }

  /** Writes what still waits, before another plan is opened. */
  const settle = async (): Promise<void> => {
    clearTimeout(timer)
    if (s.saved().kind === 'saving') writing = writing.then(write)
    await writing
  }
  return { soon, settle }
}

type Saving = ReturnType<typeof createSaving>

interface Shown {
  readonly id: string | null
  readonly revision: string | null
  readonly history: History
  readonly saved: SavedState
}

function show(s: State, next: Shown): void {
  batch(() => {
    s.setId(next.id)
    s.setRevision(next.revision)
    s.setHistory(next.history)
    s.setSaved(next.saved)
    s.setOpen(null)
    s.setGhost(null)
    s.setSlip(null)
    s.setPanel(null)
    s.setLanded(false)
  })
}

/** Opening plans: of the folder, with the steps that are remembered; from elsewhere, without a file yet. */
export function createOpening(s: State, saving: Saving) {
  const openPlan = async (id: string): Promise<boolean> => {
    await saving.settle()
    const file = await readPlan(id)
    if (file === null) return false
    const document = JSON.parse(file.text) as PlanDocument
    const [memory, { planText }] = await Promise.all([recalled(id), filed()])
    const outside = { kind: 'outside', name: '' } as const
    const history =
      memory === null
        ? begun(document)
        : planText(numbered(memory.history)) === planText(document)
          ? memory.history
          : withDocument(memory.history, document, outside, Date.now())
    show(s, { id, revision: file.revision, history, saved: { kind: 'saved' } })
    s.setSettings({ last: id })
    return true
  }

  const takeUp = async (document: PlanDocument, keep: boolean, beginning: readonly Chosen[] = []): Promise<void> => {
    await saving.settle()
    batch(() => {
      show(s, { id: null, revision: null, history: begun(document, beginning), saved: { kind: 'example' } })
      s.setLanded(beginning.length > 0)
    })
    if (keep) saving.soon()
  }

  /** The plan of the last visit, else any of the folder, else the example stays. */
  const openFirst = async (there: readonly Listed[]): Promise<void> => {
    const wanted = there.find((p) => p.id === s.settings().last)?.id ?? there[0]?.id
    if (wanted !== undefined) await openPlan(wanted).catch(() => false)
    s.setOpened(true)
  }
  return { openPlan, takeUp, openFirst }
}

/** Two changed the same file: one of the texts is taken, or both are kept. */
export function resolveConflict(s: State, saving: Saving, choice: 'mine' | 'theirs' | 'both'): void {
  const state = s.saved()
  if (state.kind !== 'conflict') return
  batch(() => {
    s.setPanel(null)
    s.setSaved({ kind: 'saving' })
    s.setRevision(choice === 'both' ? null : (state.theirs?.revision ?? null))
    if (choice === 'both') s.setId(null)
    if (choice === 'theirs' && state.theirs) {
      const document = JSON.parse(state.theirs.text) as PlanDocument
      s.setHistory(withDocument(s.history(), document, { kind: 'merged', name: '' }, Date.now()))
    }
  })
  saving.soon()
}
