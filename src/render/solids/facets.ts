import type { Place } from './mesh.ts'

const TURN = 2 * Math.PI

/** Lines closer than this are one: half a micrometre on a wide pipe. */
const ONE_rad = 5e-6

/** Halvings after which a piece is taken as it is. */
const DEPTH = 12

/** Largest step round a circle whose chord stays within an error of it. */
export const stepOf = (radius_m: number, error_m: number): number =>
  error_m >= radius_m ? Math.PI / 3 : Math.min(Math.PI / 6, 2 * Math.acos(1 - error_m / radius_m))

/** Distance of a place from the chord of two others. */
function sag(p: Place, a: Place, b: Place): number {
  const [dx, dy, dz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]]
  const [px, py, pz] = [p[0] - a[0], p[1] - a[1], p[2] - a[2]]
  const squared = dx * dx + dy * dy + dz * dz
  const t = squared === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy + pz * dz) / squared))
  return Math.hypot(px - t * dx, py - t * dy, pz - t * dz)
}

/**
 * Parameters such that the chords of every curve stay within an error of it, both ends included. Each of the first
 * `pieces` is halved until the chords of all curves are near enough.
 */
export function samples(given: {
  readonly curves: readonly ((t: number) => Place)[]
  readonly from: number
  readonly to: number
  readonly error_m: number
  readonly pieces?: number
}): readonly number[] {
  const { curves, from, to, error_m, pieces = 8 } = given
  const found: number[] = [from]
  const near = (t0: number, t1: number) =>
    curves.every((c) => {
      const [a, b] = [c(t0), c(t1)]
      return [0.25, 0.5, 0.75].every((k) => sag(c(t0 + k * (t1 - t0)), a, b) <= error_m)
    })
  const halve = (t0: number, t1: number, depth: number): void => {
    if (depth === DEPTH || near(t0, t1)) {
      found.push(t1)
      return
    }
    const t = (t0 + t1) / 2
    halve(t0, t, depth + 1)
    halve(t, t1, depth + 1)
  }
  for (let i = 0; i < pieces; i++) {
    const [t0, t1] = [from + ((to - from) * i) / pieces, from + ((to - from) * (i + 1)) / pieces]
    halve(t0, i === pieces - 1 ? to : t1, 0)
  }
  return found
}

/** An angle brought into one turn; a whole turn but for rounding is none. */
export function wrapped(angle_rad: number): number {
  const w = ((angle_rad % TURN) + TURN) % TURN
  return TURN - w < ONE_rad ? 0 : w
}

/** Sorted, and of those that are one line the first. */
function distinct(sorted: readonly number[]): number[] {
  const kept: number[] = []
  for (const a of sorted) if (kept.length === 0 || a - kept.at(-1)! > ONE_rad) kept.push(a)
  return kept
}

/**
 * Lines of a surface: those that must be there, and between them as many as keep the step small, evenly spread.
 * A closed surface starts over after one turn; an open one has both ends among its lines.
 */
export function spacedLines(must: readonly number[], step: number, closed: boolean): readonly number[] {
  const sorted = distinct([...(closed ? must.map(wrapped) : must)].sort((a, b) => a - b))
  if (closed && sorted.length === 0) sorted.push(0)
  const ends = closed ? [...sorted, sorted[0]! + TURN] : sorted
  const lines: number[] = []
  for (let k = 0; k + 1 < ends.length; k++) {
    const count = Math.max(1, Math.ceil((ends[k + 1]! - ends[k]!) / step - 1e-9))
    for (let i = 0; i < count; i++) lines.push(ends[k]! + ((ends[k + 1]! - ends[k]!) * i) / count)
  }
  if (!closed) return [...lines, ends.at(-1)!]
  return distinct(lines.map(wrapped).sort((a, b) => a - b))
}

/** Number of the line at an angle, of a list that holds it. */
export function lineAt(lines: readonly number[], angle: number, closed: boolean): number {
  const sought = closed ? wrapped(angle) : angle
  let best = 0
  let least = Number.POSITIVE_INFINITY
  for (let k = 0; k < lines.length; k++) {
    const off = Math.abs(lines[k]! - sought)
    const d = closed ? Math.min(off, TURN - off) : off
    if (d < least) [best, least] = [k, d]
  }
  return best
}
