import { maximum } from '../../kernel/extremum.ts'

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
  const stressSquared = (radius: number) => (phi: number) => {
    const x = radius * Math.cos(phi) - xc
    const y = radius * Math.sin(phi) - yc
    return ((y * c - x * s) / I1) ** 2 + ((x * c + y * s) / I2) ** 2
  }
  let most = 0
  const outer = Math.max(...edges.map(({ radius_m }) => radius_m))
  for (const { radius_m, left } of edges) {
    const of = stressSquared(radius_m)
    for (const { from_rad: a, to_rad: b } of left) {
      const pieces = Math.max(4, Math.ceil((10 * (b - a)) / Math.PI))
      most = Math.max(
        most,
        radius_m === outer ? maximum({ of, low: a, high: b, pieces, within: 1e-5 }).value : Math.max(of(a), of(b)),
      )
    }
  }
  return {
    area_m2: A,
    inertiaLeast_m4: I1,
    inertiaMost_m4: I2,
    modulus_m3: 1 / Math.sqrt(most),
    centroidX_m: xc,
    centroidY_m: yc,
  }
}
