import type { Page } from '../drawing/primitives.ts'
import { ruled } from '../sheets/blanks.ts'
import { type Filled, filled } from './flow.ts'
import type { Given } from './input.ts'
import type { Booklet, Chapter, ContentsLine } from './model.ts'
import { bodyOf, bookPage, foot, LIST_SIZES, SIZES, type Size, WORK_SIZES } from './paper.ts'

/** Chapters that run on without a new page, and the columns they are set in; any other stands alone in one. */
const RUNS: readonly {
  readonly chapters: readonly string[]
  readonly columns: number
  readonly sizes?: readonly Size[]
}[] = [
  { chapters: ['purpose'], columns: 2 },
  { chapters: ['parts'], columns: 1, sizes: LIST_SIZES },
  { chapters: ['drawings'], columns: 2, sizes: LIST_SIZES },
  { chapters: ['steps', 'wet', 'start'], columns: 2, sizes: WORK_SIZES },
  { chapters: ['batch', 'running'], columns: 2 },
  { chapters: ['pupils'], columns: 2 },
  { chapters: ['answers'], columns: 2 },
]

interface Run {
  readonly chapters: readonly Chapter[]
  readonly columns: number
  readonly sizes: readonly Size[]
}

function runsOf(b: Booklet): readonly Run[] {
  const runs: { chapters: Chapter[]; columns: number; sizes: readonly Size[] }[] = []
  let before: (typeof RUNS)[number] | undefined
  for (const c of b.chapters) {
    const own = RUNS.find((r) => r.chapters.includes(c.id))
    if (own !== undefined && own === before) runs.at(-1)!.chapters.push(c)
    else runs.push({ chapters: [c], columns: own?.columns ?? 1, sizes: own?.sizes ?? SIZES })
    before = own
  }
  return runs
}

/** In the largest letters that take no more pages than the smallest. */
function set(g: Given, { chapters, columns, sizes }: Run): readonly Filled[] {
  const continued = (title: string) => g.sheet.say('continued', { title })
  const body = bodyOf(g.paper)
  const pagesAt = (size: Size) => filled({ chapters, columns, body, size, continued })
  const tight = pagesAt(sizes.at(-1)!)
  for (const size of sizes.slice(0, -1)) {
    const pages = pagesAt(size)
    if (pages.length === tight.length) return pages
  }
  return tight
}

const isAppendix = (r: Run): boolean => r.chapters.some((c) => c.appendix === true)

/** Pages of the booklet itself, or of what is printed apart. */
const count = (runs: readonly Run[], pages: readonly (readonly Filled[])[], appendix: boolean): number =>
  runs.reduce((n, r, i) => n + (isAppendix(r) === appendix ? pages[i]!.length : 0), 0)

/** On which page each chapter and each full-size sheet begins. */
function contentsOf(g: Given, runs: readonly Run[], pages: readonly (readonly Filled[])[]): readonly ContentsLine[] {
  let [body, after] = [0, 0]
  return runs.flatMap((r, i) => {
    const from = isAppendix(r) ? after : body
    const own = pages[i]!
    if (isAppendix(r)) after += own.length
    else body += own.length
    const label = (n: number) => (isAppendix(r) ? g.tell('appendix-page', { n: String(n) }) : String(n))
    const heads = r.chapters.map((c): ContentsLine => {
      const at = own.findIndex((p) => p.begins.includes(c.id))
      return { text: c.title, page: label(from + Math.max(0, at) + 1), under: false }
    })
    const sheets = r.chapters.some((c) => c.blocks.some((b) => b.kind === 'sheet'))
    if (!isAppendix(r) || !sheets) return heads
    const apart = { text: g.tell('contents-appendix', { n: String(count(runs, pages, false)) }), page: '', under: true }
    return [...heads, apart, ...sheetLines(r, own, (n) => label(from + n))]
  })
}

function sheetLines(r: Run, own: readonly Filled[], label: (n: number) => string): readonly ContentsLine[] {
  const titles = new Set<string>()
  return r.chapters.flatMap((c) =>
    c.blocks.flatMap((b) => {
      if (b.kind !== 'sheet' || b.id === undefined || titles.has(b.id)) return []
      titles.add(b.id)
      const at = own.findIndex((p) => 'page' in p && p.page === b.page)
      return [{ text: b.title, page: label(at + 1), under: true }]
    }),
  )
}

const withContents = (run: Run, contents: readonly ContentsLine[]): Run => ({
  ...run,
  chapters: run.chapters.map((c) => ({
    ...c,
    blocks: c.blocks.map((b) => (b.kind === 'contents' ? { ...b, lines: contents } : b)),
  })),
})

/** The booklet as pages of paper: words set in the manner of the sheets, sheets as they are. */
export function bookletPages(g: Given, b: Booklet): readonly Page[] {
  const runs = runsOf(b)
  const rest = runs.slice(1).map((r) => set(g, r))
  // The contents take the same room whatever their figures, but room they take: set, counted, set again.
  const headed = (first: readonly Filled[]) => set(g, withContents(runs[0]!, contentsOf(g, runs, [first, ...rest])))
  const again = runs.length === 0 ? [] : [headed(headed([])), ...rest]
  const [body, appendix] = [count(runs, again, false), count(runs, again, true)]
  let [n, a] = [0, 0]
  return runs.flatMap((r, i) =>
    again[i]!.map((p): Page => {
      const number = isAppendix(r)
        ? g.tell('page', {
            n: g.tell('appendix-page', { n: String(++a) }),
            m: g.tell('appendix-page', { n: String(appendix) }),
          })
        : g.tell('page', { n: String(++n), m: String(body) })
      const line = { paper: g.paper, plan: `${b.title}. ${b.subtitle}`, number: `${g.tell('page-label')} ${number}` }
      if ('page' in p) return { ...p.page, drawing: [...p.page.drawing, ...foot(line)] }
      return bookPage({ ...line, title: p.title, drawing: ruled(p.drawing) })
    }),
  )
}
