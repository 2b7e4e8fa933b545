import drafting from '../../../../assets/fonts/RootfallDrafting.ttf?url'
import italic from '../../../../assets/fonts/SourceSerif4-Italic.ttf?url'
import medium from '../../../../assets/fonts/SourceSerif4-Medium.ttf?url'
import serif from '../../../../assets/fonts/SourceSerif4-Regular.ttf?url'
import strong from '../../../../assets/fonts/SourceSerif4-SemiBold.ttf?url'
import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { Display } from '../../../render/display.ts'
import { dxf } from '../../../render/drawing/dxf.ts'
import { pdf } from '../../../render/drawing/pdf.ts'
import type { Face } from '../../../render/drawing/primitives.ts'
import { svg } from '../../../render/drawing/svg.ts'
import { plainFiles } from '../../../render/sheets/plain.ts'
import { sheetSet } from '../../../render/sheets/set.ts'
import type { LanguageTag } from '../../../render/words/language.ts'
import { fetchLanguage, language } from '../language.ts'

export interface SheetsAsk {
  readonly document: PlanDocument
  readonly display: Display
  readonly date: string
  readonly want: 'pdf' | 'files'
  readonly language: LanguageTag
}

export interface MadeFile {
  readonly name: string
  readonly type: string
  readonly content: string | Uint8Array<ArrayBuffer>
}

export type SheetsAnswer =
  | { readonly kind: 'made'; readonly files: readonly MadeFile[]; readonly said: readonly string[] }
  | { readonly kind: 'failed'; readonly message: string }

const faces: Readonly<Record<Face, string>> = { drafting, italic, medium, serif, strong }

async function fonts(): Promise<Readonly<Record<Face, Uint8Array>>> {
  const entries = Object.entries(faces).map(async ([face, url]) => {
    const answer = await fetch(new URL(url, self.location.href))
    return [face, new Uint8Array(await answer.arrayBuffer())] as const
  })
  return Object.fromEntries(await Promise.all(entries)) as Record<Face, Uint8Array>
}

async function made({ document, display, date, want, language: tag }: SheetsAsk): Promise<SheetsAnswer> {
  await fetchLanguage(tag)
  const spoken = language()
  const { plan } = parsePlan(document)
  const { facts, findings } = evaluate(plan)
  const paper = plan.tools?.paper ?? 'A4'
  const input = {
    plan,
    facts,
    findings,
    words: spoken.words,
    sentences: spoken.sheets,
    display,
    paper,
    date,
    wrap: false,
  }
  const set = sheetSet(input)
  const said = [...set.refused, ...set.leftOut]
  if (set.pages.length === 0) return { kind: 'made', files: [], said }
  if (want === 'pdf') {
    const title = plan.name ?? spoken.sheets.unnamed
    const bytes = await pdf({
      pages: set.pages.map((p) => p.page),
      fonts: await fonts(),
      title,
      author: spoken.sheets.author,
      subject: spoken.sheets.subject,
      language: spoken.words.language,
    })
    return {
      kind: 'made',
      files: [{ name: 'sheets.pdf', type: 'application/pdf', content: new Uint8Array(bytes) }],
      said,
    }
  }
  const svgs = set.pages.map((p, i): MadeFile => {
    const name = `${String(i + 1).padStart(2, '0')}-${p.id}.svg`
    return { name, type: 'image/svg+xml', content: svg({ page: p.page, title: p.title }) }
  })
  const cut: readonly MadeFile[] =
    set.contours.length === 0
      ? []
      : [
          {
            name: 'outlines-mm.dxf',
            type: 'image/vnd.dxf',
            content: dxf({ drawing: set.contours, reference: '100 mm' }),
          },
        ]
  const plain = plainFiles(input).map((f): MadeFile => ({ name: f.name, type: 'text/plain', content: f.text }))
  return { kind: 'made', files: [...svgs, ...cut, ...plain], said }
}

self.onmessage = ({ data }: MessageEvent<SheetsAsk>): void => {
  made(data).then(
    (answer) => self.postMessage(answer),
    (error: unknown) => self.postMessage({ kind: 'failed', message: String(error) } satisfies SheetsAnswer),
  )
}
