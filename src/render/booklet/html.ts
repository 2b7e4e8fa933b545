import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Page } from '../drawing/primitives.ts'
import { svg } from '../drawing/svg.ts'
import { moved } from '../drawing/transform.ts'
import type { PaperName } from '../paper/size.ts'
import type { BookletSentences } from '../words/en/booklet.ts'
import { fill } from '../words/fill.ts'
import { BLANK } from './blank.ts'
import { drawingAir_mm } from './frame.ts'
import type { Block, Booklet, Chapter, ExampleBlock, Picture, StepBlock, Tick } from './model.ts'
import { bookletScript } from './script.ts'
import { bookletStyle, CROP_mm } from './style.ts'

/** Typefaces to carry inside the file: WOFF2 in base 64, each with the letters it holds where it holds not all. */
export interface BookletFace {
  readonly family: 'Booklet Serif' | 'Booklet Drafting'
  readonly weight: string
  readonly italic: boolean
  readonly base64: string
  readonly range?: string
}

interface Setting {
  readonly booklet: Booklet
  readonly sentences: BookletSentences
  readonly paper: PaperName
  readonly faces: readonly BookletFace[]
}

const escaped = (s: string): string =>
  s
    .replace(/\p{Cc}|\p{Cs}/gu, ' ')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')

/** Words as HTML; a row of underscores becomes a rule to write on. */
function words(said: string, id: string, s: Setting): string {
  let n = 0
  return escaped(said).replace(BLANK, () => {
    n += 1
    return `<input type="text" class="blank" data-keep="${escaped(id)}-blank-${n}" aria-label="${escaped(s.sentences['hand-hint'])}">`
  })
}

const hasBlank = (said: string): boolean => said.search(BLANK) >= 0

/** A box to tick with its words; words with a blank in them cannot be a label as well. */
function tick({ id, text }: Tick, s: Setting, tag: 'li' | 'p', more = ''): string {
  const box = `<input type="checkbox" data-keep="${escaped(id)}" id="t-${escaped(id)}"`
  const said = words(text, id, s)
  const labelled = hasBlank(text)
    ? `${box} aria-labelledby="l-${escaped(id)}"><span id="l-${escaped(id)}">${said}</span>`
    : `${box}><label for="t-${escaped(id)}">${said}</label>`
  return `<${tag} class="tick${more}">${labelled}</${tag}>`
}

const ticks = (lines: readonly Tick[], s: Setting, across = 1): string =>
  lines.length === 0
    ? ''
    : `<ul class="ticks${across > 1 ? ` across-${across}` : ''}">${lines.map((t) => tick(t, s, 'li')).join('')}</ul>`

/** A drawing as an image with a name, its lines painted by the style of the page. */
const image = (page: Page, title: string): string =>
  svg({ page, title, paint: 'class' }).replace('<svg ', '<svg role="img" ').trim()

function picture({ drawing, alt }: Picture): string {
  const box = bounds(drawing)
  if (box === null) return ''
  const page = {
    width_mm: box.right - box.left + 2 * drawingAir_mm,
    height_mm: box.top - box.bottom + 2 * drawingAir_mm,
    drawing: moved(drawing, [drawingAir_mm - box.left, drawingAir_mm - box.bottom]),
  }
  return `<figure>${image(page, alt)}</figure>`
}

/** A sheet without its margin, which the printer's page gives back: so it is printed at its own size. */
export const cropped = ({ width_mm, height_mm, drawing }: Page): Page => ({
  width_mm: width_mm - 2 * CROP_mm,
  height_mm: height_mm - 2 * CROP_mm,
  drawing: moved(drawing, [-CROP_mm, -CROP_mm]) satisfies Drawing,
})

function table(b: Extract<Block, { kind: 'table' }>, s: Setting): string {
  const { columns, rows, ticked, id } = b
  const side = (i: number) => (columns[i]!.align === 'figures' ? ' class="n"' : '')
  const head = columns.some((c) => c.heading !== '')
    ? `<thead><tr>${ticked ? '<td></td>' : ''}${columns
        .map((c, i) => (c.heading === '' ? '<td></td>' : `<th scope="col"${side(i)}>${escaped(c.heading)}</th>`))
        .join('')}</tr></thead>`
    : ''
  const body = rows.map((row, r) => {
    const own = `${id}-${r + 1}`
    const box = `<td><input type="checkbox" data-keep="${own}" aria-label="${escaped(row[0] ?? '')}"></td>`
    const cells = row.map((cell, i) =>
      i === 0
        ? `<th scope="row"${side(i)}>${words(cell, `${own}-${i}`, s)}</th>`
        : `<td${side(i)}>${words(cell, `${own}-${i}`, s)}</td>`,
    )
    return `<tr class="row">${ticked ? box : ''}${cells.join('')}</tr>`
  })
  return `<div class="wide" tabindex="0"><table>${head}<tbody>${body.join('')}</tbody></table></div>`
}

