/** Work of a worker of its own: its answer, and a way to end it at once. */
export interface Making<Answer> {
  readonly answer: Promise<Answer>
  readonly cancel: () => void
}

/** What a worker answers when it could not do its work. */
export interface Failed {
  readonly kind: 'failed'
  readonly message: string
}

/** One ask put to the worker at `path`, a worker made for it and ended after it; a worker that breaks answers `failed`. */
export function made<Ask, Answer>(path: string, ask: Ask): Making<Answer | Failed> {
  const worker = new Worker(new URL(path, document.baseURI), { type: 'module' })
  const answer = new Promise<Answer | Failed>((done) => {
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      worker.terminate()
      done(data)
    }
    worker.onerror = (e) => done({ kind: 'failed', message: e.message })
    worker.postMessage(ask)
  })
  return { answer, cancel: () => worker.terminate() }
}

/** Today where the reader is, year-month-day. */
export const today = (): string => {
  const d = new Date()
  return `${d.getFullYear()}-${String(d.getMonth() + 1).padStart(2, '0')}-${String(d.getDate()).padStart(2, '0')}`
}
