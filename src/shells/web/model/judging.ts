import { batch, createEffect, createSignal, on } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import { sheetsOfDetail, sheetsOfTower } from '../drawings.ts'
import { pictures } from '../picture.ts'
import type { Evaluated } from '../workers/protocol.ts'
import { evaluator, searcher } from './engine.ts'
import { heldOrder, worstFirst } from './order.ts'
import type { State } from './state.ts'

const SEARCH_AFTER_ms = 250

/**
 * Keeps the evaluation in step with the document, and has remedies searched once it rests. The first answer stands
 * until the page is painted and `begin` lets the engine start; any other document starts it at once.
 */
export function createJudging(s: State, first: Evaluated) {
  const evaluate = evaluator()
  const search = searcher()
  const [started, setStarted] = createSignal(false)
  let timer: ReturnType<typeof setTimeout> | undefined

  const stop = (): void => {
    clearTimeout(timer)
    search.cancel()
    s.setSearching(null)
  }

  const start = (document: PlanDocument): void => {
    stop()
    timer = setTimeout(() => {
      search.start(document, s.open(), {
        proved: (key, found) => s.setRemedies((all) => ({ ...all, [key]: found })),
        progress: (done, of) => s.setSearching(done < of ? { done, of } : null),
      })
    }, SEARCH_AFTER_ms)
  }

  const take = (evaluated: Evaluated): void =>
    batch(() => {
      s.setEvaluated(evaluated)
      s.setOrder((was) => (s.open() === null ? worstFirst(evaluated.findings) : heldOrder(was, evaluated.findings)))
      s.setRemedies({})
    })

  let before: PlanDocument | null = null
  createEffect(
    on([s.document, s.opened, started, s.asked], ([document, opened, begun, views]) => {
      if (!opened) return
      if (document === first.document && !begun) {
        if (before === null) take(first)
        before = document
        s.setPictures(pictures(first, views, [...sheetsOfTower, ...sheetsOfDetail]))
        return
      }
      if (document !== before) stop()
      before = document
      void evaluate(document, views).then((looked) => {
        if (looked === null || document !== s.document()) return
        batch(() => {
          if (looked.evaluated) take({ ...looked.evaluated, document })
          s.setPictures(looked.pictures)
        })
        if (looked.evaluated) start(document)
      })
    }),
  )

  const other = evaluator()
  const tryOut = async (document: PlanDocument): Promise<Evaluated | null> =>
    (await other(document, null))?.evaluated ?? null

  return { stop, tryOut, begin: () => void setStarted(true) }
}

export type Judging = ReturnType<typeof createJudging>
