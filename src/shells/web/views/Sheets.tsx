import { strToU8, zipSync } from 'fflate'
import { tongue } from '../language.ts'
import { download } from '../model/files.ts'
import { today } from '../model/made.ts'
import { freshId } from '../model/plans.ts'
import { sheetsMade } from '../model/sheets.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { MakingButtons, useMaking } from './Making.tsx'

/** Sheets to print and outlines to cut, made on this page. */
export function Sheets() {
  const bench = useBench()
  const making = useMaking()
  const make = async (want: 'pdf' | 'files'): Promise<void> => {
    const ask = { document: bench.document(), display: bench.display(), date: today(), want, language: tongue() }
    const answer = await making.made(sheetsMade(ask))
    if (answer === null) return
    making.setSaid(answer.said.join(' '))
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
      <MakingButtons
        making={making}
        busy={say('sheets-working')}
        choices={[
          { text: say('sheets-pdf'), make: () => make('pdf') },
          { text: say('sheets-files'), make: () => make('files') },
        ]}
      />
    </section>
  )
}
