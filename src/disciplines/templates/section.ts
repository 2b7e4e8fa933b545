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

/** Value of a form on a circle of radius `r` at the angle φ, with its first and second derivative by φ. */
function alongCircle({ xx, xy, yy, xc, yc }: Form, r: number, phi: number) {
  const [rx, ry] = [r * Math.cos(phi), r * Math.sin(phi)]
  const [x, y] = [rx - xc, ry - yc]
  const [gx, gy] = [xx * x + xy * y, xy * x + yy * y]
  return {
    value: gx * x + gy * y,
    slope: 2 * (gy * rx - gx * ry),
    bend: 2 * (xx * ry * ry - 2 * xy * rx * ry + yy * rx * rx - gx * rx - gy * ry),
  }
}

/** Greatest value of a form on an arc: at its ends, or with `inside` also where it is level between them. */
function mostOnArc(form: Form, r: number, { from_rad: a, to_rad: b }: Arc, inside: boolean): number {
  const [first, last] = [alongCircle(form, r, a), alongCircle(form, r, b)]
  const ends = Math.max(first.value, last.value)
  if (!inside) return ends
  const pieces = Math.max(4, Math.ceil((LOOKS * (b - a)) / Math.PI))
  let most = ends
  let rising = first.slope > 0
  for (let i = 1; i <= pieces; i++) {
    const to = i === pieces ? b : a + (i * (b - a)) / pieces
    const rises = (i === pieces ? last : alongCircle(form, r, to)).slope > 0
    if (rising && !rises) most = Math.max(most, topBetween(form, r, a + ((i - 1) * (b - a)) / pieces, to))
    rising = rises
  }
  return most
}

/** The top between two places at which a form rises and falls: Newton's steps on its slope, halving where they leave. */
function topBetween(form: Form, r: number, low: number, high: number): number {
  let [a, b] = [low, high]
  let at = (a + b) / 2
  for (;;) {
    const { value, slope, bend } = alongCircle(form, r, at)
    if (slope > 0) a = at
    else b = at
    const next = at - slope / bend
    const to = bend < 0 && next > a && next < b ? next : (a + b) / 2
    if (Math.abs(to - at) < 1e-9) return value
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
