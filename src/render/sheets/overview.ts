import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { Finding } from '../../findings/finding.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { dimension } from '../drawing/dimension.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { balloon } from '../drawing/marks.ts'
import { type Drawing, lettering, line, type Point, type Primitive } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { table } from '../paper/table.ts'
import { paragraph, subheading } from '../paper/words.ts'
import { elevation, levels } from '../views/elevation.ts'
import { unrolled } from '../views/unrolled.ts'
import { findingText } from '../words/sentences.ts'
import { heightOf, topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { levelsOf } from './marking.ts'
import { fittingScale } from './scale.ts'

const ABOVE_mm = 12
const BELOW_mm = 15
const LEFT_mm = 21
const LEAST_MARKS_mm = 17
const WORDS_mm = 52

/** What is wrong first, then what is to be watched; what cannot be judged yet is not on paper. */
export function openFindings(c: Context): readonly Finding[] {
  return (['fail', 'watch'] as const).flatMap((v) =>
    c.findings.filter((f) => f.verdict === v && c.words.findings[f.id] !== undefined),
  )
}

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
  const heights = levelsOf(layout)
  const level = (marked_m: number) => (layout.datum === 'foot' ? foot_m + marked_m : top_m - marked_m)
  // Of marks that stand closer than their figures are high, some are left to the marking sheet.
  let told = Number.NEGATIVE_INFINITY
  const shown = heights
    .map((h) => ({ text: c.figure(h.marked_m), y: up(level(h.marked_m)) }))
    .filter(({ y }) => y >= up(foot_m) + 3.4 && y <= up(top_m))
    .sort((a, b) => a.y - b.y)
    .filter(({ y }) => {
      if (y - told < 3.6) return false
      told = y
      return true
    })
  const marks: Primitive[] = shown.flatMap(({ text, y }): Primitive[] => [
    line([half_m * ratio + 11, y], [marksX - 9, y], 'ornament'),
    lettering([marksX, y - 1.1], text, { size_mm: 3, anchor: 'end' }),
    line([marksX + 1, y], [surfaceX, y], 'ornament'),
  ])
  const ends: Primitive[] = [
    lettering([marksX, up(level(0)) - (layout.datum === 'foot' ? 1.1 : -1.2)], '0', { size_mm: 3, anchor: 'end' }),
  ]
  const pitch_m =
    layout.rings > 1 && layout.perRing > 1 ? (layout.lastMark_m - layout.firstMark_m) / (layout.rings - 1) : null
  const left = -half_m * ratio
  const first = foot_m + layout.firstMark_m
  const from_m = lid_m !== null && lid_m > foot_m && layout.lid_m !== null ? lid_m : foot_m
  // A shorter dimension would set its figure outside, over its neighbour; the table of numbers says it then.
  const roomy = (m: number) => up(m) > 2 + lettersWidth({ text: c.figure(m), face: 'drafting', size_mm: 3.2 })
  const dims: Drawing = [
    ...dimension({
      from: [left - 3, up(foot_m)],
      to: [left - 3, up(top_m)],
      offset_mm: 11,
      figure: c.figure(layout.columnLength_m),
    }),
    ...(roomy(first - from_m)
      ? dimension({
          from: [left - 3, up(from_m)],
          to: [left - 3, up(first)],
          offset_mm: 4,
          figure: c.figure(first - from_m),
        })
      : []),
    ...(pitch_m === null || !roomy(pitch_m)
      ? []
      : dimension({
          from: [left - 3, up(first)],
          to: [left - 3, up(first + pitch_m)],
          offset_mm: 4,
          figure: c.figure(pitch_m),
        })),
    ...dimension({
      from: [surfaceX, up(foot_m)],
      to: [surfaceX + width, up(foot_m)],
      offset_mm: -up(foot_m) - 6,
      figure: c.size(layout.circumference_m),
    }),
  ]
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
    ...caption([left - 12, captionY], c.say('elevation'), scale),
    ...caption([surfaceX - 6, captionY], c.say('unrolled'), width > 34 ? scale : ''),
  ]
  return {
    drawing: moved(
      [...e.drawing, ...balloons(c, e, layout, ratio), ...surface, ...marks, ...ends, ...dims, ...tankDim, ...captions],
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

/** Balloons with the sentences of what fails or is to be watched, and how many found no room. */
export function findingList(
  c: Context,
  at: Point,
  width_mm: number,
  height_mm: number,
): { readonly drawing: Drawing; readonly height_mm: number } {
  const open = openFindings(c)
  const head = subheading({ at, text: c.say('findings-title'), width_mm })
  if (open.length === 0) {
    const none = paragraph({ at: [at[0], at[1] - head.height_mm], width_mm, text: c.say('findings-none') })
    return { drawing: [...head.drawing, ...none.drawing], height_mm: head.height_mm + none.height_mm }
  }
  const out: Primitive[] = [...head.drawing]
  let gone = head.height_mm + 1
  for (const [i, f] of open.entries()) {
    const { sentence } = findingText(f, c.words, c.display)
    const block = paragraph({ at: [at[0] + 8, at[1] - gone], width_mm: width_mm - 8, text: sentence, size_mm: 3.4 })
    const last = i === open.length - 1
    if (gone + block.height_mm > height_mm - (last ? 0 : 6)) {
      const more = paragraph({
        at: [at[0] + 8, at[1] - gone],
        width_mm: width_mm - 8,
        text: c.say('findings-more', { n: String(open.length - i) }),
        size_mm: 3.2,
        face: 'italic',
      })
      return { drawing: [...out, ...more.drawing], height_mm: gone + more.height_mm }
    }
    out.push(
      ...balloon({ centre: [at[0] + 2.6, at[1] - gone - 2.1], text: String(i + 1), solid: f.verdict === 'fail' }),
      ...block.drawing,
    )
    gone += block.height_mm + 2
  }
  return { drawing: out, height_mm: gone }
}

/** One line for each finding that is open, with the number that its balloon carries on the drawing. */
function shortFindings(c: Context, at: Point, width_mm: number, height_mm: number): Drawing {
  const open = openFindings(c)
  if (open.length === 0 || height_mm < 20) return []
  const head = subheading({ at, text: c.say('findings-title'), width_mm })
  const out: Primitive[] = [...head.drawing]
  let gone = head.height_mm + 1
  let told = 0
  for (const [i, f] of open.entries()) {
    if (i >= MOST_BALLOONS) break
    const text = findingText(f, c.words, c.display)
    const block = paragraph({
      at: [at[0] + 7.4, at[1] - gone],
      width_mm: width_mm - 7.4,
      text: `${text.short}: ${text.measured}`,
      size_mm: 3.2,
    })
    if (gone + block.height_mm > height_mm - 6) break
    told = i + 1
    out.push(
      ...balloon({
        centre: [at[0] + 2.4, at[1] - gone - 1.9],
        text: String(i + 1),
        solid: f.verdict === 'fail',
        size_mm: 2.6,
      }),
      ...block.drawing,
    )
    gone += block.height_mm + 1.6
  }
  if (told < open.length) {
    const text = c.say('findings-next', { n: String(open.length - told) })
    const at2: Point = [at[0] + 7.4, at[1] - gone]
    out.push(...paragraph({ at: at2, width_mm: width_mm - 7.4, text, size_mm: 3.2, face: 'italic' }).drawing)
  }
  return out
}

/** Where on the elevation a finding belongs, as a share of the way to the right and a height above the floor. */
function spotOf(
  f: Finding,
  e: { readonly foot_m: number; readonly top_m: number; readonly lid_m: number | null; readonly radius_m: number },
  last_m: number,
): Point {
  const at = f.at
  if (/^distributor|^riser\/outlet/.test(at)) return [0, e.top_m - 0.02]
  if (/^(reservoir|drain|water)/.test(at)) return [0.7 * e.radius_m, e.foot_m + 0.5 * (e.lid_m ?? 0.1)]
  if (/^(pump|riser)/.test(at)) return [-0.9 * e.radius_m, e.foot_m + 0.2 * (e.lid_m ?? 0.2)]
  if (/^column\/(stub|cup|pocket|sites)/.test(at)) return [0, e.foot_m + last_m - 0.02]
  if (/^(place|column\/base)/.test(at)) return [e.radius_m, e.top_m - 0.05]
  return [e.radius_m, e.foot_m + 0.5 * (e.top_m - e.foot_m)]
}

/** Balloons to the right of the elevation, spread so that none covers another, each with a leader to its place. */
function balloons(
  c: Context,
  e: Parameters<typeof spotOf>[1] & { readonly half_m: number },
  layout: LayoutFacts,
  ratio: number,
): Drawing {
  const x = e.half_m * ratio + 7
  const wanted = openFindings(c)
    .slice(0, MOST_BALLOONS)
    .map((f, i) => ({ f, number: i + 1, spot: spotOf(f, e, layout.lastMark_m) }))
    .sort((a, b) => a.spot[1] - b.spot[1])
  // Upwards each stands clear of the one below; then the highest comes down to the column's top and pushes back.
  const ys: number[] = []
  for (const w of wanted)
    ys.push(Math.max((ys.at(-1) ?? Number.NEGATIVE_INFINITY) + BALLOON_STEP_mm, w.spot[1] * ratio + 3))
  let cap = e.top_m * ratio
  for (let i = ys.length - 1; i >= 0; i--) {
    ys[i] = Math.min(ys[i]!, cap)
    cap = ys[i]! - BALLOON_STEP_mm
  }
  return wanted.flatMap(({ f, number, spot }, i) =>
    balloon({
      centre: [x, ys[i]!],
      to: [spot[0] * ratio, spot[1] * ratio],
      text: String(number),
      solid: f.verdict === 'fail',
      size_mm: 2.6,
    }),
  )
}

const BALLOON_STEP_mm = 6
/** More leaders than this hide the drawing. */
const MOST_BALLOONS = 9

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
