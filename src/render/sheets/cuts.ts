import type { MaterialCuts, Pattern, Stick } from '../../disciplines/cuts/index.ts'
import { hatch } from '../drawing/hatch.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, line, type Point, type Primitive, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { table } from '../paper/table.ts'
import { paragraph, subheading } from '../paper/words.ts'
import type { SheetKey } from '../words/en/sheets.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'

const BAND_mm = 9

/** A block that stands on a page as a whole. */
interface Piece {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
}

export const materialName = (c: Context, m: MaterialCuts): string =>
  c
    .say('material', {
      of: c.say(`of-${m.of}` as SheetKey),
      label: m.label ?? (m.bore_m === null ? '' : `Ø${c.length(m.bore_m)}`),
    })
    .trim()

const pieceName = (c: Context, id: string): string => {
  const key = `piece-${id.replace(/[-\d/].*$/, '')}` as SheetKey
  return key in c.sentences ? c.say(key) : id
}

/** One stick to scale along its length: pieces, slanted and square cuts, what is left. */
function stickBar(c: Context, stick: Stick, width: number): Drawing {
  const k = width / stick.length_m
  const out: Primitive[] = [rectangle({ left: 0, right: width, bottom: 0, top: BAND_mm }, 'visible')]
  const left = width - stick.leftover_m * k
  if (stick.leftover_m > 0.002)
    out.push(
      ...hatch({
        rings: [
          [
            [left, 0],
            [width, 0],
            [width, BAND_mm],
            [left, BAND_mm],
          ],
        ],
        pitch_mm: 2.2,
      }),
    )
  for (const m of stick.marks) out.push(line([m.bottom_m * k, 0], [m.top_m * k, BAND_mm], 'cut'))
  for (const p of stick.pieces) {
    const middle = ((p.from_m + p.to_m) / 2) * k
    const room = (p.to_m - p.from_m) * k - 1
    const full = `${pieceName(c, p.id)} ${c.figure(p.to_m - p.from_m)}`
    const texts = [full, c.figure(p.to_m - p.from_m), p.turned ? 't' : '']
    const text = texts.find((t) => lettersWidth({ text: t, face: 'drafting', size_mm: 2.6 }) < room) ?? ''
    if (text !== '')
      out.push(lettering([middle, BAND_mm / 2 - 0.9], text, { size_mm: 2.6, anchor: 'middle', halo: true }))
  }
  if (stick.leftover_m * k > 16)
    out.push(
      lettering([(left + width) / 2, BAND_mm / 2 - 0.9], c.say('left-over', { length: c.figure(stick.leftover_m) }), {
        size_mm: 2.6,
        anchor: 'middle',
        halo: true,
      }),
    )
  return out
}

/** Running marks of the cuts: on top and beneath, in columns so that long sticks stay on the page. */
function marksTable(c: Context, stick: Stick, width: number): Piece {
  const rows = stick.marks.map((m, i) => {
    const square = Math.abs(m.top_m - m.bottom_m) < 1e-6
    return [String(i + 1), c.figure(m.top_m), square ? '' : c.figure(m.bottom_m)]
  })
  const blocks = rows.length > 36 ? 4 : rows.length > 14 ? 3 : rows.length > 5 ? 2 : 1
  const each = Math.ceil(rows.length / blocks)
  const slanted = rows.some((r) => r[2] !== '')
  const columns = [
    { heading: c.say('col-cut'), align: 'figures' as const },
    { heading: c.say('col-top'), align: 'figures' as const },
    ...(slanted ? [{ heading: c.say('col-beneath'), align: 'figures' as const }] : []),
  ]
  const chunk = (b: number) => rows.slice(b * each, (b + 1) * each).map((r) => (slanted ? r : r.slice(0, 2)))
  const set = (at: Point) =>
    Array.from({ length: blocks }, (_, b) =>
      table({
        at: [at[0] + (b * width) / blocks, at[1]],
        columns,
        rows: chunk(b),
        width_mm: width / blocks - 5,
        size_mm: 3.1,
        boxed: true,
      }),
    )
  return {
    height_mm: Math.max(...set([0, 0]).map((t) => t.height_mm)),
    draw: (at) => set(at).flatMap((t) => t.drawing),
  }
}

