import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { dimension } from '../drawing/dimension.ts'
import {
  type Drawing,
  lettering,
  line,
  type Point,
  type Primitive,
  polyline,
  rectangle,
} from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { actions } from '../paper/words.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines, paperFigure, paperStretchOf } from './hole.ts'
import { levelsOf } from './marking.ts'

const STRIP_mm = 17
const POLE_mm = 19
const GAP_mm = 8.5

const letter = (i: number): string =>
  i < 26 ? String.fromCharCode(65 + i) : `${letter(Math.floor(i / 26) - 1)}${letter(i % 26)}`

const tab_mm = () => practiceLengths.rows['overlap-tab'].high_m * 1000

/** One piece of the strip, its left edge at the origin. */
function stripPiece(
  c: Context,
  marks: readonly { x: number; text: string }[],
  length: number,
  i: number,
  last: boolean,
): Drawing {
  const tab = tab_mm()
  const out: Primitive[] = [rectangle({ left: 0, right: length, bottom: 0, top: STRIP_mm }, 'cut', { layer: 'strip' })]
  // Lines that stand close take turns on two rows, and only their numbers.
  let told = Number.NEGATIVE_INFINITY
  let row = 0
  marks.forEach((m, k) => {
    out.push(line([m.x, 0], [m.x, STRIP_mm], 'visible', { layer: 'strip-mark' }))
    const after = (marks[k + 1]?.x ?? length + 20) - m.x
    const alone = m.x - told >= 18 && after >= 18
    const text = alone ? m.text : m.text.replace(/^\D+/, '')
    const flip = m.x > length - (alone ? 16 : 6)
    // A number that is turned back at the end of the piece reaches toward the one before it.
    row = m.x - told < (flip ? 36 : 6) ? 1 - row : 0
    told = m.x
    const at: Point = [m.x + (flip ? -1.6 : 1.6), STRIP_mm - 4.4 - 4 * row]
    out.push(lettering(at, text, { size_mm: alone ? 2.9 : 2.4, anchor: flip ? 'end' : 'start', halo: true }))
  })
  out.push(
    lettering([length * 0.27, 2.6], letter(i), {
      size_mm: 4,
      face: 'drafting',
      anchor: 'middle',
      tone: 'quiet',
      halo: true,
    }),
  )
  const tabText = last ? c.say('strip-tab', { a: letter(0) }) : c.say('strip-tab', { a: letter(i + 1) })
  out.push(
    polyline(
      [
        [length, 1.2],
        [length + tab, 2.4],
        [length + tab, STRIP_mm - 2.4],
        [length, STRIP_mm - 1.2],
      ],
      'hidden',
    ),
  )
  out.push(
    lettering([length + tab / 2 + 1, STRIP_mm / 2], tabText, { size_mm: 2.4, anchor: 'middle', turn_rad: Math.PI / 2 }),
  )
  return out
}

export interface StripPlan {
  readonly length: number
  readonly pieces: readonly { readonly from: number; readonly to: number }[]
}

/** The strip in equal pieces that fit the paper. */
export function stripPlan(c: Context, layout: LayoutFacts): StripPlan {
  const length = layout.circumference_m * 1000 * paperStretchOf(c)
  const most = widthOf(c.room.drawing) - tab_mm()
  const spacing = layout.lineSpacing_m === null ? null : layout.lineSpacing_m * 1000 * paperStretchOf(c)
  // Whole lines to a piece where they stand evenly, so that pieces meet on a line.
  const whole = spacing === null || spacing > most ? null : spacing * Math.floor(most / spacing)
  const count = Math.ceil(length / (whole ?? most) - 1e-9)
  const each = whole === null || spacing === null ? length / count : Math.ceil(layout.lines.length / count) * spacing
  return {
    length,
    pieces: Array.from({ length: count }, (_, i) => ({ from: i * each, to: Math.min(length, (i + 1) * each) })).filter(
      (p) => p.to - p.from > 1e-6,
    ),
  }
}

