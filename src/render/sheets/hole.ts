import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { thousandths } from '../display.ts'
import { dimension } from '../drawing/dimension.ts'
import { leader, note, upArrow } from '../drawing/marks.ts'
import { circle, contour, type Drawing, line, type Point, rectangle } from '../drawing/primitives.ts'
import { composed, fitsSheet, spread } from './compose.ts'
import type { Context, Drafted } from './context.ts'

const AIR_mm = { side: 31, high: 18, low: 18 } as const

export const inMillimetres = (points: readonly { readonly x_m: number; readonly y_m: number }[]): readonly Point[] =>
  points.map(({ x_m, y_m }): Point => [x_m * 1000, y_m * 1000])

export const paperFigure = (c: Context, paper_m: number): string =>
  c.display.lengths === 'in'
    ? `${thousandths(paper_m, c.display.decimal)} ${c.unit}`
    : `${String(Number((paper_m * 1000).toFixed(2))).replace('.', c.display.decimal)} ${c.unit}`

interface Box {
  readonly left: number
  readonly right: number
  readonly low: number
  readonly high: number
}

export function boxOf(points: readonly Point[]): Box {
  const xs = points.map((p) => p[0])
  const ys = points.map((p) => p[1])
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) }
}

/** The point of an outline that is nearest to a direction from its middle. */
const toward = (points: readonly Point[], [u, v]: Point): Point =>
  points.reduce((best, p) => (p[0] * u + p[1] * v > best[0] * u + best[1] * v ? p : best))

/** Frame of the sheet that is cut out, its ticks on the neighbouring lines where they fall on it. */
export function holeFrame(c: Context, box: Box): { readonly half: number; readonly spacing: number | null } {
  const { layout } = c.facts
  const spacing_m = isKnown(layout) ? layout.known.lineSpacing_m : null
  const least = Math.max(-box.left, box.right) + AIR_mm.side
  const tight = least - 4
  const spacing = spacing_m === null ? null : spacing_m * 1000 * paperStretchOf(c)
  if (spacing === null || (isKnown(layout) && layout.known.lines.length < 2)) return { half: least, spacing: null }
  if (spacing >= tight && spacing <= 83) return { half: spacing, spacing }
  return { half: least, spacing: spacing < least ? spacing : null }
}

/** How much wider a thing is on the paper than on the pipe. */
export function paperStretchOf(c: Context): number {
  const { layout, templates } = c.facts
  const paper_m = c.plan.tools?.paperThickness_m ?? practiceLengths.rows['paper-thickness'].high_m
  if (isKnown(templates)) return 1 + templates.known.joint.paper_m / (2 * templates.known.joint.stub.columnRadius_m)
  if (isKnown(layout)) return 1 + (Math.PI * paper_m) / layout.known.circumference_m
  return 1
}

/** Frame, cross, ticks and arrow that every template of a site has, about its mark. */
export function siteFrame(c: Context, box: Box, starter: boolean): Drawing {
  const { half, spacing } = holeFrame(c, box)
  const [high, low] = [box.high + AIR_mm.high, box.low - AIR_mm.low]
  const ticks: Drawing = spacing === null ? [] : [-spacing, spacing].flatMap((x) => [line([x, -5], [x, 5], 'cut')])
  const named: Drawing =
    spacing === null
      ? []
      : [
          ...note({ at: [-Math.min(spacing, half) + 2.4, 2], lines: [c.say('line-before')] }),
          ...note({ at: [Math.min(spacing, half) - 2.4, 2], lines: [c.say('line-next')], anchor: 'end' }),
        ]
  const crowded = spacing !== null && spacing < half - 0.1
  const starter_mm = practiceLengths.rows['starter-drill'].high_m * 500
  return [
    rectangle({ left: -half, right: half, bottom: low, top: high }, 'thin'),
    line([-half - 1.6, 0], [half + 1.6, 0], 'centre'),
    line([0, low - 1.6], [0, high + 1.6], 'centre'),
    ...ticks,
    ...(crowded ? [] : named),
    ...(starter ? [circle([0, 0], starter_mm, 'visible')] : []),
    ...upArrow({ at: [-half + 9, high - 16], text: c.say('up') }),
    ...note({ at: [2.2, high - 4], lines: [c.say('hole-line')] }),
    ...note({ at: [half - 2.4, -4.6], lines: [c.say('hole-height')], anchor: 'end' }),
  ]
}

