import type { Remedy } from '../../../findings/finding.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Answer, Ask, Evaluated } from '../workers/protocol.ts'
import type { Adjusted } from './new-plan.ts'

const WORKER = new URL('assets/engine.js', document.baseURI)

const worker = (onAnswer: (answer: Answer) => void): Worker => {
  const made = new Worker(WORKER, { type: 'module' })
  made.onmessage = ({ data }: MessageEvent<Answer>) => onAnswer(data)
  return made
}

/**
 * Evaluates documents in a worker, the latest first: while one is computed only the newest that waits is kept, so that
 * typing never runs behind. The worker is started by the first document.
 */
export function evaluator(): (document: PlanDocument) => Promise<Evaluated | null> {
  let task = 0
  let busy = false
  let engine: Worker | null = null
  let running: ((e: Evaluated | null) => void) | null = null
  let waiting: { readonly document: PlanDocument; readonly done: (e: Evaluated | null) => void } | null = null
  const answered = (answer: Answer): void => {
    busy = false
    const done = running
    running = null
    done?.(answer.kind === 'evaluated' ? answer.evaluated : null)
    if (answer.kind === 'failed') console.error(answer.message)
    if (waiting) {
      const next = waiting
      waiting = null
      start(next.document, next.done)
    }
  }
  function start(plan: PlanDocument, done: (e: Evaluated | null) => void): void {
    busy = true
    running = done
    task += 1
    engine ??= worker(answered)
    engine.postMessage({ task, kind: 'evaluate', document: plan } satisfies Ask)
  }
  return (plan) =>
    new Promise((done) => {
      if (!busy) return start(plan, done)
      waiting?.done(null)
      waiting = { document: plan, done }
    })
}

/** What a search for remedies tells while it runs. */
export interface Search {
  readonly proved: (key: string, remedies: readonly Remedy[]) => void
  readonly progress: (done: number, of: number) => void
}

/** Searches remedies in a worker of its own; a new search or `cancel` ends the one that runs, at once. */
export function searcher(): {
  readonly start: (document: PlanDocument, first: string | null, search: Search) => void
  readonly cancel: () => void
} {
  let running: Worker | null = null
  const cancel = (): void => {
    running?.terminate()
    running = null
  }
  return {
    cancel,
    start: (plan, first, search) => {
      cancel()
      running = worker((answer) => {
        if (answer.kind === 'proved') search.proved(answer.key, answer.remedies)
        if (answer.kind === 'progress') search.progress(answer.done, answer.of)
      })
      running.postMessage({ task: 0, kind: 'remedies', document: plan, first } satisfies Ask)
    },
  }
}

/** A drafted plan changed in a worker until it holds as far as it can. */
export const adjustedInWorker = (plan: PlanDocument): Promise<Adjusted> =>
  new Promise((done) => {
    const engine = worker((answer) => {
      engine.terminate()
      done(answer.kind === 'adjusted' ? answer : { document: plan, made: [] })
    })
    engine.postMessage({ task: 0, kind: 'adjust', document: plan } satisfies Ask)
  })
