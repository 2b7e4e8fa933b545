import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { note, upArrow } from '../drawing/marks.ts'
import { contour, type Drawing, lettering, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { tiles } from '../paper/tiles.ts'
import { actions } from '../paper/words.ts'
import { holeOutline, seamOf, unrolledHoles } from '../views/unrolled.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { barLines, boxOf, paperStretchOf } from './hole.ts'
import { tidied } from './tidy.ts'

interface Window {
  readonly from_m: number
  readonly to_m: number
  readonly first: number
  readonly last: number
  readonly mark_m: number
  readonly rise_m: number | null
  /** Round the pipe from a ring to the next. */
  readonly turn_m: number
}

const AIR_m = 0.012

/** The lowest ring with its holes whole, or the whole column. */
function windowOf(c: Context, layout: LayoutFacts, t: TemplatesFacts): Window | null {
  const sites = layout.sites
  const first = sites[0]!
  if (c.wrap)
    return {
      from_m: 0,
      to_m: layout.columnLength_m,
      first: 1,
      last: sites.length,
      mark_m: first.mark_m,
      rise_m: null,
      turn_m: 0,
    }
  if (layout.perRing < 2 && layout.lineSpacing_m === null) return null
  const box = boxOf(holeOutline(t, 'on the pipe'))
  const ring = sites.filter((s) => s.ring === first.ring)
  const rise_m = layout.rings > 1 ? (layout.lastMark_m - layout.firstMark_m) / (layout.rings - 1) : null
  const above = sites.find((s) => s.ring === first.ring + 1)
  const turn_m = above === undefined ? 0 : ((above.turn_rad - first.turn_rad) / (2 * Math.PI)) * layout.circumference_m
  return {
    from_m: first.mark_m + box.low - AIR_m,
    to_m: first.mark_m + box.high + AIR_m,
    first: 1,
    last: ring.length,
    mark_m: first.mark_m,
    rise_m,
    turn_m,
  }
}

/** The sheet that goes round: holes, lines, heights, seam and tab; its lower left corner at the origin. */
function wrapDrawing(c: Context, layout: LayoutFacts, t: TemplatesFacts, w: Window): Drawing {
  const stretch = paperStretchOf(c)
  const width = layout.circumference_m * 1000 * stretch
  const height = (w.to_m - w.from_m) * 1000
  const tab = practiceLengths.rows['overlap-tab'].high_m * 1000
  const seam_m = seamOf(layout)
  const x = (turn_rad: number) =>
    (((((turn_rad / (2 * Math.PI)) * layout.circumference_m - seam_m) * 1000 * stretch) % width) + width) % width
  const step = layout.lineSpacing_m === null ? width / 2 : layout.lineSpacing_m * 1000 * stretch
  const clearX =
    layout.lines.length > layout.perRing ? x(layout.lines[1]!.turn_rad) : x(layout.lines[0]!.turn_rad) + step / 2
  const lines: Drawing = layout.lines.flatMap((l) => [
    line([x(l.turn_rad), 0], [x(l.turn_rad), height], 'centre'),
    lettering([x(l.turn_rad) + 1.2, height - 4], c.say('strip-line', { n: String(l.number) }), {
      size_mm: 2.6,
      halo: true,
    }),
  ])
  const shown = layout.sites.filter((s) => s.mark_m > w.from_m && s.mark_m < w.to_m)
  const heights = [...new Set(shown.map((s) => Math.round(s.mark_m * 1e6)))].map((n) => n / 1e6)
  const end = c.say(layout.datum).replace('the ', '')
  const level = (mark_m: number) => (layout.datum === 'foot' ? mark_m : layout.columnLength_m - mark_m)
  const levels: Drawing = heights.flatMap((m) => {
    const y = (m - w.from_m) * 1000
    return [
      line([0, y], [width, y], 'centre'),
      ...note({
        at: [clearX + 2, y + 1.4],
        lines: [c.say('wrap-level', { h: c.figure(level(m)), end })],
        size_mm: 2.6,
      }),
    ]
  })
  const numbers: Drawing = shown.map((s) =>
    lettering([x(s.turn_rad) - 1.6, (s.mark_m - w.from_m) * 1000 - 7], String(s.number), {
      size_mm: 3.6,
      anchor: 'end',
      halo: true,
    }),
  )
  const holes = moved(
    unrolledHoles({ layout, templates: t, ratio: 1000, stretch, from_m: w.from_m, to_m: w.to_m, seam_m }),
    [0, -w.from_m * 1000],
  )
  return [
    rectangle({ left: 0, right: width, bottom: 0, top: height }, 'thin', { layer: 'wrap-edge' }),
    polyline(
      [
        [width, 2],
        [width + tab, 4],
        [width + tab, height - 4],
        [width, height - 2],
      ],
      'hidden',
    ),
    ...lines,
    ...levels,
    ...holes,
    ...numbers,
    ...seamNotes(c, width, height, tab),
    ...upArrow({ at: [clearX + 10, 12], text: c.say('up'), length_mm: 11 }),
    ...note({ at: [3, 3], lines: [c.say('wrap-outside')], size_mm: 2.6 }),
  ]
}

/** What the edge and its tab say, again and again along a tall sheet, so that each part of it says it. */
function seamNotes(c: Context, width: number, height: number, tab: number): Drawing {
  const count = Math.max(1, Math.floor(height / 90))
  return Array.from({ length: count }, (_, i) => ((i + 0.5) * height) / count).flatMap((y): Drawing => {
    const set = { anchor: 'middle', turn_rad: Math.PI / 2, size_mm: 2.6 } as const
    return [
      ...note({ at: [width - 2, y], lines: [c.say('wrap-seam')], ...set }),
      ...note({ at: [width + tab / 2 + 1, y], lines: [c.say('wrap-tab')], ...set }),
    ]
  })
}

/** Whole holes and the edge, for a cutter. */
function wrapContours(layout: LayoutFacts, t: TemplatesFacts, w: Window, stretch: number): Drawing {
  const round = layout.circumference_m * 1000 * stretch
  const seam_m = seamOf(layout)
  const outline = holeOutline(t, 'on paper')
  const holes = layout.sites
    .filter((s) => s.mark_m > w.from_m && s.mark_m < w.to_m)
    .map((s) => {
      const x =
        (((((s.turn_rad / (2 * Math.PI)) * layout.circumference_m - seam_m) * 1000 * stretch) % round) + round) % round
      return contour(
        outline.map(([u, v]): Point => [x + u * 1000, (s.mark_m - w.from_m + v) * 1000]),
        'cut',
        { layer: 'wrap' },
      )
    })
  return [
    rectangle({ left: 0, right: round, bottom: 0, top: (w.to_m - w.from_m) * 1000 }, 'visible', { layer: 'wrap-edge' }),
    ...holes,
  ]
}

/** The unrolled column at full size: its lowest ring, or all of it where that was asked for. */
export function wrapSheet(c: Context): Drafted {
  const { layout: l, templates } = c.facts
  if (!isKnown(l)) return l
  if (!isKnown(templates)) return templates
  const [layout, t] = [l.known, templates.known]
  const w = windowOf(c, layout, t)
  if (w === null) return null
  const drawing = wrapDrawing(c, layout, t, w)
  const { drawing: room, body } = c.room
  const [x, y] = topLeft(c)
  const high = Math.min((w.to_m - w.from_m) * 1000 + 0.1, y - body.bottom)
  const area = { left: x, right: room.right, bottom: y - high, top: y }
  const parts = tiles({ drawing, area, seamText: (n) => c.say('joins-part', { n: String(n) }) })
  const gap = 9
  const perPage = Math.max(1, Math.floor((y - body.bottom + gap) / (high + gap)))
  const pages: Drawing[] = []
  for (let i = 0; i < parts.length; i += perPage)
    pages.push(
      parts.slice(i, i + perPage).flatMap((p, k) => {
        const label = note({ at: [x, y + 1.2], lines: [c.say('part-of', { n: String(i + k + 1) })], size_mm: 2.6 })
        return moved([...tidied(p.drawing, area), ...(parts.length > 1 ? label : [])], [0, -k * (high + gap)])
      }),
    )
  const tolerance = c.within(practiceLengths.rows['arc-closure'].high_m)
  const lines = [
    ...barLines(c),
    c.say('act-paper-out'),
    ...(parts.length > 1 ? [c.say('act-wrap-join')] : []),
    c.say('act-wrap-lay', { h: c.length(layout.datum === 'foot' ? w.mark_m : layout.columnLength_m - w.mark_m) }),
    c.say('act-wrap-close', { tolerance }),
    ...(w.rise_m === null
      ? []
      : [
          w.turn_m < 1e-6
            ? c.say('act-wrap-next', { rise: c.length(w.rise_m) })
            : c.say('act-wrap-turn', { rise: c.length(w.rise_m), turn: c.length(w.turn_m) }),
        ]),
  ]
  const used = parts.length - (pages.length - 1) * perPage
  const low = y - used * (high + gap)
  const words = actions({ at: [x, low], width_mm: widthOf(room), lines, height_mm: Math.max(0, low - body.bottom) })
  if (words.rest.length === 0) pages[pages.length - 1] = [...pages.at(-1)!, ...words.drawing]
  else pages.unshift(actions({ at: [x, y], width_mm: widthOf(room), lines }).drawing)
  const sizes = {
    w: c.length(layout.circumference_m),
    h: c.length(w.to_m - w.from_m),
    first: String(w.first),
    last: String(w.last),
    m: String(pages.length),
    pieces: c.say('strip-pieces', { n: String(parts.length) }),
  }
  const key = c.wrap ? 'wrap-sub-all' : pages.length === 1 ? 'wrap-sub-one' : 'wrap-sub-part'
  const contours = wrapContours(layout, t, w, paperStretchOf(c))
  return {
    pages: pages.map(
      (page, i): Draft => ({
        id: 'wrap',
        title: c.say(c.wrap ? 'wrap-title' : 'wrap-title-part'),
        subtitle: c.say(key, { ...sizes, n: String(i + 1) }),
        scale: c.say('full-size'),
        drawing: page,
        ...(i === 0 ? { contours } : {}),
      }),
    ),
  }
}
