import type { Drawing, Page, Primitive, Rect } from '../drawing/primitives.ts'
import { table } from '../paper/table.ts'
import type { Chapter } from './model.ts'
import type { Size } from './paper.ts'
import type { Piece } from './piece.ts'
import { chapterPiece, type Laid, laid } from './pieces.ts'

/** What stands on one page of the booklet: drawn in the body, or a sheet that is a page already. */
export type Filled = { /** Ids of the chapters that begin here. */ readonly begins: readonly string[] } & (
  | { readonly title: string; readonly drawing: Drawing }
  | { readonly page: Page }
)

const GUTTER_mm = 8
const AFTER_TABLE_mm = 3
const ROW_AIR_mm = 1.7
/** A table is not begun where it has less room than this. */
const LEAST_TABLE_mm = 24

/** Columns that fill from the top, page by page; a block that finds no room goes to the next column. */
interface Flow {
  readonly body: Rect
  readonly columns: number
  readonly width: number
  readonly done: Filled[]
  readonly continued: (title: string) => string
  /** The chapter that is being set, and the title of the page that is being filled. */
  chapter: string
  begun: boolean
  title: string
  begins: string[]
  page: Primitive[]
  column: number
  low: number
}

const left = (f: Flow): number => f.body.left + f.column * (f.width + GUTTER_mm)

function turn(f: Flow): void {
  if (f.page.length > 0) {
    f.done.push({ title: f.title, drawing: f.page, begins: f.begins })
    f.begins = []
  }
  f.page = []
  f.column = 0
  f.low = f.body.top
  f.title = f.begun ? f.continued(f.chapter) : f.chapter
}

function next(f: Flow): void {
  if (f.column + 1 === f.columns) turn(f)
  else {
    f.column += 1
    f.low = f.body.top
  }
}

function put(f: Flow, p: Piece, following_mm: number): void {
  const held = p.holds === true ? Math.min(following_mm, (f.body.top - f.body.bottom) / 2) : 0
  if (f.low - p.height_mm - held < f.body.bottom && f.low < f.body.top) next(f)
  f.page.push(...p.draw([left(f), f.low]))
  f.low -= p.height_mm
}

/** A table begins where there is room for two rows and goes on over as many columns as it takes. */
function putRows(f: Flow, b: Extract<Laid, { rows: unknown }>['rows'], size: Size): void {
  let rest = b.rows
  if (f.low - f.body.bottom < LEAST_TABLE_mm && f.low < f.body.top) next(f)
  while (rest.length > 0) {
    const t = table({
      at: [left(f), f.low],
      columns: b.columns,
      rows: rest,
      width_mm: f.width,
      height_mm: f.low - f.body.bottom,
      size_mm: size.small_mm,
      boxed: b.ticked,
      air_mm: ROW_AIR_mm * size.air,
    })
    const none = t.rest.length === rest.length
    if (none && f.low >= f.body.top) return
    if (!none) {
      f.page.push(...t.drawing)
      f.low -= t.height_mm + AFTER_TABLE_mm * size.air
    }
    rest = t.rest
    if (rest.length > 0) next(f)
  }
}

const firstHeight = (l: Laid | undefined): number =>
  l !== undefined && 'pieces' in l ? (l.pieces[0]?.height_mm ?? 0) : 20

function putChapter(f: Flow, c: Chapter, size: Size): void {
  const all = c.blocks.map((b) => laid(b, f.width, size))
  f.begun = false
  f.chapter = c.title
  if (f.page.length === 0) f.title = c.title
  else put(f, chapterPiece(c.title, f.width), firstHeight(all[0]))
  f.begins.push(c.id)
  all.forEach((l, n) => {
    if ('page' in l) {
      turn(f)
      f.done.push({ page: l.page, begins: f.begins })
      f.begins = []
    } else if ('rows' in l) putRows(f, l.rows, size)
    else
      l.pieces.forEach((p, i) => {
        put(f, p, l.pieces[i + 1]?.height_mm ?? firstHeight(all[n + 1]))
        f.begun = true
      })
    f.begun = true
  })
}

/** Chapters that share their pages, one after the other. */
export function filled(given: {
  readonly chapters: readonly Chapter[]
  readonly columns: number
  readonly body: Rect
  readonly size: Size
  readonly continued: (title: string) => string
}): readonly Filled[] {
  const { chapters, columns, body, size, continued } = given
  const width = (body.right - body.left - (columns - 1) * GUTTER_mm) / columns
  const f: Flow = {
    body,
    columns,
    width,
    done: [],
    continued,
    chapter: '',
    begun: false,
    title: '',
    begins: [],
    page: [],
    column: 0,
    low: body.top,
  }
  for (const c of chapters) putChapter(f, c, size)
  turn(f)
  return f.done
}
