import { ARROW_mm, arrowhead } from './arrows.ts'
import { lettersWidth } from './letters.ts'
import {
  arc,
  type Drawing,
  type Lettering,
  lettering,
  line,
  type Point,
  type Primitive,
  polyline,
} from './primitives.ts'
import { between, dot, left, length, minus, plus, polar, times, unit } from './vector.ts'

export const FIGURE_SIZE_mm = 3.2
/** Clear of the outline, beyond the dimension line, and from the line up to the figure. */
const GAP_mm = 0.8
const BEYOND_mm = 1.2
const LIFT_mm = 1.1
/** Length of the tail of an arrow that stands outside. */
const TAIL_mm = 5

/** So turned that a figure is read from below or from the right. */
export function readable(direction: Point): number {
  const turn = Math.atan2(direction[1], direction[0])
  const tiny = 1e-9
  if (turn > Math.PI / 2 + tiny) return turn - Math.PI
  if (turn <= -Math.PI / 2 + tiny) return turn + Math.PI
  return turn
}

interface Linear {
  readonly from: Point
  readonly to: Point
  /** How far the dimension line lies to the left of the way from `from` to `to`; negative: to the right. */
  readonly offset_mm: number
  readonly figure: string
  /** Measures across only, up only, or straight from point to point (where left out). */
  readonly along?: 'across' | 'up'
  readonly size_mm?: number
  readonly part?: string
}

const figureText = (at: Point, text: string, turn_rad: number, size_mm: number): Lettering =>
  lettering(at, text, { size_mm, turn_rad, anchor: 'middle', halo: true, layer: 'dimension' })

/** A dimension between two points: extension lines, dimension line, slim closed arrows, figure above the line. */
export function dimension(given: Linear): Drawing {
  const { from, to, offset_mm, figure, along, size_mm = FIGURE_SIZE_mm, part } = given
  const way = minus(to, from)
  const u: Point =
    along === 'across' ? [Math.sign(way[0]) || 1, 0] : along === 'up' ? [0, Math.sign(way[1]) || 1] : unit(way)
  const n = left(u)
  const span = dot(way, u)
  // The line stands off from whichever point reaches further to its side.
  const level = offset_mm + (offset_mm >= 0 ? Math.max(0, dot(way, n)) : Math.min(0, dot(way, n)))
  const a = plus(from, times(n, level))
  const b = plus(a, times(u, span))
  const out: Primitive[] = [...extension(from, a), ...extension(to, b)]

  const width = lettersWidth({ text: figure, face: 'drafting', size_mm })
  const turn = readable(u)
  const up = left([Math.cos(turn), Math.sin(turn)])
  const outside = span < 2 * ARROW_mm.length + 2
  if (outside) {
    const before = plus(a, times(u, -TAIL_mm))
    const after = plus(b, times(u, TAIL_mm))
    out.push(line(before, a, 'dimension'), line(a, b, 'dimension'), line(b, after, 'dimension'))
    out.push(arrowhead({ tip: a, from: before }), arrowhead({ tip: b, from: after }))
  } else {
    out.push(line(a, b, 'dimension'), arrowhead({ tip: a, from: b }), arrowhead({ tip: b, from: a }))
  }
  if (width + 1 <= span) {
    out.push(figureText(plus(between(a, b, 0.5), times(up, LIFT_mm)), figure, turn, size_mm))
  } else {
    const tail = outside ? TAIL_mm : 0
    const start = plus(b, times(u, tail))
    if (!outside) out.push(line(b, plus(b, times(u, width + 2)), 'dimension'))
    else out.push(line(start, plus(start, times(u, width + 1)), 'dimension'))
    out.push(figureText(plus(plus(start, times(u, width / 2 + 1)), times(up, LIFT_mm)), figure, turn, size_mm))
  }
  return part === undefined ? out : out.map((p) => ({ ...p, part }))
}

