/**
 * A drawing is a list of these records; SVG, PDF and DXF are three printers of the same list.
 *
 * The one exception to the units of the engine: on paper every length is a millimetre of paper (`_mm`, and the
 * coordinates of a Point). x grows to the right, y grows UPWARDS, as on the tower, in PDF and in DXF; angles are
 * counter-clockwise from +x in radians. The origin of a page is its lower left corner. Only the SVG printer turns y over.
 */
export type Point = readonly [x: number, y: number]

/** What a line is for; its weight and dash follow from it (pens.ts), never from the drawing. */
export type Pen = 'cut' | 'visible' | 'hidden' | 'centre' | 'dimension' | 'hatch' | 'thin' | 'ornament'

/** `solid` is ink, `paper` knocks out what lies below; `wash` and `water` are tints. */
export type Fill = 'none' | 'solid' | 'paper' | 'wash' | 'water'

/** Drafting letter for what stands on a drawing, the serif for words beside it. */
export type Face = 'drafting' | 'serif' | 'italic' | 'medium' | 'strong'

export type Anchor = 'start' | 'middle' | 'end'

interface Common {
  /** DXF layer; the pen's own name where left out. */
  readonly layer?: string
  /** The part of the plan that the mark belongs to, so that a view can light it. */
  readonly part?: string
}

export interface Line extends Common {
  readonly kind: 'line'
  readonly from: Point
  readonly to: Point
  readonly pen: Pen
}

export interface Path extends Common {
  readonly kind: 'path'
  readonly points: readonly Point[]
  readonly closed: boolean
  readonly pen: Pen | null
  readonly fill: Fill
}

/** Counter-clockwise from `from_rad` to `to_rad` (to_rad > from_rad). */
export interface Arc extends Common {
  readonly kind: 'arc'
  readonly centre: Point
  readonly radius_mm: number
  readonly from_rad: number
  readonly to_rad: number
  readonly pen: Pen
}

export interface Circle extends Common {
  readonly kind: 'circle'
  readonly centre: Point
  readonly radius_mm: number
  readonly pen: Pen | null
  readonly fill: Fill
}

/** `at` is on the baseline; `size_mm` is the type size (em), about 1.4 times the height of a capital. */
export interface Lettering extends Common {
  readonly kind: 'text'
  readonly at: Point
  readonly text: string
  readonly face: Face
  readonly size_mm: number
  readonly anchor: Anchor
  readonly turn_rad: number
  readonly halo: boolean
  /** `quiet` is second text, lighter on a screen and ink on paper; `paper` is knocked out of a solid. */
  readonly tone: 'ink' | 'quiet' | 'paper'
}

export type Primitive = Line | Path | Arc | Circle | Lettering
export type Drawing = readonly Primitive[]

/** One sheet of paper or one picture. */
export interface Page {
  readonly width_mm: number
  readonly height_mm: number
  readonly drawing: Drawing
}

export interface Rect {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}

export const line = (from: Point, to: Point, pen: Pen, more: Common = {}): Line => ({
  kind: 'line',
  from,
  to,
  pen,
  ...more,
})

export const polyline = (points: readonly Point[], pen: Pen, more: Common = {}): Path => ({
  kind: 'path',
  points,
  closed: false,
  pen,
  fill: 'none',
  ...more,
})

export const contour = (points: readonly Point[], pen: Pen | null, more: Common & { fill?: Fill } = {}): Path => ({
  kind: 'path',
  points,
  closed: true,
  pen,
  fill: 'none',
  ...more,
})

export const arc = (
  centre: Point,
  radius_mm: number,
  from_rad: number,
  to_rad: number,
  pen: Pen,
  more: Common = {},
): Arc => ({ kind: 'arc', centre, radius_mm, from_rad, to_rad, pen, ...more })

export const circle = (
  centre: Point,
  radius_mm: number,
  pen: Pen | null,
  more: Common & { fill?: Fill } = {},
): Circle => ({ kind: 'circle', centre, radius_mm, pen, fill: 'none', ...more })

export const lettering = (
  at: Point,
  text: string,
  more: Common & Partial<Pick<Lettering, 'face' | 'size_mm' | 'anchor' | 'turn_rad' | 'halo' | 'tone'>> = {},
): Lettering => ({
  kind: 'text',
  at,
  text,
  face: 'drafting',
  size_mm: 3,
  anchor: 'start',
  turn_rad: 0,
  halo: false,
  tone: 'ink',
  ...more,
})

export const rectangle = (area: Rect, pen: Pen | null, more: Common & { fill?: Fill } = {}): Path =>
  contour(corners(area), pen, more)

export const corners = ({ left, bottom, right, top }: Rect): readonly Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
]