/** Line spacing at full size: wraps round the pipe's end and closes on itself. */
export function stripSheet(c: Context): Drafted {
  if (!isKnown(c.facts.layout)) return c.facts.layout
  const layout = c.facts.layout.known
  if (layout.lines.length < 2) return null
  const plan = stripPlan(c, layout)
  const marks = layout.lines.map((l) => ({
    at: (l.turn_rad / (2 * Math.PI)) * plan.length,
    text: c.say('strip-line', { n: String(l.number) }),
  }))
  const [x, y] = topLeft(c)
  const out: Primitive[] = []
  plan.pieces.forEach((p, i) => {
    const last = i === plan.pieces.length - 1
    const own = marks
      .filter((m) => m.at >= p.from - 1e-6 && m.at < p.to - 1e-6)
      .map((m) => ({ x: m.at - p.from, text: m.text }))
    const top = y - 2 - i * (STRIP_mm + GAP_mm)
    const piece = stripPiece(c, own, p.to - p.from, i, last)
    out.push(...moved(piece, [x, top - STRIP_mm]))
    out.push(
      ...moved(
        dimension({ from: [0, 0], to: [p.to - p.from, 0], offset_mm: -5.4, figure: c.size((p.to - p.from) / 1000) }),
        [x, top - STRIP_mm],
      ),
    )
  })
  const low = y - 2 - plan.pieces.length * (STRIP_mm + GAP_mm) - 4
  const tolerance = c.within(practiceLengths.rows['arc-closure'].high_m)
  const words = actions({
    at: [x, low],
    width_mm: widthOf(c.room.drawing) - 20,
    lines: [
      ...barLines(c),
      c.say('act-strip-cut'),
      c.say('act-strip-wrap', { tolerance }),
      c.say('act-strip-else'),
      c.say('act-strip-marks'),
    ],
  })
  const paper_m = isKnown(c.facts.templates)
    ? c.facts.templates.known.joint.paper_m
    : (c.plan.tools?.paperThickness_m ?? practiceLengths.rows['paper-thickness'].high_m)
  const pieces =
    plan.pieces.length === 1 ? c.say('strip-one-piece') : c.say('strip-pieces', { n: String(plan.pieces.length) })
  return {
    pages: [
      {
        id: 'strip',
        title: c.say('strip-title'),
        subtitle: c.say('strip-sub', {
          c: `${c.size(layout.circumference_m)} ${c.unit}`,
          pieces,
          paper: paperFigure(c, paper_m),
          strip: `${c.size(plan.length / 1000)} ${c.unit}`,
        }),
        scale: c.say('full-size'),
        drawing: [...out, ...words.drawing],
      },
    ],
  }
}

interface PoleMark {
  readonly at: number
  readonly text: string
  readonly lines: string
}

/** One piece of the pole, its foot at the origin. */
function polePiece(
  c: Context,
  marks: readonly PoleMark[],
  low: number,
  height: number,
  i: number,
  first: boolean,
  end: string,
): Drawing {
  const tab = tab_mm()
  const out: Primitive[] = [rectangle({ left: 0, right: POLE_mm, bottom: 0, top: height }, 'cut')]
  for (const m of marks) {
    out.push(line([0, m.at], [POLE_mm, m.at], 'visible'))
    const above = m.at < height - 9
    out.push(lettering([1.4, m.at + (above ? 1.3 : -4)], m.text, { size_mm: 3.2 }))
    if (m.lines.length <= 9)
      out.push(lettering([1.4, m.at + (above ? -3.7 : -8)], m.lines, { size_mm: 2.4, tone: 'quiet' }))
  }
  const inch = c.display.lengths === 'in'
  const tick = inch ? 25.4 : 10
  for (let v = Math.ceil((low + 0.01) / tick) * tick; v < low + height - 0.5; v += tick) {
    const long = Math.round(v / tick) % (inch ? 4 : 10) === 0
    const clash = marks.some((m) => v - low - m.at < 12 && m.at - (v - low) < 12)
    out.push(line([POLE_mm - (long ? 4 : 1.8), v - low], [POLE_mm, v - low], 'thin'))
    if (long && !clash && v - low > 4)
      out.push(
        lettering([POLE_mm - 4.6, v - low - 0.9], c.figure(v / 1000), { size_mm: 2.4, anchor: 'end', tone: 'quiet' }),
      )
  }
  // The letter stands where no mark does; where they leave no room, above the piece.
  const places = Array.from({ length: 24 }, (_, n) => (0.46 + 0.04 * n) % 1).map((share) => share * height)
  const clear = (v: number) => v > 12 && v < height - 6 && marks.every((m) => m.at - v > 10 || v - m.at > 6)
  const free = places.find(clear)
  out.push(
    lettering(free === undefined ? [0, height + 1] : [2, free], letter(i), {
      size_mm: free === undefined ? 2.8 : 4,
      tone: 'quiet',
    }),
  )
  if (first)
    out.push(lettering([POLE_mm - 6, 3], c.say('pole-start', { end }), { size_mm: 2.4, turn_rad: Math.PI / 2 }))
  else
    out.push(
      polyline(
        [
          [1.2, 0],
          [2.4, -tab + 1],
          [POLE_mm - 2.4, -tab + 1],
          [POLE_mm - 1.2, 0],
        ],
        'hidden',
      ),
      lettering([POLE_mm / 2, -tab / 2 - 0.6], c.say('strip-tab', { a: letter(i - 1) }), {
        size_mm: 2.4,
        anchor: 'middle',
      }),
    )
  return out
}

