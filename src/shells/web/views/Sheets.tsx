import { strToU8, zipSync } from 'fflate'
import { createSignal, Show } from 'solid-js'
import { tongue } from '../language.ts'
import { download } from '../model/files.ts'
import { freshId } from '../model/plans.ts'
import { sheetsMade } from '../model/sheets.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'

const today = (): string => {
  const d = new Date()
  return `${d.getFullYear()}-${String(d.getMonth() + 1).padStart(2, '0')}-${String(d.getDate()).padStart(2, '0')}`
}

/** Sheets to print and outlines to cut, made on this page. */
export function Sheets() {
  const bench = useBench()
  const [working, setWorking] = createSignal<(() => void) | null>(null)
  const [said, setSaid] = createSignal('')
  const make = async (want: 'pdf' | 'files'): Promise<void> => {
    const job = sheetsMade({
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
    setSaid(answer.said.join(' '))
    const stem = freshId(String(bench.document()['name'] ?? ''), [])
    const [first] = answer.files
    if (want === 'pdf' && first) download(`${stem}-${first.name}`, first.content, first.type)
    if (want === 'files' && first) {
      const files = answer.files.map((f) => [f.name, typeof f.content === 'string' ? strToU8(f.content) : f.content])
      download(`${stem}-sheets.zip`, new Uint8Array(zipSync(Object.fromEntries(files))), 'application/zip')
    }
  }
  return (
    <section class="sheets">
      <h2>{say('sheets')}</h2>
      <p class="choices">
        <button type="button" class="do" disabled={working() !== null} onClick={() => void make('pdf')}>
          {say('sheets-pdf')}
        </button>
        <button type="button" class="do" disabled={working() !== null} onClick={() => void make('files')}>
          {say('sheets-files')}
        </button>
        <Show when={working()}>
          {(cancel) => (
            <>
              <span role="status">{say('sheets-working')}</span>
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
