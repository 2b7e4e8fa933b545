import { batch, createEffect, on } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import { evaluator, searcher } from './engine.ts'
import { heldOrder, worstFirst } from './order.ts'
import type { State } from './state.ts'

const SEARCH_AFTER_ms = 250

/** Keeps the evaluation in step with the document, and has remedies searched once it rests. */
export function createJudging(s: State) {
  const evaluate = evaluator()
  const search = searcher()
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

  createEffect(
    on(s.document, (document) => {
      stop()
      void evaluate(document).then((evaluated) => {
        if (evaluated === null || document !== s.document()) return
        batch(() => {
          s.setEvaluated(evaluated)
          s.setOrder((was) => (s.open() === null ? worstFirst(evaluated.findings) : heldOrder(was, evaluated.findings)))
          s.setRemedies({})
        })
        start(document)
      })
    }),
  )

  return { stop, tryOut: evaluator() }
}

export type Judging = ReturnType<typeof createJudging>
