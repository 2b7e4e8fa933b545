import { language, tongue } from '../language.ts'
import { bookletMade } from '../model/booklet.ts'
import { download } from '../model/files.ts'
import { today } from '../model/made.ts'
import { freshId } from '../model/plans.ts'
import { useBench } from './bench.tsx'
import { MakingButtons, useMaking } from './Making.tsx'

const types = { html: 'text/html', pdf: 'application/pdf' } as const

/** One file from which somebody else builds: for a phone or from disk, and for paper. */
export function Booklet() {
  const bench = useBench()
  const making = useMaking()
  const make = async (want: 'html' | 'pdf'): Promise<void> => {
    const ask = { document: bench.document(), display: bench.display(), date: today(), want, language: tongue() }
    const answer = await making.made(bookletMade(ask))
    if (answer === null) return
    const stem = freshId(String(bench.document()['name'] ?? ''), [])
    download(`${stem}-booklet.${want}`, answer.content, types[want])
  }
  return (
    <section class="sheets booklet">
      <h2>{language().booklet['make-title']}</h2>
      <p>{language().booklet['make-what']}</p>
      <MakingButtons
        making={making}
        busy={language().booklet['make-working']}
        choices={[
          { text: language().booklet['make-html'], make: () => make('html') },
          { text: language().booklet['make-pdf'], make: () => make('pdf') },
        ]}
      />
    </section>
  )
}
