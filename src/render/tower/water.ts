import { circle, contour, type Drawing, line, type Point, rectangle } from '../drawing/primitives.ts'

/** Standing water: wash, surface, short strokes that widen below it, and the open triangle on the level. */
export function standingWater(given: {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly level: number
  readonly part: string
}): Drawing {
  const { left, right, bottom, level, part } = given
  const wide = right - left
  const rows = [1.3, 2.1, 3.3, 4.9, 6.8, 9.1].filter((d) => d < level - bottom - 0.6)
  const strokes = rows.flatMap((d, i) =>
    [0.06, 0.36, 0.68].flatMap((at, k): Drawing => {
      const from = left + wide * ((at + ((i * 5 + k * 3) % 7) * 0.022) % 0.86)
      const to = Math.min(right - 0.8, from + wide * (0.1 + ((i * 3 + k * 5) % 5) * 0.028) * (1 - i * 0.09))
      return [line([from, level - d], [to, level - d], 'thin', { part: `${part} water` })]
    }),
  )
  return [
    rectangle({ left, right, bottom, top: level }, null, { fill: 'water', part }),
    ...strokes,
    line([left, level], [right, level], 'thin', { part: `${part} water` }),
  ]
}

export const waterMark = ([x, y]: Point): Drawing => [
  contour(
    [
      [x, y],
      [x + 0.95, y + 1.6],
      [x - 0.95, y + 1.6],
    ],
    'dimension',
    { fill: 'paper' },
  ),
]

export const drop = ([x, y]: Point): Drawing => [circle([x, y], 0.35, null, { fill: 'solid' })]
