import type { Drawing, Page, Primitive } from '../drawing/primitives.ts'
import { sheet } from '../paper/sheet.ts'
import { areas } from '../paper/size.ts'
import { table } from '../paper/table.ts'
import { ruled } from '../sheets/blanks.ts'
import type { Given } from './input.ts'
import type { Block, Booklet, Chapter } from './model.ts'
import { type Laid, laid, SMALL_mm } from './pieces.ts'

/** What stands on one page of the booklet: drawn in the body, or a sheet that is a page already. */
type Filled = { readonly title: string; readonly drawing: Drawing } | { readonly page: Page }

/** Pages that fill from the top; a block that finds no room turns the page. */
interface Flow {
  readonly done: Filled[]
  page: Primitive[]
  low: number
}

function filled(g: Given, c: Chapter): readonly Filled[] {
  const { body } = areas(g.paper)
  const [x, top] = [body.left, body.top - 3]
  const width = body.right - body.left
  const f: Flow = { done: [], page: [], low: top }
  const turn = () => {
    const title = f.done.length === 0 ? c.title : g.sheet.say('continued', { title: c.title })
    if (f.page.length > 0) f.done.push({ title, drawing: f.page })
    f.page = []
    f.low = top
  }
  const all = c.blocks.map((b) => laid(b, width))
  const firstHeight = (l: Laid | undefined) => (l !== undefined && 'pieces' in l ? (l.pieces[0]?.height_mm ?? 0) : 20)
  all.forEach((l, n) => {
    if ('page' in l) {
      turn()
      f.done.push(l)
    } else if ('rows' in l) putRows(f, l.rows, { x, width, bottom: body.bottom, top }, turn)
    else
      l.pieces.forEach((p, i) => {
        const next = l.pieces[i + 1]?.height_mm ?? firstHeight(all[n + 1])
        const wanted = p.height_mm + (p.holds === true ? Math.min(next, (top - body.bottom) / 2) : 0)
        if (f.low - wanted < body.bottom && f.low < top) turn()
        f.page.push(...p.draw([x, f.low]))
        f.low -= p.height_mm
      })
  })
  turn()
  return f.done
}

interface Place {
  readonly x: number
  readonly width: number
  readonly bottom: number
  readonly top: number
}

/** A table begins where there is room for two rows and goes on over as many pages as it takes. */
function putRows(f: Flow, b: Extract<Block, { kind: 'table' }>, at: Place, turn: () => void): void {
  let rest = b.rows
  if (f.low - at.bottom < 24 && f.low < at.top) turn()
  while (rest.length > 0) {
    const t = table({
      at: [at.x, f.low],
      columns: b.columns,
      rows: rest,
      width_mm: at.width,
      height_mm: f.low - at.bottom,
      size_mm: SMALL_mm,
      boxed: b.ticked,
    })
    const none = t.rest.length === rest.length
    if (none && f.low >= at.top) return
    if (!none) {
      f.page.push(...t.drawing)
      f.low -= t.height_mm + 3
    }
    rest = t.rest
    if (rest.length > 0) turn()
  }
}

/** The booklet as pages of paper: words set in the manner of the sheets, sheets as they are. */
export function bookletPages(g: Given, b: Booklet): readonly Page[] {
  const all = b.chapters.flatMap((c) => filled(g, c))
  return all.map((p, i): Page => {
    if ('page' in p) return p.page
    const cell = (label: 'plan' | 'sheet' | 'scale' | 'change' | 'date', value: string) => ({
      label: g.sheet.say(label),
      value,
    })
    return sheet({
      paper: g.paper,
      bars: false,
      words: {
        title: p.title,
        subtitle: `${b.title}. ${b.subtitle}`,
        block: {
          plan: cell('plan', b.title),
          sheet: { label: g.tell('page-label'), value: g.tell('page', { n: String(i + 1), m: String(all.length) }) },
          scale: cell('scale', g.sheet.say('no-scale')),
          change: cell('change', String(g.plan.change ?? 0)),
          date: cell('date', g.date),
        },
        mm: g.sheet.say('mm'),
        inch: g.sheet.say('inch'),
        remark: '',
      },
      drawing: ruled(p.drawing),
    })
  })
}
