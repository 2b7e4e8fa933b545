import type { PlanDocument } from '../../../plan/plan.ts'
import type { SolidAnswer } from '../workers/solids.ts'

const address = (): URL => new URL('assets/solids.js', document.baseURI)

/** The tower's meshes, made in a worker of its own; `cancel` ends it at once. */
export function solidMade(plan: PlanDocument): { readonly answer: Promise<SolidAnswer>; readonly cancel: () => void } {
  const worker = new Worker(address(), { type: 'module' })
  const answer = new Promise<SolidAnswer>((done) => {
    worker.onmessage = ({ data }: MessageEvent<SolidAnswer>) => {
      worker.terminate()
      done(data)
    }
    worker.onerror = (e) => done({ kind: 'failed', message: e.message })
    worker.postMessage(plan)
  })
  return { answer, cancel: () => worker.terminate() }
}
