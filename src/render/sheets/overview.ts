import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { dimension } from '../drawing/dimension.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, line, type Point, type Primitive } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { table } from '../paper/table.ts'
import { subheading } from '../paper/words.ts'
import { elevation, levels } from '../views/elevation.ts'
import { unrolled } from '../views/unrolled.ts'
import { heightOf, topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { levelsOf } from './marking.ts'
import { balloons, shortFindings } from './open-findings.ts'
import { fittingScale } from './scale.ts'

const ABOVE_mm = 12
const BELOW_mm = 15
const LEFT_mm = 21
const LEAST_MARKS_mm = 17
const WORDS_mm = 52

function keyRows(c: Context, layout: LayoutFacts): readonly (readonly string[])[] {
  const { plan } = c
  const s = plan.column?.sites
  const rows: (readonly [string, string] | null)[] = [
    [c.say('key-length'), c.length(layout.columnLength_m)],
    [c.say('key-round'), `${c.size(layout.circumference_m)} ${c.unit}`],
    plan.column?.stub?.angle_rad === undefined ? null : [c.say('key-angle'), c.angle(plan.column.stub.angle_rad)],
    s?.rings === undefined || s.pattern !== 'rings' ? null : [c.say('key-rings'), String(s.rings)],
    s?.perRing === undefined || s.pattern !== 'rings' ? null : [c.say('key-per-ring'), String(s.perRing)],
    layout.columns === 1 ? null : [c.say('key-columns'), String(layout.columns)],
    [c.say('key-sites'), String(layout.plants)],
    s?.pitch_m === undefined || s.pattern !== 'rings' ? null : [c.say('key-pitch'), c.length(s.pitch_m)],
    [c.say('key-lines'), String(layout.lines.length)],
    layout.lineSpacing_m === null ? null : [c.say('key-spacing'), c.length(layout.lineSpacing_m)],
    plan.reservoir?.fillVolume_m3 === undefined
      ? null
      : [c.say('key-volume'), c.shown(quantity(plan.reservoir.fillVolume_m3, 'm3'))],
    plan.riser?.neededFlow_m3_s === undefined
      ? null
      : [c.say('key-flow'), c.shown(quantity(plan.riser.neededFlow_m3_s, 'm3_s'))],
    isKnown(c.facts.build) ? [c.say('key-hands'), c.shown(quantity(c.facts.build.known.hands_s, 's'))] : null,
  ]
  return rows.flatMap((r) => (r === null ? [] : [r]))
}

/** Where things stand beside the elevation, in millimetres of paper from the floor under its middle. */
interface Placed {
  readonly ratio: number
  readonly foot_m: number
  readonly top_m: number
  readonly half: number
  readonly marksX: number
  readonly surfaceX: number
}

/** Figures of the marks between elevation and surface; of those too close to read, some are left to the marking sheet. */
function runningMarks(c: Context, layout: LayoutFacts, p: Placed): Drawing {
  const { foot_m, top_m, half, marksX, surfaceX } = p
  const up = (m: number) => m * p.ratio
  const level = (marked_m: number) => (layout.datum === 'foot' ? foot_m + marked_m : top_m - marked_m)
  let told = Number.NEGATIVE_INFINITY
  const shown = levelsOf(layout)
    .map((h) => ({ text: c.figure(h.marked_m), y: up(level(h.marked_m)) }))
    .filter(({ y }) => y >= up(foot_m) + 3.4 && y <= up(top_m))
    .sort((a, b) => a.y - b.y)
    .filter(({ y }) => {
      if (y - told < 3.6) return false
      told = y
      return true
    })
  const zero = up(level(0)) - (layout.datum === 'foot' ? 1.1 : -1.2)
  return [
    ...shown.flatMap(({ text, y }): Primitive[] => [
      line([half + 11, y], [marksX - 9, y], 'ornament'),
      lettering([marksX, y - 1.1], text, { size_mm: 3, anchor: 'end' }),
      line([marksX + 1, y], [surfaceX, y], 'ornament'),
    ]),
    lettering([marksX, zero], '0', { size_mm: 3, anchor: 'end' }),
  ]
}

/** Length, first mark and pitch left of the elevation, the round below the surface. */
function heightsAndRound(c: Context, layout: LayoutFacts, p: Placed, lid_m: number | null): Drawing {
  const { foot_m, top_m, surfaceX } = p
  const up = (m: number) => m * p.ratio
  const pitch_m =
    layout.rings > 1 && layout.perRing > 1 ? (layout.lastMark_m - layout.firstMark_m) / (layout.rings - 1) : null
  const first = foot_m + layout.firstMark_m
  const from_m = lid_m !== null && lid_m > foot_m && layout.lid_m !== null ? lid_m : foot_m
  const x = -p.half - 3
  const upright = (low_m: number, high_m: number, offset_mm: number) =>
    dimension({ from: [x, up(low_m)], to: [x, up(high_m)], offset_mm, figure: c.figure(high_m - low_m) })
  // A shorter dimension would set its figure outside, over its neighbour; the table of numbers says it then.
  const roomy = (m: number) => up(m) > 2 + lettersWidth({ text: c.figure(m), face: 'drafting', size_mm: 3.2 })
  return [
    ...upright(foot_m, top_m, 11),
    ...(roomy(first - from_m) ? upright(from_m, first, 4) : []),
    ...(pitch_m !== null && roomy(pitch_m) ? upright(first, first + pitch_m, 4) : []),
    ...dimension({
      from: [surfaceX, up(foot_m)],
      to: [surfaceX + layout.circumference_m * p.ratio, up(foot_m)],
      offset_mm: -up(foot_m) - 6,
      figure: c.size(layout.circumference_m),
    }),
  ]
}

/** Elevation, running marks and the unrolled surface on one height scale. */
function views(
  c: Context,
  layout: LayoutFacts,
): { readonly drawing: Drawing; readonly reduction: number; readonly right: number } {
  const { body } = c.room
  const templates = orNull(c.facts.templates)
  const { foot_m, top_m, lid_m } = levels({ plan: c.plan, layout })
  const figures = levelsOf(layout).map((l) =>
    lettersWidth({ text: c.figure(l.marked_m), face: 'drafting', size_mm: 3 }),
  )
  const marks_mm = Math.max(LEAST_MARKS_mm, 8 + Math.max(...figures))
  const half_m = elevation({ plan: c.plan, layout, templates, ratio: 1 }).half_m
  const room = {
    width_mm: widthOf(body) - LEFT_mm - marks_mm - WORDS_mm - 10,
    height_mm: heightOf(body) - ABOVE_mm - BELOW_mm - 4,
  }
  const { ratio, reduction } = fittingScale({
    width_m: 2 * half_m + layout.circumference_m,
    height_m: Math.max(top_m, foot_m + layout.lastMark_m + 0.05),
    room,
    display: c.display,
  })
  const e = elevation({ plan: c.plan, layout, templates, ratio })
  const x0 = body.left + LEFT_mm + half_m * ratio
  const y0 = body.bottom + BELOW_mm
  const up = (m: number) => m * ratio
  const marksX = half_m * ratio + 4 + marks_mm
  const surfaceX = marksX + 3
  const width = layout.circumference_m * ratio
  const surface = moved(unrolled({ layout, templates, ratio }), [surfaceX, up(foot_m)])
  const place: Placed = { ratio, foot_m, top_m, half: half_m * ratio, marksX, surfaceX }
  const tank_m = c.plan.reservoir?.outsideWidth_m
  const tankDim: Drawing =
    e.lid_m === null || tank_m === undefined
      ? []
      : dimension({
          from: [(-tank_m / 2) * ratio, 0],
          to: [(tank_m / 2) * ratio, 0],
          offset_mm: -6,
          figure: c.figure(tank_m),
        })
  const scale = c.say('at-scale', { n: String(reduction) })
  const captionY = Math.min(body.top - y0 - 5.4, up(Math.max(top_m, foot_m + layout.lastMark_m)) + ABOVE_mm + 6)
  const captions: Drawing = [
    ...caption([-half_m * ratio - 12, captionY], c.say('elevation'), scale),
    ...caption([surfaceX - 6, captionY], c.say('unrolled'), width > 34 ? scale : ''),
  ]
  return {
    drawing: moved(
      [
        ...e.drawing,
        ...balloons(c, e, layout, ratio),
        ...surface,
        ...runningMarks(c, layout, place),
        ...heightsAndRound(c, layout, place, lid_m),
        ...tankDim,
        ...captions,
      ],
      [x0, y0],
    ),
    reduction,
    right: x0 + surfaceX + width,
  }
}

function caption([x, y]: Point, text: string, scale: string): Drawing {
  return [
    lettering([x, y], text, { face: 'serif', size_mm: 3.5 }),
    ...(scale === ''
      ? []
      : [lettering([x + text.length * 1.72 + 2, y], scale, { face: 'italic', size_mm: 3.2, tone: 'quiet' as const })]),
  ]
}

/** First sheet: what is built, to scale, and its numbers. */
export function overviewSheet(c: Context): Drafted {
  if (!isKnown(c.facts.layout)) return c.facts.layout
  const layout = c.facts.layout.known
  const { body } = c.room
  const view = views(c, layout)
  const [, y] = topLeft(c)
  const left = Math.max(view.right + 9, body.right - WORDS_mm - 16)
  const width_mm = body.right - left
  const head = subheading({ at: [left, y + 0.5], text: c.say('key-numbers'), width_mm })
  const keys = table({
    at: [left, y - head.height_mm],
    columns: [
      { heading: '', align: 'words' },
      { heading: '', align: 'figures' },
    ],
    rows: keyRows(c, layout),
    width_mm,
    size_mm: 3.4,
  })
  const shortTop = y - head.height_mm - keys.height_mm - 9
  const short = shortFindings(
    c,
    [left, shortTop],
    Math.min(width_mm, c.room.drawing.right - left),
    shortTop - body.bottom,
  )
  const place = c.plan.place?.name === undefined ? '' : `${c.plan.place.name}. `
  const columns = layout.columns === 1 ? c.say('one-column') : c.say('columns', { n: String(layout.columns) })
  const pipe = c.plan.column?.pipe?.label ?? c.say('number-blank')
  return {
    pages: [
      {
        id: 'overview',
        title: c.plan.name ?? c.say('unnamed'),
        subtitle: c.say('overview-sub', {
          place,
          columns,
          pipe,
          sites: String(layout.plants),
          change: String(c.plan.change ?? 0),
          date: c.date,
        }),
        scale: c.say('at-scale', { n: String(view.reduction) }),
        drawing: [...view.drawing, ...head.drawing, ...keys.drawing, ...short],
      },
    ],
  }
}
