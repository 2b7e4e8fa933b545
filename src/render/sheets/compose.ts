import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Point, Rect } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { tiles } from '../paper/tiles.ts'
import { actions, paragraph } from '../paper/words.ts'
import type { Context } from './context.ts'
import { tidied } from './tidy.ts'

const BETWEEN_mm = 6.5
/** Clear of the hairline under the heading. */
const UNDER_HEADING_mm = 3
/** What is taken from the right by the upright bar, up to here above the foot of the body. */
const BAR_TOP_mm = 108
/** Narrower than this, lines of action are set below a block instead of beside it. */
const LEAST_WORDS_mm = 44

export const widthOf = (r: Rect): number => r.right - r.left
export const heightOf = (r: Rect): number => r.top - r.bottom

/** A drawing moved so that the upper left corner of its box stands at a point. */
export function hung(drawing: Drawing, [x, y]: Point): Drawing {
  const box = bounds(drawing)
  return box === null ? drawing : moved(drawing, [x - box.left, y - box.top])
}

export const topLeft = (c: Context): Point => [c.room.body.left, c.room.body.top - UNDER_HEADING_mm]

interface Said {
  readonly lines: readonly string[]
  /** Said below the actions, in a stronger letter. */
  readonly cautions?: readonly string[]
}

interface Filled {
  readonly drawing: Drawing
  readonly rest: Said
  readonly low: number
}

/** Actions and then cautions in one column. */
function column(at: Point, width_mm: number, height_mm: number, { lines, cautions = [] }: Said): Filled {
  const list = actions({ at, width_mm, height_mm, lines })
  let low = at[1] - list.height_mm
  if (list.rest.length > 0) return { drawing: list.drawing, rest: { lines: list.rest, cautions }, low }
  const out: Drawing[number][] = [...list.drawing]
  for (const [i, text] of cautions.entries()) {
    const from = low - (list.height_mm === 0 && i === 0 ? 0 : 4)
    const block = paragraph({ at: [at[0], from], width_mm, text, face: 'medium', size_mm: 3.4 })
    if (at[1] - from + block.height_mm > height_mm)
      return { drawing: out, rest: { lines: [], cautions: cautions.slice(i) }, low }
    out.push(...block.drawing)
    low = from - block.height_mm
  }
  return { drawing: out, rest: { lines: [] }, low }
}

const nothing = (s: Said): boolean => s.lines.length === 0 && (s.cautions ?? []).length === 0

/** Pages of words alone, as many as are needed. */
function wordPages(c: Context, said: Said): readonly Drawing[] {
  const pages: Drawing[] = []
  let rest = said
  while (!nothing(rest) && pages.length < 20) {
    const at = topLeft(c)
    const done = column(at, widthOf(c.room.drawing), at[1] - c.room.body.bottom, rest)
    pages.push(done.drawing)
    rest = done.rest
  }
  return pages
}

/** Whether a block can stand on one sheet, clear of the upright bar. */
export function fitsSheet(c: Context, block: Drawing): boolean {
  const box = bounds(block)
  if (box === null) return true
  const { body, drawing } = c.room
  const high = heightOf(body) - UNDER_HEADING_mm
  if (widthOf(box) <= widthOf(drawing) && heightOf(box) <= high) return true
  return widthOf(box) <= widthOf(body) && heightOf(box) <= high - BAR_TOP_mm
}

/** A block with its lines of action: beside it where there is room, else below, else on the next page. */
export function composed(c: Context, block: Drawing, said: Said, floor_mm = 0): readonly Drawing[] {
  const { body, drawing: clear } = c.room
  const floor = body.bottom + floor_mm
  const at = topLeft(c)
  const box = bounds(block)
  const [w, h] = box === null ? [0, 0] : [widthOf(box), heightOf(box)]
  const put = hung(block, at)
  const words: Drawing[number][] = []
  let rest = said
  const beside = body.right - at[0] - w - BETWEEN_mm
  if (box !== null && beside >= LEAST_WORDS_mm) {
    const left = at[0] + w + BETWEEN_mm
    // Beside a tall block the words may run down past the bar's top only where they stand clear of it.
    const narrow = clear.right - left
    const tall = floor_mm > 0 || (h > at[1] - floor - 30 && narrow >= LEAST_WORDS_mm)
    const reach = floor_mm >= BAR_TOP_mm ? beside : narrow
    const width = tall ? reach : beside
    const height = tall ? at[1] - floor : at[1] - (body.bottom + BAR_TOP_mm)
    const done = column([left, at[1]], width, height, rest)
    words.push(...done.drawing)
    rest = done.rest
  }
  const below = at[1] - h - BETWEEN_mm
  const room = below - floor
  if (!nothing(rest) && room > 12) {
    const done = column([at[0], below], words.length > 0 ? Math.max(w, 60) : widthOf(clear), room, rest)
    words.push(...done.drawing)
    rest = done.rest
  }
  return [[...put, ...words], ...wordPages(c, rest)]
}

/** A block at full size on as many sheets as it needs, after its words. */
export function spread(c: Context, block: Drawing, said: Said): readonly Drawing[] {
  if (fitsSheet(c, block)) return composed(c, block, said)
  const { drawing } = c.room
  const area = { ...drawing, top: drawing.top - UNDER_HEADING_mm }
  const width = widthOf(bounds(block) ?? area)
  if (2 * width + BETWEEN_mm <= widthOf(area)) return strips(c, block, said, width, area)
  const parts = tiles({ drawing: block, area, seamText: (n) => c.say('joins-part', { n: String(n) }) })
  return [...wordPages(c, said), ...parts.map((t) => tidied(t.drawing, area))]
}

/** A tall and narrow block: its parts side by side, the words beside the first ones or on a page of their own. */
function strips(c: Context, block: Drawing, said: Said, width: number, area: Rect): readonly Drawing[] {
  const own = { ...area, right: area.left + width }
  const parts = tiles({
    drawing: block,
    area: own,
    seamText: (n) => c.say('joins-part', { n: String(n) }),
  })
  const most = Math.floor((widthOf(area) + BETWEEN_mm) / (width + BETWEEN_mm))
  const pages: Drawing[] = []
  for (let i = 0; i < parts.length; i += most)
    pages.push(parts.slice(i, i + most).flatMap((p, k) => moved(tidied(p.drawing, own), [k * (width + BETWEEN_mm), 0])))
  const used = ((parts.length - 1) % most) + 1
  const left = area.left + used * (width + BETWEEN_mm)
  if (area.right - left < LEAST_WORDS_mm) return [...wordPages(c, said), ...pages]
  const done = column([left, area.top], area.right - left, heightOf(area), said)
  return [...pages.slice(0, -1), [...pages.at(-1)!, ...done.drawing], ...wordPages(c, done.rest)]
}
