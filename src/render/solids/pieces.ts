import { printedSizes } from '../../tables/printing.ts'
import { type Axis, apart, cutMesh, freeLevel, type Pin, type Region, sectionOf } from './cut.ts'
import { boxOf } from './measure.ts'
import type { Mesh } from './mesh.ts'
import { clearOf, within } from './polygon.ts'

const sizes = printedSizes.rows
/** More pieces than this are no guide any more. */
const MOST = 12
const MOST_CUTS = 40
/** Places tried along a side of a cut face, and how far in from it, by the room that a pin needs. */
const MOST_ALONG = 40
const INWARD = [1.02, 1.1, 1.2, 1.3, 2] as const

const clearIn = (regions: readonly Region[], x: number, y: number): number => {
  const own = regions.find((r) => within(r.outer, x, y) && !r.holes.some((h) => within(h, x, y)))
  return own === undefined ? 0 : Math.min(clearOf(own.outer, x, y), ...own.holes.map((h) => clearOf(h, x, y)))
}

/** Pins of one region: the place that is clearest of its sides, and the one farthest from it that is clear enough. */
function pinsOf(region: Region, behind: readonly (readonly Region[])[]): readonly Pin[] {
  const radius_m = sizes['pin-hole'].length_m / 2
  const need = radius_m + sizes['pin-land'].length_m
  const found: { readonly x: number; readonly y: number; readonly clear: number }[] = []
  const all = [[region], ...behind]
  const look = (x: number, y: number) => {
    const clear = Math.min(...all.map((r) => clearIn(r, x, y)))
    if (clear >= need) found.push({ x, y, clear })
  }
  // In a wall hardly wider than the pin only places along its middle are clear: they are sought inward from its sides.
  for (const loop of [region.outer, ...region.holes])
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length]!
      const long = Math.hypot(b.x - a.x, b.y - a.y)
      if (long === 0) return
      const count = Math.min(MOST_ALONG, Math.ceil(long / radius_m))
      for (let k = 0; k < count; k++) {
        const [x, y] = [a.x + ((b.x - a.x) * (k + 0.5)) / count, a.y + ((b.y - a.y) * (k + 0.5)) / count]
        for (const d of INWARD) look(x - ((b.y - a.y) / long) * need * d, y + ((b.x - a.x) / long) * need * d)
      }
    })
  const first = found.reduce<(typeof found)[number] | null>((a, b) => (a === null || b.clear > a.clear ? b : a), null)
  if (first === null) return []
  const away = (p: { x: number; y: number }) => Math.hypot(p.x - first.x, p.y - first.y)
  const second = found.reduce((a, b) => (away(b) > away(a) ? b : a), first)
  const put = ({ x, y }: { x: number; y: number }): Pin => ({ x, y, radius_m, depth_m: sizes['pin-depth'].length_m })
  return away(second) > 4 * need ? [put(first), put(second)] : [put(first)]
}

/** Pins for every region of a cut face, only where a pin's whole length stands in the material on both sides. */
function pinsAt(m: Mesh, axis: Axis, level_m: number): readonly Pin[] {
  const depth_m = sizes['pin-depth'].length_m
  const behind = [-1, -0.5, 0.5, 1].map((s) => sectionOf(m, axis, level_m + s * depth_m))
  return sectionOf(m, axis, level_m).flatMap((region) => pinsOf(region, behind))
}

/** The mesh in as many pieces as a bed needs, each side no longer than the bed; null where that cannot be. */
export function piecesFor(whole: Mesh, bed_m: number): readonly Mesh[] | null {
  let left: readonly Mesh[] = [whole]
  const done: Mesh[] = []
  for (let n = 0; n < MOST_CUTS && left.length > 0; n++) {
    const [m, ...others] = left as readonly [Mesh, ...Mesh[]]
    const { low, high } = boxOf(m)
    const long = ([0, 1, 2] as const).map((k) => high[k] - low[k])
    const axis = long.indexOf(Math.max(...long)) as Axis
    if (long[axis]! <= bed_m) {
      done.push(m)
      left = others
      continue
    }
    if (done.length + left.length >= MOST) return null
    const parts = Math.ceil(long[axis]! / bed_m)
    const level_m = freeLevel(m, axis, low[axis] + long[axis]! / parts)
    const halves = cutMesh(m, axis, level_m, pinsAt(m, axis, level_m))
    if (halves === null) return null
    left = [...halves.flatMap(apart), ...others]
  }
  return left.length === 0 ? done : null
}