function extension(point: Point, onLine: Point): Drawing {
  const way = minus(onLine, point)
  const l = length(way)
  if (l <= GAP_mm) return []
  return [line(plus(point, times(way, GAP_mm / l)), plus(onLine, times(way, BEYOND_mm / l)), 'dimension')]
}

/** A radius from the centre, or a diameter right across, with the figure along the line. */
export function roundDimension(given: {
  readonly centre: Point
  readonly radius_mm: number
  readonly at_rad: number
  readonly figure: string
  readonly across: boolean
  readonly size_mm?: number
}): Drawing {
  const { centre, radius_mm, at_rad, figure, across, size_mm = FIGURE_SIZE_mm } = given
  const tip = polar(centre, radius_mm, at_rad)
  const tail = across ? polar(centre, -radius_mm, at_rad) : centre
  const span = length(minus(tip, tail))
  const width = lettersWidth({ text: figure, face: 'drafting', size_mm })
  const u = unit(minus(tip, tail))
  const turn = readable(u)
  const up = left([Math.cos(turn), Math.sin(turn)])
  if (width + 2 * ARROW_mm.length + 1 <= span)
    return [
      line(tail, tip, 'dimension'),
      arrowhead({ tip, from: tail }),
      ...(across ? [arrowhead({ tip: tail, from: tip })] : []),
      figureText(plus(between(tail, tip, across ? 0.5 : 0.45), times(up, LIFT_mm)), figure, turn, size_mm),
    ]
  const elbow = plus(tip, times(u, TAIL_mm + 1))
  const side: Point = [u[0] >= 0 ? 1 : -1, 0]
  const end = plus(elbow, times(side, width + 1))
  return [
    polyline([tip, elbow, end], 'dimension'),
    arrowhead({ tip, from: elbow }),
    figureText(plus(between(elbow, end, 0.5), [0, LIFT_mm]), figure, 0, size_mm),
  ]
}

/** An angle between two directions, counter-clockwise, with the figure on its arc. */
export function angleDimension(given: {
  readonly centre: Point
  readonly radius_mm: number
  readonly from_rad: number
  readonly to_rad: number
  readonly figure: string
  /** How far the arms are drawn out from the centre; no arms where left out. */
  readonly arms_mm?: number
  readonly size_mm?: number
}): Drawing {
  const { centre, radius_mm: r, from_rad, to_rad, figure, arms_mm, size_mm = FIGURE_SIZE_mm } = given
  const arms =
    arms_mm === undefined ? [] : [from_rad, to_rad].map((a) => line(centre, polar(centre, arms_mm, a), 'dimension'))
  const head = ARROW_mm.length / r
  const width = lettersWidth({ text: figure, face: 'drafting', size_mm })
  const mid = (from_rad + to_rad) / 2
  const inside = (to_rad - from_rad) * r > 2 * ARROW_mm.length + 2
  const reach = inside ? 0 : TAIL_mm / r
  const tips = [
    arrowhead({ tip: polar(centre, r, from_rad), from: polar(centre, r, inside ? from_rad + head : from_rad - head) }),
    arrowhead({ tip: polar(centre, r, to_rad), from: polar(centre, r, inside ? to_rad - head : to_rad + head) }),
  ]
  // The figure stands upright: outside the arc, further out the more of its width lies across; where the angle is
  // too small for it, past the tail of the arrow, so that it covers neither arm.
  const half = (at_rad: number) => (width / 2) * Math.abs(Math.cos(at_rad)) + (size_mm / 2) * Math.abs(Math.sin(at_rad))
  const past = to_rad + reach
  const beyond = plus(polar(centre, r, past), times([-Math.sin(past), Math.cos(past)], 1 + half(past + Math.PI / 2)))
  const middle = inside ? polar(centre, r + 1.2 + half(mid), mid) : beyond
  const at = plus(middle, [0, -size_mm * 0.36])
  return [
    ...arms,
    arc(centre, r, from_rad - reach, to_rad + reach, 'dimension'),
    ...tips,
    figureText(at, figure, 0, size_mm),
  ]
}