function block(c: Context, t: TemplatesFacts): Drawing {
  const chosen = inMillimetres((t.joint.cut === 'axis' ? t.holeAlong : t.holeSquare).outline)
  const other = inMillimetres((t.joint.cut === 'axis' ? t.holeSquare : t.holeAlong).outline)
  const both = boxOf([...chosen, ...other])
  const own = boxOf(chosen)
  const { half } = holeFrame(c, both)
  const [full, dashed] =
    t.joint.cut === 'axis' ? (['blade-along', 'blade-square'] as const) : (['blade-square', 'blade-along'] as const)
  const alike = t.joint.stub.angle_rad > 1.5707
  const high = both.high + AIR_mm.high
  const [a, b] = [toward(chosen, [0.8, 0.6]), toward(other, [0.7, -0.75])]
  const starter_mm = practiceLengths.rows['starter-drill'].high_m * 500
  const p = Math.SQRT1_2
  return [
    ...siteFrame(c, both, true),
    contour(chosen, 'cut', { layer: 'hole' }),
    contour(other, 'hidden', { layer: 'other-cut' }),
    ...dimension({
      from: [0, own.low],
      to: [0, own.high],
      offset_mm: -both.left + 6,
      figure: c.figure((own.high - own.low) / 1000),
    }),
    ...dimension({
      from: [own.left, both.low + 2],
      to: [own.right, both.low + 2],
      offset_mm: -(2 + 9),
      figure: c.figure((own.right - own.left) / 1000),
      along: 'across',
    }),
    ...leader({
      to: [starter_mm * p, -starter_mm * p],
      elbow: [starter_mm * p + 4, -Math.min(12, 0.4 * -own.low)],
      lines: [c.say('starter', { d: c.length(practiceLengths.rows['starter-drill'].high_m) })],
    }),
    ...leader({
      to: a,
      elbow: [Math.max(a[0] + 4, both.right - 2), Math.min(high - 8, a[1] + 14)],
      lines: c.say(full).split('\n'),
    }),
    ...(alike ? [] : leader({ to: b, elbow: [both.right + 4, both.low + 6], lines: c.say(dashed).split('\n') })),
    ...note({ at: [-2.2, own.high + 2.2], lines: [c.say('upper-side')], anchor: 'end' }),
    ...note({ at: [-2.2, both.low - 15.6], lines: [c.say('lower-side')], anchor: 'end' }),
    ...dimension({
      from: [-half, both.low - AIR_mm.low],
      to: [half, both.low - AIR_mm.low],
      offset_mm: -7,
      figure: c.say('hole-round', { w: c.figure((2 * half) / 1000), paper: paperFigure(c, t.joint.paper_m) }),
    }),
  ]
}

/** Lines that every full-size sheet begins with. */
export function barLines(c: Context): readonly string[] {
  const bar = practiceLengths.rows['printed-bar'].low_m
  const { low_m, high_m } = practiceLengths.rows['check-bar']
  const mm = (m: number) => String(Number((m * 1000).toFixed(1))).replace('.', c.display.decimal)
  return [c.say('act-bars', { low: mm(bar + low_m), high: `${mm(bar + high_m)} ${c.say('mm')}` })]
}

function lines(c: Context, t: TemplatesFacts): readonly string[] {
  const { stub, cut } = t.joint
  const n = isKnown(c.facts.layout) ? c.facts.layout.known.sites.length : 1
  const along = cut === 'axis'
  return [
    ...barLines(c),
    c.say('act-paper-out'),
    c.say('act-hole-lay'),
    c.say('act-hole-trace'),
    c.say(along && stub.angle_rad < 1.5 ? 'act-hole-egg' : 'act-hole-round-up'),
    c.say('act-starter', { d: c.length(practiceLengths.rows['starter-drill'].high_m) }),
    along ? c.say('act-blade-along', { angle: c.angle(stub.angle_rad) }) : c.say('act-blade-square'),
    c.say('act-file', { edge: c.within(practiceLengths.rows['hole-edge'].high_m) }),
    c.say('act-repeat', { n: String(n) }),
  ]
}

/** The hole of one site at full size. */
export function holeSheet(c: Context): Drafted {
  const { templates } = c.facts
  if (!isKnown(templates)) return templates
  const t = templates.known
  const { stub, column, stubPipe } = t.joint
  const count = isKnown(c.facts.layout) ? c.facts.layout.known.sites.length : 1
  const drawing = block(c, t)
  const said = { lines: lines(c, t) }
  const pages = (fitsSheet(c, drawing) ? composed : spread)(c, drawing, said)
  const contours: Drawing = [
    contour(inMillimetres((t.joint.cut === 'axis' ? t.holeAlong : t.holeSquare).outline), 'cut', { layer: 'hole' }),
    line([-5, 0], [5, 0], 'centre'),
    line([0, -5], [0, 5], 'centre'),
  ]
  const subtitle = c.say('hole-sub', {
    column: column.label,
    stub: stubPipe.label,
    angle: c.angle(stub.angle_rad),
    n: String(count),
  })
  return {
    pages: pages.map((page, i) => ({
      id: 'hole' as const,
      title: i === 0 ? c.say('hole-title') : c.say('continued', { title: c.say('hole-title') }),
      subtitle,
      scale: c.say('full-size'),
      drawing: page,
      ...(i === 0 ? { contours } : {}),
    })),
  }
}