function patternPiece(c: Context, p: Pattern, width: number): Piece {
  const kinds = [...new Set(p.stick.pieces.map((q) => `${pieceName(c, q.id)} ${c.figure(q.to_m - q.from_m)}`))]
  const counted = kinds.map(
    (k) =>
      `${p.stick.pieces.filter((q) => `${pieceName(c, q.id)} ${c.figure(q.to_m - q.from_m)}` === k).length} × ${k}`,
  )
  const head = `${c.say('stick-times', { n: String(p.times_count), length: c.stock(p.stick.length_m) })}: ${counted.join(', ')}`
  const marks = marksTable(c, p.stick, width)
  const top = 5 + BAND_mm + 4
  return {
    height_mm: top + marks.height_mm + 6,
    draw: ([x, y]) => [
      lettering([x, y - 3.2], head, { face: 'medium', size_mm: 3.4 }),
      ...moved(stickBar(c, p.stick, width), [x, y - 5 - BAND_mm]),
      ...marks.draw([x, y - top]),
    ],
  }
}

const textPiece = (text: string, width: number, face: 'serif' | 'italic' = 'serif'): Piece => ({
  height_mm: paragraph({ at: [0, 0], width_mm: width, text, face }).height_mm + 3,
  draw: (at) => paragraph({ at, width_mm: width, text, face }).drawing,
})

function headPiece(c: Context, m: MaterialCuts, width: number): Piece {
  const text = materialName(c, m)
  return { height_mm: 8, draw: (at) => subheading({ at, text, width_mm: width }).drawing }
}

function materialPieces(c: Context, m: MaterialCuts, width: number): readonly Piece[] {
  if (m.pieces.length === 0) return []
  const plan = m.plan
  if (plan === null) {
    const list = m.pieces.map((p) => `${pieceName(c, p.id)} ${p.count} × ${c.length(p.length_m)}`).join(', ')
    const need = m.needs[0]
    const text =
      m.of === 'hose' || need === undefined
        ? c.say('cuts-by-metre', { material: materialName(c, m), list })
        : c.say('cuts-need', { material: materialName(c, m), what: c.words.places[need] ?? need, unit: c.unit })
    return [textPiece(text, width)]
  }
  const short = plan.issues.reduce((sum, i) => sum + ('count' in i ? i.count : 1), 0)
  return [
    headPiece(c, m, width),
    ...(short > 0 ? [textPiece(c.say('cuts-short', { material: materialName(c, m), n: String(short) }), width)] : []),
    ...plan.patterns.map((p) => patternPiece(c, p, width)),
  ]
}

/** Blocks one under the other, on as many pages as they take. */
export function flowed(c: Context, pieces: readonly Piece[]): readonly Drawing[] {
  const [x, y] = topLeft(c)
  const pages: Primitive[][] = [[]]
  let low = y
  for (const [i, p] of pieces.entries()) {
    const next = pieces[i + 1]
    // A heading does not stay behind alone.
    const wanted = p.height_mm + (p.height_mm <= 8 && next ? next.height_mm : 0)
    if (low - Math.min(wanted, y - c.room.body.bottom) < c.room.body.bottom && low < y) {
      pages.push([])
      low = y
    }
    pages.at(-1)!.push(...p.draw([x, low]))
    low -= p.height_mm
  }
  return pages
}

/** How every stick is sawn. */
export function cutsSheet(c: Context): Drafted {
  const { cuts } = c.facts
  const width = widthOf(c.room.drawing)
  const pieces = cuts.materials.flatMap((m) => materialPieces(c, m, width))
  if (pieces.length === 0) return { because: 'why-no-pieces' }
  const planned = cuts.materials.filter((m) => m.plan !== null && m.plan.sticks.length > 0)
  const order =
    planned.length > 0 ? [textPiece(`${c.say('cuts-order')} ${c.say('cuts-turned')}.`, width, 'italic')] : []
  const sticks = planned
    .map((m) => `${c.say(`of-${m.of}` as SheetKey)}: ${m.plan!.used.map((u) => u.count).reduce((a, b) => a + b, 0)}`)
    .join(', ')
  const trim = c.say('cuts-sub-trim', { trim: c.length(cuts.trim_m) })
  const subtitle = c.say('cuts-sub', {
    what: c.plan.name ?? c.say('unnamed'),
    sticks: sticks === '' ? c.say('no-scale') : sticks,
    kerf: cuts.kerf === null ? `${c.say('number-blank')} ${c.unit}` : c.length(cuts.kerf.kerf_m),
    trim,
  })
  return {
    pages: flowed(c, [...order, ...pieces]).map(
      (drawing, i): Draft => ({
        id: 'cuts',
        title: i === 0 ? c.say('cuts-title') : c.say('continued', { title: c.say('cuts-title') }),
        subtitle,
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
