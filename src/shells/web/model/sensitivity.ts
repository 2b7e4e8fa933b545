import type { Sensitivity } from '../../../sensitivity/swings.ts'
import type { SensitivityAnswer, SensitivityAsk } from '../workers/sensitivity.ts'

/** What is told while the readings are gone through. */
export interface Finding {
  readonly progress: (done: number, of: number) => void
  readonly found: (sensitivity: Sensitivity) => void
  readonly failed: (message: string) => void
}

/** Goes through the readings of a plan in a worker of its own; what is given back ends it at once. */
export function findSensitivity(ask: SensitivityAsk, told: Finding): () => void {
  const worker = new Worker(new URL('assets/sensitivity.js', document.baseURI), { type: 'module' })
  const end = (): void => worker.terminate()
  worker.onmessage = ({ data }: MessageEvent<SensitivityAnswer>) => {
    if (data.kind === 'progress') return told.progress(data.done, data.of)
    end()
    if (data.kind === 'found') told.found(data.sensitivity)
    else told.failed(data.message)
  }
  worker.onerror = (e) => told.failed(e.message)
  worker.postMessage(ask)
  return end
}
