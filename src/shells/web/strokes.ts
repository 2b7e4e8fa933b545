import type { Drawing, Lettering, Point, Primitive, Rect } from '../../render/drawing/primitives.ts'
import { polar } from '../../render/drawing/vector.ts'

/**
 * One element of a drawing on the page: marks of one look and part that follow one another, as the data of one path.
 * Few elements, each kept from picture to picture, are what keeps an edit fast.
 */
export interface Stroke {
  readonly look: string
  readonly part: string
  readonly d: string
}

/** A screen shows a quarter of a millimetre as one point: hundredths are more than it can tell. */
const told = (n: number): string => String(Math.round(n * 100) / 100)

type Place = (p: Point) => string
type Shape = Exclude<Primitive, Lettering>

const placeIn =
  ({ left, top }: Rect): Place =>
  ([x, y]) =>
    `${told(x - left)} ${told(top - y)}`

/** Half a turn at a time, for an arc that ends where it begins is none. */
function circle(at: Place, [x, y]: Point, r: number): string {
  const half = (to: Point): string => `A${told(r)} ${told(r)} 0 0 0 ${at(to)}`
  return `M${at([x - r, y])}${half([x + r, y])}${half([x - r, y])}Z`
}

function data(p: Shape, at: Place): string {
  switch (p.kind) {
    case 'line':
      return `M${at(p.from)}L${at(p.to)}`
    case 'path':
      return `M${p.points.map(at).join('L')}${p.closed ? 'Z' : ''}`
    case 'circle':
      return circle(at, p.centre, p.radius_mm)
    case 'arc': {
      const r = told(p.radius_mm)
      const large = p.to_rad - p.from_rad > Math.PI ? 1 : 0
      const [from, to] = [polar(p.centre, p.radius_mm, p.from_rad), polar(p.centre, p.radius_mm, p.to_rad)]
      // Counter-clockwise with y upwards is sweep 0 once y is turned over.
      return `M${at(from)}A${r} ${r} 0 ${large} 0 ${at(to)}`
    }
  }
}

const fillOf = (p: Shape): string => ('fill' in p ? p.fill : 'none')

const lookOf = (p: Shape): string => `${p.pen === null ? '' : `pen-${p.pen} `}fill-${fillOf(p)}`

/** What knocks out what lies below it stays by itself: two such outlines in one path would cut each other open. */
const joins = (p: Shape): boolean => fillOf(p) === 'none' || fillOf(p) === 'solid'

/** The marks of a drawing without its lettering, in their order. */
export function strokes(drawing: Drawing, box: Rect): readonly Stroke[] {
  const at = placeIn(box)
  const runs: { look: string; part: string; d: string[]; open: boolean }[] = []
  for (const p of drawing) {
    if (p.kind === 'text') continue
    const [look, part, open] = [lookOf(p), p.part ?? '', joins(p)]
    const last = runs.at(-1)
    if (last?.open && open && last.look === look && last.part === part) last.d.push(data(p, at))
    else runs.push({ look, part, d: [data(p, at)], open })
  }
  return runs.map(({ look, part, d }) => ({ look, part, d: d.join('') }))
}
