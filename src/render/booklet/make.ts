import { type FontBytes, pdf } from '../drawing/pdf.ts'
import { booklet } from './booklet.ts'
import { type BookletFace, bookletHtml } from './html.ts'
import { type BookletInput, given } from './input.ts'
import { bookletPages } from './pages.ts'

/** The booklet as one HTML file. */
export const bookletAsHtml = (input: BookletInput, faces: readonly BookletFace[]): string =>
  bookletHtml({ booklet: booklet(input), sentences: input.booklet, paper: input.paper, faces })

/** The booklet as a PDF at true scale. */
export function bookletAsPdf(input: BookletInput, fonts: FontBytes): Promise<Uint8Array> {
  const b = booklet(input)
  return pdf({
    pages: bookletPages(given(input), b),
    fonts,
    title: b.title,
    author: input.sentences.author,
    subject: input.booklet.subject,
    language: b.language,
  })
}
