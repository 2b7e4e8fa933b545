import { createSignal, Show } from 'solid-js'
import { language, tongue } from '../language.ts'
import { bookletMade } from '../model/booklet.ts'
import { download } from '../model/files.ts'
import { freshId } from '../model/plans.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'

const today = (): string => {
  const d = new Date()
  return `${d.getFullYear()}-${String(d.getMonth() + 1).padStart(2, '0')}-${String(d.getDate()).padStart(2, '0')}`
}

const types = { html: 'text/html', pdf: 'application/pdf' } as const

/** One file from which somebody else builds: for a phone or from disk, and for paper. */
export function Booklet() {
  const bench = useBench()
  const [working, setWorking] = createSignal<(() => void) | null>(null)
  const [said, setSaid] = createSignal('')
  const make = async (want: 'html' | 'pdf'): Promise<void> => {
    const job = bookletMade({
      document: bench.document(),
      display: bench.display(),
      date: today(),
      want,
      language: tongue(),
    })
    setWorking(() => () => {
      job.cancel()
      setWorking(null)
    })
    const answer = await job.answer
    setWorking(null)
    if (answer.kind === 'failed') {
      setSaid(answer.message)
      return
    }
    setSaid('')
    const stem = freshId(String(bench.document()['name'] ?? ''), [])
    download(`${stem}-booklet.${want}`, answer.content, types[want])
  }
  return (
    <section class="sheets booklet">
      <h2>{language().booklet['make-title']}</h2>
      <p>{language().booklet['make-what']}</p>
      <p class="choices">
        <button type="button" class="do" disabled={working() !== null} onClick={() => void make('html')}>
          {language().booklet['make-html']}
        </button>
        <button type="button" class="do" disabled={working() !== null} onClick={() => void make('pdf')}>
          {language().booklet['make-pdf']}
        </button>
        <Show when={working()}>
          {(cancel) => (
            <>
              <span role="status">{language().booklet['make-working']}</span>
              <button type="button" class="link" onClick={() => cancel()()}>
                {say('cancel')}
              </button>
            </>
          )}
        </Show>
      </p>
      <p class="src" data-why="fact:drawing">
        {said()}
      </p>
    </section>
  )
}
