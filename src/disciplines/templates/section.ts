/** A part of the turn round the column. */
export interface Arc {
  readonly from_rad: number
  readonly to_rad: number
}

/** A cross-section of the column. */
export interface Section {
  readonly area_m2: number
  /** Least and greatest second moment about axes through the centroid. */
  readonly inertiaLeast_m4: number
  readonly inertiaMost_m4: number
  /** Bending moment over the largest stress, for the worst direction of bending. */
  readonly modulus_m3: number
  readonly centroidX_m: number
  readonly centroidY_m: number
}

/** A thin layer of the wall: what is left of its turn, and its moments ∫ρ dρ, ∫ρ² dρ, ∫ρ³ dρ. */
export interface Layer {
  readonly left: readonly Arc[]
  readonly first: number
  readonly second: number
  readonly third: number
}

const TURN = 2 * Math.PI

/** What openings leave of the full turn; openings may overlap and may reach over the seam. */
export function remaining(openings: readonly Arc[]): readonly Arc[] {
  const cut = openings
    .filter(({ from_rad, to_rad }) => to_rad > from_rad)
    .map(({ from_rad, to_rad }) => {
      const from = ((from_rad % TURN) + TURN) % TURN
      return { from, to: from + Math.min(TURN, to_rad - from_rad) }
    })
    .sort((a, b) => a.from - b.from)
  if (cut.length === 0) return [{ from_rad: 0, to_rad: TURN }]
  const start = cut[0]!.from
  const left: Arc[] = []
  let reached = start
  for (const { from, to } of cut) {
    if (from > reached) left.push({ from_rad: reached, to_rad: from })
    reached = Math.max(reached, to)
  }
  if (reached < start + TURN) left.push({ from_rad: reached, to_rad: start + TURN })
  return left
}

/** The whole depth of the wall as one layer. */
export const throughWall = (R: number, Ri: number, left: readonly Arc[]): Layer => ({
  left,
  first: (R ** 2 - Ri ** 2) / 2,
  second: (R ** 3 - Ri ** 3) / 3,
  third: (R ** 4 - Ri ** 4) / 4,
})

const EMPTY: Section = {
  area_m2: 0,
  inertiaLeast_m4: 0,
  inertiaMost_m4: 0,
  modulus_m3: 0,
  centroidX_m: 0,
  centroidY_m: 0,
}

/** A quadratic form of the place about a centroid. */
interface Form {
  readonly xx: number
  readonly xy: number
  readonly yy: number
  readonly xc: number
  readonly yc: number
}

/** Steps per half turn in which an arc is looked over. */
const LOOKS = 10

/** Value of a form at a place. */
function valueAt({ xx, xy, yy, xc, yc }: Form, px: number, py: number): number {
  const [x, y] = [px - xc, py - yc]
  return xx * x * x + 2 * xy * x * y + yy * y * y
}

/** Half the derivative of a form along a circle about the column's axis, at a place on the circle. */
function slopeAt({ xx, xy, yy, xc, yc }: Form, px: number, py: number): number {
  const [x, y] = [px - xc, py - yc]
  return (xy * x + yy * y) * px - (xx * x + xy * y) * py
}

/** Half the second derivative, as `slopeAt`. */
function bendAt({ xx, xy, yy, xc, yc }: Form, px: number, py: number): number {
  const [x, y] = [px - xc, py - yc]
  return xx * py * py - 2 * xy * px * py + yy * px * px - (xx * x + xy * y) * px - (xy * x + yy * y) * py
}

/** Greatest value of a form on an arc: at its ends, or with `inside` also where it is level between them. */
function mostOnArc(form: Form, r: number, { from_rad: a, to_rad: b }: Arc, inside: boolean): number {
  const [ax, ay, bx, by] = [r * Math.cos(a), r * Math.sin(a), r * Math.cos(b), r * Math.sin(b)]
  let most = Math.max(valueAt(form, ax, ay), valueAt(form, bx, by))
  if (!inside) return most
  const pieces = Math.max(4, Math.ceil((LOOKS * (b - a)) / Math.PI))
  let rising = slopeAt(form, ax, ay) > 0
  for (let i = 1; i <= pieces; i++) {
    const to = i === pieces ? b : a + (i * (b - a)) / pieces
    const rises = slopeAt(form, r * Math.cos(to), r * Math.sin(to)) > 0
    if (rising && !rises) most = Math.max(most, topBetween(form, r, a + ((i - 1) * (b - a)) / pieces, to))
    rising = rises
  }
  return most
}

/** The top between two places at which a form rises and falls: Newton's steps on its slope, halving where they leave. */
function topBetween(form: Form, r: number, low: number, high: number): number {
  let a = low
  let b = high
  let at = (a + b) / 2
  for (;;) {
    const px = r * Math.cos(at)
    const py = r * Math.sin(at)
    const slope = slopeAt(form, px, py)
    const bend = bendAt(form, px, py)
    if (slope > 0) a = at
    else b = at
    const next = at - slope / bend
    const to = bend < 0 && next > a && next < b ? next : (a + b) / 2
    if (Math.abs(to - at) < 1e-9) return valueAt(form, px, py)
    at = to
  }
}

/** Section made of layers of the wall; `edges` lists radii with the arcs left there, innermost and outermost included. */
export function sectionOf(
  layers: readonly Layer[],
  edges: readonly { readonly radius_m: number; readonly left: readonly Arc[] }[],
): Section {
  let [A, Sx, Sy, Ixx, Iyy, Ixy] = [0, 0, 0, 0, 0, 0]
  for (const { left, first, second, third } of layers)
    for (const { from_rad: a, to_rad: b } of left) {
      const span = b - a
      const twice = (Math.sin(2 * b) - Math.sin(2 * a)) / 2
      A += first * span
      Sx += second * (Math.sin(b) - Math.sin(a))
      Sy += second * (Math.cos(a) - Math.cos(b))
      Iyy += (third * (span + twice)) / 2
      Ixx += (third * (span - twice)) / 2
      Ixy += (third * (Math.cos(2 * a) - Math.cos(2 * b))) / 4
    }
  if (!(A > 0)) return EMPTY
  const [xc, yc] = [Sx / A, Sy / A]
  Ixx -= A * yc * yc
  Iyy -= A * xc * xc
  Ixy -= A * xc * yc
  const turn = Math.atan2(2 * Ixy, Iyy - Ixx) / 2
  const half = Math.hypot(Iyy - Ixx, 2 * Ixy) / 2
  const I1 = (Ixx + Iyy) / 2 - half
  const I2 = (Ixx + Iyy) / 2 + half
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  // (y'/I1)² + (x'/I2)² as a quadratic form xx x² + 2 xy x y + yy y² about the centroid.
  const form = {
    xx: (s / I1) ** 2 + (c / I2) ** 2,
    xy: (c * s) / I2 ** 2 - (c * s) / I1 ** 2,
    yy: (c / I1) ** 2 + (s / I2) ** 2,
    xc,
    yc,
  }
  let most = 0
  const outer = edges.reduce((widest, { radius_m }) => Math.max(widest, radius_m), 0)
  for (const { radius_m, left } of edges)
    for (const arc of left) most = Math.max(most, mostOnArc(form, radius_m, arc, radius_m === outer))
  return {
    area_m2: A,
    inertiaLeast_m4: I1,
    inertiaMost_m4: I2,
    modulus_m3: 1 / Math.sqrt(most),
    centroidX_m: xc,
    centroidY_m: yc,
  }
}
