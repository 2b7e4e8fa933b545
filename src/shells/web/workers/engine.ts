import { proofOf } from '../../../evaluate.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { sheetsOfDetail, sheetsOfTower } from '../drawings.ts'
import { sheetsOfFeed } from '../feed-drawings.ts'
import { sheetsOfFlow } from '../flow-drawing.ts'
import { fetchLanguage, tongue } from '../language.ts'
import { ghosts, pictures } from '../picture.ts'
import { sheetsOfWater } from '../water-drawings.ts'
import { fetchWords } from '../words.ts'
import { adjustedPlan } from './adjust.ts'
import { corrected } from './correcting.ts'
import { evaluated } from './evaluated.ts'
import { type Answer, type Ask, type Evaluated, findingKey } from './protocol.ts'
import { told } from './told.ts'

const say = (answer: Answer): void => self.postMessage(answer)

/** Proves the remedies of one finding after the other, the wanted one first; each is told as soon as it is known. */
function remedies(task: number, document: PlanDocument, first: string | null): void {
  const { findings, curesOf } = proofOf(document)
  const open = findings.filter((f) => f.levers.length > 0 && (f.verdict === 'fail' || f.verdict === 'watch'))
  const rank = (key: string, verdict: string): number => (key === first ? 0 : verdict === 'fail' ? 1 : 2)
  const queue = open.toSorted((a, b) => rank(findingKey(a), a.verdict) - rank(findingKey(b), b.verdict))
  say({ task, kind: 'progress', done: 0, of: queue.length })
  for (const [i, finding] of queue.entries()) {
    say({ task, kind: 'proved', key: findingKey(finding), remedies: curesOf(finding) })
    say({ task, kind: 'progress', done: i + 1, of: queue.length })
  }
}

const sheets = [...sheetsOfTower, ...sheetsOfFlow, ...sheetsOfFeed, ...sheetsOfDetail, ...sheetsOfWater]

let last: Evaluated | null = null

function evaluateAsked({ task, document, views }: Extract<Ask, { kind: 'evaluate' }>): void {
  const fresh = document === null ? null : evaluated(document, last)
  last = fresh ?? last
  const drawn = last !== null && views !== null ? pictures(last, views, sheets) : []
  say({ task, kind: 'evaluated', evaluated: fresh && told(fresh), pictures: drawn })
}

function ghostAsked({ task, now, then, views, change }: Extract<Ask, { kind: 'ghost' }>): void {
  const here = evaluated(now)
  say({ task, kind: 'ghost', over: ghosts([here, evaluated(then, here)], views, sheets, change) })
}

function answer(ask: Ask): void {
  if (ask.kind === 'evaluate') evaluateAsked(ask)
  else if (ask.kind === 'ghost') ghostAsked(ask)
  else if (ask.kind === 'correct')
    say({ task: ask.task, kind: 'corrected', lines: corrected(evaluated(ask.document), ask.typed, ask.display) })
  else if (ask.kind === 'adjust') say({ task: ask.task, kind: 'adjusted', draft: adjustedPlan(ask.draft) })
  else remedies(ask.task, ask.document, ask.first)
}

// Asks wait for the language, in their order.
const spoken = Promise.all([fetchLanguage(tongue()), fetchWords(tongue())])

self.onmessage = async ({ data }: MessageEvent<Ask>): Promise<void> => {
  try {
    await spoken
    answer(data)
  } catch (error) {
    say({ task: data.task, kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
}
