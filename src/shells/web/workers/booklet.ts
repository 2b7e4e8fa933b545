import drafting from '../../../../assets/fonts/page/drafting-full.woff2?url'
import italic from '../../../../assets/fonts/page/source-serif-4-latin-400-italic.woff2?url'
import regular from '../../../../assets/fonts/page/source-serif-4-latin-400-normal.woff2?url'
import strong from '../../../../assets/fonts/page/source-serif-4-latin-600-normal.woff2?url'
import extended from '../../../../assets/fonts/page/source-serif-4-latin-ext-400-normal.woff2?url'
import extendedStrong from '../../../../assets/fonts/page/source-serif-4-latin-ext-600-normal.woff2?url'
import draftingTtf from '../../../../assets/fonts/RootfallDrafting.ttf?url'
import italicTtf from '../../../../assets/fonts/SourceSerif4-Italic.ttf?url'
import mediumTtf from '../../../../assets/fonts/SourceSerif4-Medium.ttf?url'
import serifTtf from '../../../../assets/fonts/SourceSerif4-Regular.ttf?url'
import strongTtf from '../../../../assets/fonts/SourceSerif4-SemiBold.ttf?url'
import { evaluate } from '../../../evaluate.ts'
import { parsePlan } from '../../../plan/document.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { faceFiles } from '../../../render/booklet/faces.ts'
import { bookletAsHtml, bookletAsPdf } from '../../../render/booklet/make.ts'
import type { Display } from '../../../render/display.ts'
import type { Face } from '../../../render/drawing/primitives.ts'
import type { LanguageTag } from '../../../render/words/language.ts'
import { fetchLanguage, language } from '../language.ts'

export interface BookletAsk {
  readonly document: PlanDocument
  readonly display: Display
  readonly date: string
  readonly want: 'html' | 'pdf'
  readonly language: LanguageTag
}

export type BookletAnswer =
  | { readonly kind: 'made'; readonly content: string | Uint8Array<ArrayBuffer> }
  | { readonly kind: 'failed'; readonly message: string }

const pageFaces: Readonly<Record<string, string>> = {
  'drafting-full': drafting,
  'source-serif-4-latin-400-italic': italic,
  'source-serif-4-latin-400-normal': regular,
  'source-serif-4-latin-600-normal': strong,
  'source-serif-4-latin-ext-400-normal': extended,
  'source-serif-4-latin-ext-600-normal': extendedStrong,
}

const paperFaces: Readonly<Record<Face, string>> = {
  drafting: draftingTtf,
  serif: serifTtf,
  italic: italicTtf,
  medium: mediumTtf,
  strong: strongTtf,
}

async function bytes(url: string): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await fetch(new URL(url, self.location.href))
  return new Uint8Array(await answer.arrayBuffer())
}

/** Bytes as base 64, a piece at a time: a whole typeface is too many arguments for one call. */
function base64(of: Uint8Array): string {
  let text = ''
  for (let i = 0; i < of.length; i += 0x2000) text += String.fromCharCode(...of.subarray(i, i + 0x2000))
  return btoa(text)
}

async function made({ document, display, date, want, language: tag }: BookletAsk): Promise<BookletAnswer> {
  await fetchLanguage(tag)
  const spoken = language()
  const { plan } = parsePlan(document)
  const { facts, findings } = evaluate(plan)
  const input = {
    ...{ plan, facts, findings, words: spoken.words, sentences: spoken.sheets },
    ...{
      booklet: spoken.booklet,
      pupils: spoken.pupils,
      display,
      paper: plan.tools?.paper ?? 'A4',
      date,
      wrap: false,
    },
  }
  if (want === 'html') {
    const faces = faceFiles.map(async ({ file, ...face }) => ({
      ...face,
      base64: base64(await bytes(pageFaces[file]!)),
    }))
    return { kind: 'made', content: bookletAsHtml(input, await Promise.all(faces)) }
  }
  const fonts = Object.entries(paperFaces).map(async ([face, url]) => [face, await bytes(url)] as const)
  const pdf = await bookletAsPdf(input, Object.fromEntries(await Promise.all(fonts)) as Record<Face, Uint8Array>)
  return { kind: 'made', content: new Uint8Array(pdf) }
}

self.onmessage = ({ data }: MessageEvent<BookletAsk>): void => {
  made(data).then(
    (answer) => self.postMessage(answer),
    (error: unknown) => self.postMessage({ kind: 'failed', message: String(error) } satisfies BookletAnswer),
  )
}
