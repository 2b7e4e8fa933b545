import { batch, createEffect, createSignal, on } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { First } from '../first.ts'
import type { AskedViews, Picture } from '../picture.ts'
import type { Told } from '../workers/protocol.ts'
import { evaluator, searcher } from './engine.ts'
import { worstFirst } from './order.ts'
import { pictured } from './pictured.ts'
import type { State } from './state.ts'

const SEARCH_AFTER_ms = 250

/** Shows drawings one after the other; those that are not drawn yet keep their last picture. */
function showing(s: State): (document: PlanDocument, pictures: readonly Picture[]) => Promise<void> {
  let turn = 0
  return async (document, pictures) => {
    const mine = ++turn
    for (const i of pictures.keys()) {
      await pictured()
      if (mine !== turn) return
      s.setPictures((was) => pictures.flatMap((p, j) => (j <= i ? p : (was.find((w) => w.id === p.id) ?? []))))
    }
    if (pictures.length === 0) s.setPictures([])
    s.setDrawn(document)
  }
}

/**
 * Keeps the evaluation in step with the document, and has remedies searched once it rests. The first answer stands
 * until the page is painted and `begin` lets the engine start; any other document, or another window or language than
 * it was drawn for, starts it at once. What comes is shown piece by piece, a picture between each, so that no task of
 * the page is long.
 */
export function createJudging(s: State, { told: first, drawn }: First) {
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

  const take = (evaluated: Told): void =>
    batch(() => {
      s.setEvaluated(evaluated)
      s.setOrder(worstFirst(evaluated.findings))
      s.setRemedies({})
    })

  const show = showing(s)
  const isFirst = (views: AskedViews): boolean =>
    drawn !== null && JSON.stringify(drawn.asked) === JSON.stringify(views)

  let before: PlanDocument | null = null
  createEffect(
    on([s.document, s.opened, started, s.asked], ([document, opened, begun, views]) => {
      if (!opened) return
      if (document === first.document && !begun) {
        if (before === null) take(first)
        before = document
        // Asked anew: what was just taken up names the currency.
        if (drawn !== null && isFirst(s.asked())) {
          s.setPictures(drawn.pictures)
          s.setDrawn(document)
          return
        }
      }
      if (document !== before) stop()
      before = document
      void evaluate(document, views).then((looked) => {
        if (looked === null || document !== s.document()) return
        if (looked.evaluated) take({ ...looked.evaluated, document })
        void show(document, looked.pictures)
        if (looked.evaluated) start(document)
      })
    }),
  )

  const other = evaluator()
  const tryOut = async (document: PlanDocument): Promise<Told | null> =>
    (await other(document, null))?.evaluated ?? null

  return { stop, tryOut, begin: () => void setStarted(true) }
}

export type Judging = ReturnType<typeof createJudging>
