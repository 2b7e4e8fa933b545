import { kerfAlong, mitreReach, ROUNDING_M, stickCapacity } from './equations.ts'
import type { CutIssue, CutJob, Piece } from './job.ts'

/** Mitres of one angle on one pipe: they can be shared. */
export interface Mitre {
  readonly angle_rad: number
  readonly along_m: number
  readonly reach_m: number
}

/** Pieces that the search cannot tell apart. */
export interface Kind {
  /** One id for each piece. */
  readonly ids: readonly string[]
  readonly piece: Piece
  readonly role: 'alone' | 'stub' | 'parallel'
  readonly mitre: number
  /** For pieces that share nothing all they take; for others the length on the centre line. */
  readonly own_m: number
  /** Least that the piece takes in any company: what bounds may count. */
  readonly least_m: number
}

/** Sticks of one sort: on hand (cost 0, limited) or bought. */
export interface Bin {
  readonly id: string
  readonly from: 'hand' | 'shop' | 'nowhere'
  readonly length_m: number
  readonly capacity_m: number
  readonly cost: number
  readonly limit: number
  /** Length lost at the start (trim and its kerf) before the first piece. */
  readonly start_m: number
}

export interface Model {
  readonly kinds: readonly Kind[]
  readonly counts: readonly number[]
  readonly mitres: readonly Mitre[]
  readonly bins: readonly Bin[]
  readonly kerf_m: number
  readonly objective: 'count' | 'm' | 'money'
}

/** Greatest number of pieces of one job: beyond it the plan is refused as a mistyped count. */
export const MOST_PIECES = 5000

/** How many times dearer than any length a stick is that does not exist, so that it is taken last. */
const NOWHERE = 1000

function mitreOf(mitres: Mitre[], given: { angle_rad: number; radius_m: number; kerf_m: number }): number {
  const along_m = kerfAlong(given)
  const reach_m = mitreReach(given)
  const same = (m: Mitre) =>
    Math.abs(m.along_m - along_m) < ROUNDING_M &&
    Math.abs(m.reach_m - reach_m) < ROUNDING_M &&
    Math.abs(m.angle_rad - given.angle_rad) < ROUNDING_M
  const found = mitres.findIndex(same)
  if (found >= 0) return found
  return mitres.push({ angle_rad: given.angle_rad, along_m, reach_m }) - 1
}

/** What one sort of piece takes from a stick; mitres are collected in `mitres`. */
function kindOf(piece: Piece, job: CutJob, mitres: Mitre[]): Omit<Kind, 'ids'> {
  const { length_m: L, cut } = piece
  const w = job.kerf_m
  const alone = (own_m: number, mitre = -1) => ({ piece, role: 'alone' as const, mitre, own_m, least_m: own_m })
  if (cut.kind === 'square') return alone(L + w)
  if (cut.kind === 'cope') return alone(L + cut.extent_m + w)
  const mitre = mitreOf(mitres, { ...cut, kerf_m: w })
  const { along_m: k, reach_m: h } = mitres[mitre]!
  if (cut.kind === 'parallel')
    return job.share
      ? { piece, role: 'parallel', mitre, own_m: L, least_m: L + k }
      : alone(L + 2 * k + 2 * h + w, mitre)
  return job.share ? { piece, role: 'stub', mitre, own_m: L, least_m: L + (k + w) / 2 } : alone(L + h + k + w, mitre)
}

/** What the piece takes when nothing else is on the stick. */
export function soleLength(kind: Omit<Kind, 'ids'>, mitres: readonly Mitre[], kerf_m: number): number {
  if (kind.role === 'alone') return kind.own_m
  const { along_m: k, reach_m: h } = mitres[kind.mitre]!
  return kind.role === 'stub' ? kind.own_m + k + kerf_m + h : kind.own_m + 2 * k + 2 * h + kerf_m
}

function binsOf(job: CutJob): { bins: Bin[]; objective: Model['objective'] } {
  const priced = job.purchase.length > 0 && job.purchase.every((p) => p.price_money !== null)
  const objective = job.purchase.length === 1 ? 'count' : priced ? 'money' : 'm'
  const ends = (count: number) => (job.trim_m > 0 ? count : 0)
  const start = (count: number) => (ends(count) > 0 ? job.trim_m + job.kerf_m : 0)
  const hand = job.offcuts.map(
    (o): Bin => ({
      id: o.id,
      from: 'hand',
      length_m: o.length_m,
      capacity_m: stickCapacity({ ...job, ...o, socket_m: 0, ends_count: ends(o.ends_count) }),
      cost: 0,
      limit: o.count,
      start_m: start(o.ends_count),
    }),
  )
  const shop = job.purchase.map((p): Bin => {
    const ends_count = ends(p.socket_m > 0 ? 1 : 2)
    return {
      id: p.id,
      from: 'shop',
      length_m: p.length_m,
      capacity_m: stickCapacity({ ...job, ...p, ends_count }),
      cost: objective === 'count' ? 1 : objective === 'money' ? p.price_money! : p.length_m,
      limit: Number.POSITIVE_INFINITY,
      start_m: start(2),
    }
  })
  const byRoom = (a: Bin, b: Bin) => a.capacity_m - b.capacity_m || a.cost - b.cost
  return { bins: [...hand.sort(byRoom), ...shop.sort(byRoom)], objective }
}

