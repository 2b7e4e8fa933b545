import { arrowhead } from './arrows.ts'
import { lettersWidth } from './letters.ts'
import { circle, contour, type Drawing, lettering, line, type Point, type Primitive, polyline } from './primitives.ts'
import { between, left, minus, plus, times, unit } from './vector.ts'

const NOTE_SIZE_mm = 2.9
const LEADING = 1.35

/** A note with a leader: from the place, over the elbow, a short shoulder, then the lines of the note. */
export function leader(given: {
  readonly to: Point
  readonly elbow: Point
  readonly lines: readonly string[]
  readonly end?: 'dot' | 'arrow' | 'none'
  readonly size_mm?: number
  readonly part?: string
}): Drawing {
  const { to, elbow, lines, end = 'none', size_mm = NOTE_SIZE_mm, part } = given
  const side = elbow[0] >= to[0] ? 1 : -1
  const shoulder = plus(elbow, [side * 2.4, 0])
  const out: Primitive[] = [polyline([to, elbow, shoulder], 'dimension')]
  if (end === 'arrow') out.push(arrowhead({ tip: to, from: elbow }))
  if (end === 'dot') out.push(circle(to, 0.45, null, { fill: 'solid', layer: 'dimension' }))
  lines.forEach((text, i) => {
    const at: Point = [shoulder[0] + side * 0.8, shoulder[1] - size_mm * (0.34 + LEADING * i)]
    out.push(lettering(at, text, { size_mm, anchor: side > 0 ? 'start' : 'end', halo: true, layer: 'dimension' }))
  })
  return part === undefined ? out : out.map((p) => ({ ...p, part }))
}

/** Lettering on the drawing, one or more lines, the first one's baseline at `at`. */
export function note(given: {
  readonly at: Point
  readonly lines: readonly string[]
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly size_mm?: number
  readonly turn_rad?: number
}): Drawing {
  const { at, lines, anchor = 'start', size_mm = NOTE_SIZE_mm, turn_rad = 0 } = given
  const down: Point = [Math.sin(turn_rad), -Math.cos(turn_rad)]
  return lines.map((text, i) =>
    lettering(plus(at, times(down, i * size_mm * LEADING)), text, { size_mm, anchor, turn_rad, halo: true }),
  )
}

/** Two crossed centre lines that reach past the thing they are the middle of. */
export const centreMark = ({ centre: [x, y], reach_mm }: { centre: Point; reach_mm: number }): Drawing => [
  line([x - reach_mm, y], [x + reach_mm, y], 'centre'),
  line([x, y - reach_mm], [x, y + reach_mm], 'centre'),
]

/** A long break: a straight line with one zigzag in the middle. */
export function breakLine({ from, to, zig_mm = 2 }: { from: Point; to: Point; zig_mm?: number }): Drawing {
  const u = unit(minus(to, from))
  const n = left(u)
  const m = between(from, to, 0.5)
  const at = (along: number, aside: number) => plus(plus(m, times(u, along * zig_mm)), times(n, aside * zig_mm))
  return [polyline([from, at(-0.8, 0), at(-0.4, 1), at(0.4, -1), at(0.8, 0), to], 'thin')]
}

/** Which way is up, for a sheet that is cut out and carried to the pipe. */
export function upArrow(given: { at: Point; length_mm?: number; text: string; size_mm?: number }): Drawing {
  const { at, length_mm = 11, text, size_mm = NOTE_SIZE_mm } = given
  const [x, y] = at
  const tip: Point = [x, y + length_mm]
  return [
    line(at, tip, 'visible'),
    polyline([[x - 2, tip[1] - 4.2], tip, [x + 2, tip[1] - 4.2]], 'visible'),
    lettering([x, y - size_mm * 1.5], text, { size_mm, anchor: 'middle' }),
  ]
}

/** A level of water or of a floor: the open triangle stands on the line. */
export const levelMark = ({
  at: [x, y],
  text,
  size_mm = NOTE_SIZE_mm,
}: {
  at: Point
  text: string
  size_mm?: number
}): Drawing => [
  contour(
    [
      [x, y],
      [x + 1.2, y + 2.1],
      [x - 1.2, y + 2.1],
    ],
    'dimension',
    { fill: 'paper' },
  ),
  ...(text === '' ? [] : [lettering([x + 2, y + 1.1], text, { size_mm, halo: true })]),
]

/** A number in a ring that ties a sentence to a place. */
export function balloon(given: {
  readonly centre: Point
  readonly text: string
  readonly to?: Point
  readonly solid?: boolean
  readonly size_mm?: number
}): Drawing {
  const { centre, text, to, solid = false, size_mm = 3 } = given
  const radius = Math.max(2.2, lettersWidth({ text, face: 'strong', size_mm }) / 2 + 1)
  const reach =
    to === undefined
      ? []
      : [
          line(to, plus(centre, times(unit(minus(to, centre)), radius)), 'dimension'),
          circle(to, 0.45, null, { fill: 'solid' }),
        ]
  return [
    ...reach,
    circle(centre, radius, 'visible', { fill: solid ? 'solid' : 'paper' }),
    lettering([centre[0], centre[1] - size_mm * 0.335], text, {
      face: 'strong',
      size_mm,
      anchor: 'middle',
      tone: solid ? 'paper' : 'ink',
    }),
  ]
}