/** More pieces than this are more error than a tape makes. */
const POLE_PIECES = 14

/** Heights at full size, piece by piece; none where a tape does better. */
export function poleSheet(c: Context): Drafted {
  if (!isKnown(c.facts.layout)) return c.facts.layout
  const layout = c.facts.layout.known
  const levels = levelsOf(layout)
  const length = Math.max(...levels.map((l) => l.marked_m)) * 1000 + 12
  const [x, y] = topLeft(c)
  const tall = y - c.room.body.bottom - tab_mm() - 4
  const each = Math.floor(tall / 10) * 10
  const count = Math.ceil(length / each)
  if (count > POLE_PIECES) return null
  const step = POLE_mm + 4
  const across = Math.floor((widthOf(c.room.drawing) - 42 + 4) / step)
  const end = c.say(layout.datum).replace('the ', '')
  const marks = levels.map(
    (l): PoleMark => ({
      at: l.marked_m * 1000,
      text: c.figure(l.marked_m),
      lines: [...new Set(l.sites.map((s) => s.line))].sort((a, b) => a - b).join(' '),
    }),
  )
  const pages: Drawing[] = []
  for (let from = 0; from < count; from += across) {
    const out: Primitive[] = []
    for (let i = from; i < Math.min(count, from + across); i++) {
      const low = i * each
      const high = Math.min(length, low + each)
      const own = marks
        .filter((m) => m.at >= low && (m.at < high || i === count - 1))
        .map((m) => ({ ...m, at: m.at - low }))
      const piece = polePiece(c, own, low, high - low, i, i === 0, end)
      out.push(...moved(piece, [x + (i - from) * step, c.room.body.bottom + tab_mm() + 1]))
    }
    if (from === 0) {
      const left = x + across * step + 2
      const high_m = Math.max(...levels.map((l) => l.marked_m))
      const slots = { height: c.length(high_m), tolerance: c.within(practiceLengths.rows['mark-height'].high_m), end }
      const lines = [
        ...barLines(c),
        c.say('act-pole-cut'),
        c.say('act-pole-check', slots),
        c.say('act-pole-use', slots),
      ]
      out.push(...actions({ at: [left, y], width_mm: c.room.body.right - left, lines }).drawing)
    }
    pages.push(out)
  }
  const high_m = Math.max(...levels.map((l) => l.marked_m))
  return {
    pages: pages.map((drawing, i) => ({
      id: 'pole' as const,
      title: i === 0 ? c.say('pole-title') : c.say('continued', { title: c.say('pole-title') }),
      subtitle: c.say('pole-sub', { last: letter(count - 1), end, height: c.length(high_m) }),
      scale: c.say('full-size'),
      drawing,
    })),
  }
}