function faults(job: CutJob): CutIssue[] {
  const issues: CutIssue[] = []
  const need = (id: string, field: string, value: number, holds: boolean) => {
    if (!holds) issues.push({ reason: 'not-a-number', id, field, value })
  }
  const whole = (n: number) => Number.isInteger(n) && n >= 0 && n <= MOST_PIECES
  const length = (n: number) => Number.isFinite(n) && n > 0
  need('', 'kerf', job.kerf_m, Number.isFinite(job.kerf_m) && job.kerf_m >= 0)
  need('', 'trim', job.trim_m, Number.isFinite(job.trim_m) && job.trim_m >= 0)
  const total = job.pieces.reduce((n, p) => n + p.count, 0)
  need('', 'pieces', total, whole(total))
  for (const p of job.pieces) {
    need(p.id, 'count', p.count, whole(p.count))
    need(p.id, 'length', p.length_m, length(p.length_m))
    if (p.cut.kind === 'cope')
      need(p.id, 'extent', p.cut.extent_m, Number.isFinite(p.cut.extent_m) && p.cut.extent_m >= 0)
    if (p.cut.kind === 'mitre' || p.cut.kind === 'parallel') {
      need(p.id, 'angle', p.cut.angle_rad, p.cut.angle_rad > 0 && p.cut.angle_rad <= Math.PI / 2)
      need(p.id, 'radius', p.cut.radius_m, length(p.cut.radius_m))
    }
  }
  for (const s of job.purchase) {
    need(s.id, 'length', s.length_m, length(s.length_m))
    need(s.id, 'socket', s.socket_m, s.socket_m >= 0 && s.socket_m < s.length_m)
    if (s.price_money !== null) need(s.id, 'price', s.price_money, Number.isFinite(s.price_money) && s.price_money > 0)
  }
  for (const o of job.offcuts) {
    need(o.id, 'length', o.length_m, length(o.length_m))
    need(o.id, 'count', o.count, whole(o.count))
  }
  return issues
}

/** Turns a job into kinds and bins; what cannot be cut becomes issues and is left out. */
export function modelOf(job: CutJob): { model: Model | null; issues: readonly CutIssue[] } {
  const issues: CutIssue[] = faults(job)
  if (issues.length > 0) return { model: null, issues }
  const mitres: Mitre[] = []
  const { bins, objective } = binsOf(job)
  const roomiest = Math.max(0, ...bins.filter((b) => b.limit > 0).map((b) => b.capacity_m))
  const roomiestShop = Math.max(0, ...bins.filter((b) => b.from === 'shop').map((b) => b.capacity_m))
  const merged = new Map<string, Omit<Kind, 'ids'> & { ids: string[] }>()
  let onlyOnHand = false
  for (const piece of job.pieces) {
    if (piece.count === 0) continue
    const kind = kindOf(piece, job, mitres)
    const reach_m = kind.mitre < 0 ? 0 : mitres[kind.mitre]!.reach_m
    const least_m = piece.cut.kind === 'parallel' ? 0 : reach_m
    const sole = soleLength(kind, mitres, job.kerf_m)
    if (piece.length_m < least_m) {
      issues.push({ reason: 'mitre-longer-than-piece', id: piece.id, length_m: piece.length_m, reach_m })
    } else if (sole > roomiest + ROUNDING_M) {
      const longest_m = Math.max(0, roomiest - job.kerf_m)
      issues.push({
        reason: 'longer-than-stock',
        id: piece.id,
        length_m: piece.length_m,
        takes_m: sole - job.kerf_m,
        longest_m,
      })
    } else {
      onlyOnHand ||= sole > roomiestShop + ROUNDING_M
      const key = `${kind.role} ${kind.mitre} ${piece.cut.kind} ${kind.own_m.toFixed(10)} ${piece.length_m.toFixed(10)}`
      const ids = Array.from({ length: piece.count }, () => piece.id)
      const known = merged.get(key)
      if (known) known.ids.push(...ids)
      else merged.set(key, { ...kind, ids })
    }
  }
  const kinds = [...merged.values()].sort((a, b) => b.least_m - a.least_m || b.own_m - a.own_m)
  const dearest = Math.max(1, ...bins.map((b) => b.cost))
  const nowhere: Bin[] = onlyOnHand
    ? [
        {
          id: '',
          from: 'nowhere',
          length_m: roomiest,
          capacity_m: roomiest,
          cost: NOWHERE * dearest,
          limit: Number.POSITIVE_INFINITY,
          start_m: 0,
        },
      ]
    : []
  const model: Model = {
    kinds,
    counts: kinds.map((k) => k.ids.length),
    mitres,
    bins: [...bins, ...nowhere].filter((b) => b.limit > 0 && b.capacity_m > 0),
    kerf_m: job.kerf_m,
    objective,
  }
  return { model, issues }
}
