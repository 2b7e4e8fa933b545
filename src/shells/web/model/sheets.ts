import type { SheetsAnswer, SheetsAsk } from '../workers/sheets.ts'

const address = (): URL => new URL('assets/sheets.js', document.baseURI)

/** A set of files made in a worker of its own; `cancel` ends it at once. */
export function sheetsMade(ask: SheetsAsk): { readonly answer: Promise<SheetsAnswer>; readonly cancel: () => void } {
  const worker = new Worker(address(), { type: 'module' })
  const answer = new Promise<SheetsAnswer>((done) => {
    worker.onmessage = ({ data }: MessageEvent<SheetsAnswer>) => {
      worker.terminate()
      done(data)
    }
    worker.onerror = (e) => done({ kind: 'failed', message: e.message })
    worker.postMessage(ask)
  })
  return { answer, cancel: () => worker.terminate() }
}
