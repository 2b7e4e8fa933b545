import type { Remedy } from '../../../findings/finding.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Display } from '../../../render/display.ts'
import { tongue } from '../language.ts'
import type { AskedViews, Change, Inked, Picture } from '../picture.ts'
import type { Answer, Ask, Told } from '../workers/protocol.ts'
import type { TypedReadings } from '../workers/typed-readings.ts'
import type { Draft } from './draft.ts'

const address = (): URL => new URL('assets/engine.js', document.baseURI)

const worker = (onAnswer: (answer: Answer) => void): Worker => {
  const made = new Worker(address(), { type: 'module', name: tongue() })
  made.onmessage = ({ data }: MessageEvent<Answer>) => onAnswer(data)
  return made
}

/** What comes back of one look at a plan; without an evaluation where only other views of the same plan were asked. */
export interface Looked {
  readonly evaluated: Told | null
  readonly pictures: readonly Picture[]
}

interface Job {
  readonly document: PlanDocument
  readonly views: AskedViews | null
  readonly done: (looked: Looked | null) => void
}

/**
 * Evaluates and draws documents in a worker, the latest first: while one is computed only the newest that waits is
 * kept, so that typing never runs behind. The worker is started by the first document.
 */
export function evaluator(): (document: PlanDocument, views: AskedViews | null) => Promise<Looked | null> {
  let task = 0
  let engine: Worker | null = null
  let sent: PlanDocument | null = null
  let running: Job | null = null
  let waiting: Job | null = null
  const answered = (answer: Answer): void => {
    const { done } = running ?? {}
    running = null
    if (answer.kind === 'failed') console.error(answer.message)
    done?.(answer.kind === 'evaluated' ? answer : null)
    const next = waiting
    waiting = null
    if (next) start(next)
  }
  function start(job: Job): void {
    running = job
    task += 1
    engine ??= worker(answered)
    const document = job.views !== null && job.document === sent ? null : job.document
    sent = job.document
    engine.postMessage({ task, kind: 'evaluate', document, views: job.views } satisfies Ask)
  }
  return (document, views) =>
    new Promise((done) => {
      const job = { document, views, done }
      if (running === null) return start(job)
      waiting?.done(null)
      waiting = job
    })
}

/** What a change would draw otherwise, by sheet; computed in a worker of its own. */
export const ghostInWorker = (
  now: PlanDocument,
  then: PlanDocument,
  views: AskedViews,
  change: Change,
): Promise<Readonly<Record<string, Inked>>> =>
  new Promise((done) => {
    const engine = worker((answer) => {
      engine.terminate()
      done(answer.kind === 'ghost' ? answer.over : {})
    })
    engine.postMessage({ task: 0, kind: 'ghost', now, then, views, change } satisfies Ask)
  })

/** What to pour in today by the readings as typed, in sentences. */
export const correctedInWorker = (
  plan: PlanDocument,
  typed: TypedReadings,
  display: Display,
): Promise<readonly string[]> =>
  new Promise((done) => {
    const engine = worker((answer) => {
      engine.terminate()
      done(answer.kind === 'corrected' ? answer.lines : [])
    })
    engine.postMessage({ task: 0, kind: 'correct', document: plan, typed, display } satisfies Ask)
  })

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
export const adjustedInWorker = (draft: Draft): Promise<Draft> =>
  new Promise((done) => {
    const engine = worker((answer) => {
      engine.terminate()
      done(answer.kind === 'adjusted' ? answer.draft : draft)
    })
    engine.postMessage({ task: 0, kind: 'adjust', draft } satisfies Ask)
  })
