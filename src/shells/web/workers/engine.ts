import { evaluate } from '../../../evaluate.ts'
import { withRemedies } from '../../../findings/prove.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { adjusted } from '../model/new-plan.ts'
import { evaluated } from './evaluated.ts'
import { type Answer, type Ask, type Evaluated, findingKey } from './protocol.ts'

const say = (answer: Answer): void => self.postMessage(answer)

const judge = (document: PlanDocument) => evaluate(parsePlan(document).plan).findings

/** Changes a plan until nothing fails that a proved change can cure; only what fails is searched. */
function adjust(task: number, document: PlanDocument): void {
  const proved = (plan: PlanDocument) => {
    const first = judge(plan).filter((f) => f.verdict === 'fail' && f.levers.length > 0)
    for (const target of first) {
      const found = withRemedies(plan, judge, (f) => findingKey(f) === findingKey(target))
      if (found.some((f) => f.remedies.length > 0)) return found
    }
    return first
  }
  const { document: changed, made } = adjusted(document, proved)
  say({ task, kind: 'adjusted', document: changed, made })
}

/** Proves the remedies of one finding after the other, the wanted one first; each is told as soon as it is known. */
function remedies(task: number, document: PlanDocument, first: string | null): void {
  const open = judge(document).filter((f) => f.levers.length > 0 && (f.verdict === 'fail' || f.verdict === 'watch'))
  const rank = (key: string, verdict: string): number => (key === first ? 0 : verdict === 'fail' ? 1 : 2)
  const queue = open
    .map((f) => ({ key: findingKey(f), verdict: f.verdict }))
    .sort((a, b) => rank(a.key, a.verdict) - rank(b.key, b.verdict))
  say({ task, kind: 'progress', done: 0, of: queue.length })
  for (const [i, { key }] of queue.entries()) {
    const proved = withRemedies(document, judge, (f) => findingKey(f) === key).find((f) => findingKey(f) === key)
    say({ task, kind: 'proved', key, remedies: proved?.remedies ?? [] })
    say({ task, kind: 'progress', done: i + 1, of: queue.length })
  }
}

let last: Evaluated | null = null

self.onmessage = ({ data }: MessageEvent<Ask>): void => {
  try {
    if (data.kind === 'evaluate') {
      last = evaluated(data.document, last)
      say({ task: data.task, kind: 'evaluated', evaluated: last })
    }
    if (data.kind === 'adjust') adjust(data.task, data.document)
    if (data.kind === 'remedies') remedies(data.task, data.document, data.first)
  } catch (error) {
    say({ task: data.task, kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
}
