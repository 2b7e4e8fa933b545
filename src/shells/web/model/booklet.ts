import type { BookletAnswer, BookletAsk } from '../workers/booklet.ts'

const address = (): URL => new URL('assets/booklet.js', document.baseURI)

/** The booklet made in a worker of its own; `cancel` ends it at once. */
export function bookletMade(ask: BookletAsk): { readonly answer: Promise<BookletAnswer>; readonly cancel: () => void } {
  const worker = new Worker(address(), { type: 'module' })
  const answer = new Promise<BookletAnswer>((done) => {
    worker.onmessage = ({ data }: MessageEvent<BookletAnswer>) => {
      worker.terminate()
      done(data)
    }
    worker.onerror = (e) => done({ kind: 'failed', message: e.message })
    worker.postMessage(ask)
  })
  return { answer, cancel: () => worker.terminate() }
}
