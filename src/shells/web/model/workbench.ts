import { batch } from 'solid-js'
import { withRemedy } from '../../../findings/apply.ts'
import type { Remedy } from '../../../findings/finding.ts'
import { valueAt } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { LanguageTag } from '../../../render/words/language.ts'
import type { First } from '../first.ts'
import { ghostInWorker } from './engine.ts'
import { createOpening, createSaving, resolveConflict } from './filing.ts'
import { type Deed, type History, redo, undo, withChange, withCure, withDocument } from './history.ts'
import { createJudging } from './judging.ts'
import { type PartId, partOf } from './parts.ts'
import { pictured } from './pictured.ts'
import type { Reason } from './reasons.ts'
import { createState, type State } from './state.ts'

/** Takes a part in hand: fields and drawing first, its findings a picture later, so that no task of the page is long. */
const chooser =
  (s: State) =>
  (part: PartId): void => {
    batch(() => {
      s.setPart(part)
      s.setGhost(null)
    })
    void pictured().then(() => {
      if (s.part() !== part) return
      batch(() => {
        s.setFront(part)
        s.setOpen(s.order().find((key) => partOf(s.findings().get(key)?.at ?? '') === part) ?? null)
      })
    })
  }

/** Everything the page knows and does; views read its signals and call its verbs. */
export function createWorkbench(first: First) {
  const s = createState(first.told.document)
  const judging = createJudging(s, first)
  const saving = createSaving(s)
  const opening = createOpening(s, saving)

  const move = (next: History): void => {
    if (next === s.history()) return
    batch(() => {
      s.setHistory(next)
      s.setGhost(null)
    })
    saving.soon()
  }

  const choose = chooser(s)

  const openFinding = (key: string | null): void =>
    batch(() => {
      const finding = key === null ? undefined : s.findings().get(key)
      s.setOpen(key)
      s.setGhost(null)
      if (!finding) return
      s.setPart(partOf(finding.at))
      s.setFront(partOf(finding.at))
    })

  /** A change held over the drawing; where it moves no line, `note` says it there. */
  const hold = async (key: string, remedy: Remedy | null, note = ''): Promise<void> => {
    if (remedy === null) {
      s.setGhost(null)
      return
    }
    const then = withRemedy(s.document(), remedy)
    const over = await ghostInWorker(s.document(), then, s.asked(), { part: partOf(remedy.set), note })
    s.setGhost({ key, remedy, over })
  }

  return {
    ...s,
    ...opening,
    choose,
    openFinding,
    hold,
    begin: judging.begin,
    tryOut: judging.tryOut,
    stopSearch: judging.stop,
    retry: saving.soon,
    set: (path: string, value: unknown) =>
      move(withChange(s.history(), { path, value, from: valueAt(s.document(), path), at_ms: Date.now() })),
    /** A proved remedy made, all that it changes as one step. */
    take: (remedy: Remedy) => move(withCure(s.history(), remedy, Date.now())),
    exchange: (document: PlanDocument, deed: Deed) => move(withDocument(s.history(), document, deed, Date.now())),
    explain: (reason: Reason, back: HTMLElement | SVGElement) =>
      s.setSlip({ reason, beside: back.getBoundingClientRect(), back }),
    resolveConflict: (choice: 'mine' | 'theirs' | 'both') => resolveConflict(s, saving, choice),
    /** The page is drawn anew in another language once the plan is safe; else at its next start. */
    speak: async (language: LanguageTag): Promise<void> => {
      s.setSettings({ language })
      await saving.settle()
      if (s.saved().kind === 'saved' || s.saved().kind === 'example') location.reload()
    },
    undo: () => move(undo(s.history())),
    redo: () => move(redo(s.history())),
  }
}

export type Workbench = ReturnType<typeof createWorkbench>