function form(b: Extract<Block, { kind: 'form' }>): string {
  const head = b.columns.map((c) => `<th scope="col">${escaped(c)}</th>`).join('')
  const body = b.rows.map((row, r) => {
    const name = row[0] === '' || row[0] === undefined ? String(r + 1) : row[0]
    const cells = row.map((cell, i) => {
      if (cell !== '') return i === 0 ? `<th scope="row">${escaped(cell)}</th>` : `<td>${escaped(cell)}</td>`
      const label = escaped(`${b.columns[i] ?? ''}, ${name}`)
      return `<td><input type="text" data-keep="${b.id}-${r + 1}-${i + 1}" aria-label="${label}"></td>`
    })
    return `<tr>${cells.join('')}</tr>`
  })
  const kind = b.id === 'log' ? 'form log' : 'form'
  return `<div class="wide" tabindex="0"><table class="${kind}"><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table></div>`
}

const step = (b: StepBlock, s: Setting): string =>
  `<section class="step" aria-labelledby="s-${b.id}"><h3 id="s-${b.id}">${words(b.title, `${b.id}-title`, s)}</h3><p class="aside">${escaped(b.aside)}</p>${
    b.picture === null ? '' : picture(b.picture)
  }${b.waits.map((w, i) => `<p class="caution">${words(w, `${b.id}-wait-${i}`, s)}</p>`).join('')}${b.cautions
    .map((c, i) => `<p class="caution">${words(c, `${b.id}-caution-${i}`, s)}</p>`)
    .join('')}${ticks(b.acts, s)}${b.test === null ? '' : tick(b.test, s, 'p', ' test')}</section>`

const example = (b: ExampleBlock): string =>
  `<div class="example"><h3>${escaped(b.question)}</h3><p>${escaped(b.given)}</p><p><i>${escaped(b.rule)}</i></p><p class="work">${escaped(b.answer)}</p></div>`

function block(b: Block, s: Setting, id: string): string {
  switch (b.kind) {
    case 'text':
      return `<p${b.tone === 'plain' ? '' : ` class="${b.tone}"`}>${words(b.text, id, s)}</p>`
    case 'heading':
      return `<h3>${escaped(b.text)}</h3>`
    case 'ticks':
      return ticks(b.lines, s, b.across)
    case 'table':
      return table(b, s)
    case 'form':
      return form(b)
    case 'picture':
      return picture(b.picture)
    case 'sheet':
      return `<figure class="sheet">${image(cropped(b.page), fill(s.sentences['sheet-alt'], { title: b.title }))}</figure>`
    case 'contents':
      return ''
    case 'step':
      return step(b, s)
    case 'example':
      return example(b)
  }
}

const chapter = (c: Chapter, s: Setting): string =>
  `<section id="${c.id}"${c.blocks[0]?.kind === 'sheet' ? ' class="bare"' : ''} aria-labelledby="h-${c.id}"><h2 id="h-${c.id}">${escaped(c.title)}</h2>
${c.blocks.map((b, i) => block(b, s, `${c.id}-${i}`)).join('\n')}</section>`

const typefaces = (faces: readonly BookletFace[]): string =>
  faces
    .map(
      ({ family, weight, italic, base64, range }) =>
        `@font-face{font-family:"${family}";font-weight:${weight};font-style:${italic ? 'italic' : 'normal'};src:url(data:font/woff2;base64,${base64}) format("woff2")${range === undefined ? '' : `;unicode-range:${range}`}}`,
    )
    .join('\n')

/** The booklet as one HTML file that needs nothing beside itself. */
export function bookletHtml(s: Setting): string {
  const { booklet: b, sentences, paper, faces } = s
  const contents = b.chapters.map((c) => `<li><a href="#${c.id}">${escaped(c.title)}</a></li>`).join('')
  return `<!doctype html>
<html lang="${escaped(b.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="rootfall">
<link rel="icon" href="data:,">
<title>${escaped(b.title)}</title>
<style>
${typefaces(faces)}
${bookletStyle(paper)}
</style>
</head>
<body>
<header><h1>${escaped(b.title)}</h1><p class="quiet">${escaped(b.subtitle)}</p>
<p class="quiet hint" data-hint="stored">${escaped(sentences['screen-hint'])}</p><p class="quiet hint" data-hint="address" hidden>${escaped(sentences['screen-hint-not'])}</p></header>
<nav aria-label="${escaped(sentences.contents)}"><ol>${contents}</ol></nav>
<main>
${b.chapters.map((c) => chapter(c, s)).join('\n')}
</main>
<script>${bookletScript(b.key)}</script>
</body>
</html>
`
}
