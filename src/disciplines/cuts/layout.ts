import type { Kind, Mitre, Model } from './model.ts'
import type { Load } from './room.ts'

/** A piece as it lies on the stick, measured on the centre line from the end that the tape is hooked on. */
export interface Placed {
  readonly id: string
  readonly from_m: number
  readonly to_m: number
  /** Turned end for end, and half a turn about its own axis, so that it shares the mitre before it. */
  readonly turned: boolean
}

/** A cut: the blade enters the centre line at `at_m` and leaves it at `at_m + along_m`. */
export interface Mark {
  readonly at_m: number
  /** Dust along the axis; less than the kerf where the blade runs off the end of the stick. */
  readonly along_m: number
  /** Angle between the plane of the cut and the axis; pi/2 is square. */
  readonly angle_rad: number
  /** Where the near face of the cut meets the line that was drawn on top of the pipe, and the line beneath. */
  readonly top_m: number
  readonly bottom_m: number
}

export interface Laid {
  readonly pieces: readonly Placed[]
  readonly marks: readonly Mark[]
  readonly pieces_m: number
  readonly kerf_m: number
  /** Trimmed ends, sockets, wedges and the waste of copes. */
  readonly loss_m: number
  /** The square-ended rest of the stick. */
  readonly leftover_m: number
}

interface Pen {
  at_m: number
  readonly end_m: number
  readonly pieces: Placed[]
  readonly marks: Mark[]
}

const SQUARE_rad = Math.PI / 2

function cut(pen: Pen, along_m: number, mitre: Mitre | null): void {
  const reach_m = mitre?.reach_m ?? 0
  const within_m = Math.max(0, Math.min(along_m, pen.end_m - pen.at_m))
  pen.marks.push({
    at_m: pen.at_m,
    along_m: within_m,
    angle_rad: mitre?.angle_rad ?? SQUARE_rad,
    top_m: pen.at_m + reach_m,
    bottom_m: pen.at_m - reach_m,
  })
  pen.at_m += along_m
}

function place(pen: Pen, kind: Kind, id: string, turned: boolean): void {
  const from_m = pen.at_m
  pen.at_m += kind.piece.length_m
  pen.pieces.push({ id, from_m, to_m: pen.at_m, turned })
}

type Item = readonly [kind: Kind, id: string]

/** A piece that shares nothing: its cut, and the wedge or cope behind it. */
function layAlone(model: Model, pen: Pen, [kind, id]: Item): void {
  const shape = kind.piece.cut
  const mitre = kind.mitre < 0 ? null : model.mitres[kind.mitre]!
  if (mitre !== null && shape.kind === 'parallel') {
    pen.at_m += mitre.reach_m
    cut(pen, mitre.along_m, mitre)
  }
  place(pen, kind, id, false)
  if (shape.kind === 'cope') pen.at_m += shape.extent_m
  if (mitre !== null) {
    cut(pen, mitre.along_m, mitre)
    pen.at_m += mitre.reach_m
  }
  cut(pen, model.kerf_m, null)
}

/** Stubs of one mitre in pairs, the parallel pieces between the first two, an odd stub last. */
function layMitred(model: Model, pen: Pen, mitre: Mitre, stubs: readonly Item[], parallels: readonly Item[]): void {
  const chain = (links: readonly Item[]) => {
    for (const [kind, id] of links) {
      place(pen, kind, id, false)
      cut(pen, mitre.along_m, mitre)
    }
  }
  if (stubs.length === 0 && parallels.length > 0) {
    pen.at_m += mitre.reach_m
    cut(pen, mitre.along_m, mitre)
    chain(parallels)
    pen.at_m += mitre.reach_m
    cut(pen, model.kerf_m, null)
  }
  for (let i = 0; i < stubs.length; i += 2) {
    chain([stubs[i]!, ...(i === 0 ? parallels : [])])
    const second = stubs[i + 1]
    if (second === undefined) pen.at_m += mitre.reach_m
    else place(pen, second[0], second[1], true)
    cut(pen, model.kerf_m, null)
  }
}

/** Lays the pieces of one stick in the order in which they are cut; `take` hands out the id of the next piece of a kind. */
export function layout(model: Model, load: Load, trim_m: number, take: (kind: number) => string): Laid {
  const bin = model.bins[load.bin]!
  const end_m = bin.start_m + bin.capacity_m - model.kerf_m
  const pen: Pen = { at_m: 0, end_m, pieces: [], marks: [] }
  if (bin.start_m > 0) {
    pen.at_m = trim_m
    cut(pen, model.kerf_m, null)
  }
  const items = model.kinds.flatMap((kind, i) => Array.from({ length: load.counts[i]! }, (): Item => [kind, take(i)]))
  for (const item of items) if (item[0].role === 'alone') layAlone(model, pen, item)
  model.mitres.forEach((mitre, g) => {
    const of = (role: Kind['role']) => items.filter(([k]) => k.role === role && k.mitre === g)
    layMitred(model, pen, mitre, of('stub'), of('parallel'))
  })
  const leftover_m = Math.max(0, end_m - pen.at_m)
  const pieces_m = pen.pieces.reduce((sum, p) => sum + p.to_m - p.from_m, 0)
  const kerf_m = pen.marks.reduce((sum, m) => sum + m.along_m, 0)
  const gaps_m = gaps(pen)
  const beyond_m = bin.length_m - end_m
  return { pieces: pen.pieces, marks: pen.marks, pieces_m, kerf_m, loss_m: gaps_m + beyond_m, leftover_m }
}

/** Length before the last cut that is neither piece nor dust, found by walking the stick. */
function gaps(pen: Pen): number {
  const spans = [
    ...pen.pieces.map((p) => [p.from_m, p.to_m] as const),
    ...pen.marks.map((m) => [m.at_m, m.at_m + m.along_m] as const),
  ].sort((a, b) => a[0] - b[0] || a[1] - b[1])
  let at_m = 0
  let sum_m = 0
  for (const [from_m, to_m] of spans) {
    sum_m += Math.max(0, Math.min(from_m, pen.end_m) - at_m)
    at_m = to_m
  }
  return sum_m
}
