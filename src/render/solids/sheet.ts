import { lineAt, spacedLines } from './facets.ts'
import { type Draft, type Edge, face, type Place, sew, vertex } from './mesh.ts'

/** An opening in a sheet, told as its lower and upper edge over u about its middle. */
export interface Opening {
  /** Where its middle lies on the sheet. */
  readonly at: number
  readonly left: number
  readonly right: number
  /** Values of u between its sides at which it must have vertices. */
  readonly samples: readonly number[]
  readonly edges: (u: number) => readonly [low: number, high: number]
  /** Share of its half width, -1 at the left side to 1 at the right: the angle round it is read from that. */
  readonly share: (u: number) => number
}

/** A surface over u and v, cut into slabs of constant u in which everything is straight along v. */
export interface SheetGiven {
  readonly openings: readonly Opening[]
  /** Further values of u that must be lines; the ends, where it is open. */
  readonly must: readonly number[]
  readonly step: number
  /** Goes once round. */
  readonly closed: boolean
  readonly bottom: (u: number) => number
  readonly top: (u: number) => number
  readonly place: (u: number, v: number) => Place
  /** All of the bottom is one point. */
  readonly pointed?: boolean
  /** Seen from inside u runs to the right. */
  readonly flip?: boolean
}

export interface Sheet {
  readonly bottom: Edge
  readonly top: Edge
  /** Round each opening from its crown, first to the right. */
  readonly openings: readonly Edge[]
  /** Upward along the first and the last line. */
  readonly left: Edge
  readonly right: Edge
}

interface Line {
  readonly u: number
  readonly ids: number[]
  readonly v: number[]
  /** Where in the list each opening that the line meets has its lower and upper edge. */
  readonly meets: ReadonlyMap<number, readonly [low: number, high: number]>
}

interface Span {
  readonly first: number
  readonly last: number
}

/** Least wall between two openings. */
const LEAST_m = 1e-5

const TURN = 2 * Math.PI
const about = (u: number, middle: number, closed: boolean) => {
  const off = u - middle
  return closed ? off - TURN * Math.round(off / TURN) : off
}

/** Numbers of the lines from the first to the last of a span, round the closed side where it passes it. */
const linesIn = ({ first, last }: Span, count: number): readonly number[] =>
  Array.from({ length: ((last - first + count) % count) + 1 }, (_, i) => (first + i) % count)

/** Openings that each line meets, and each slab to the right of it. */
function meetings(
  spans: readonly Span[],
  count: number,
): readonly { readonly line: number[]; readonly slab: number[] }[] {
  const all = Array.from({ length: count }, () => ({ line: [] as number[], slab: [] as number[] }))
  spans.forEach((span, n) => {
    for (const k of linesIn(span, count)) {
      all[k]!.line.push(n)
      if (k !== span.last) all[k]!.slab.push(n)
    }
  })
  return all
}

/** One line with its vertices from bottom to top, or null where openings meet each other or an end. */
function lineOf(
  d: Draft,
  g: SheetGiven,
  on: { readonly u: number; readonly k: number; readonly openings: readonly number[]; readonly spans: readonly Span[] },
  tip: number | null,
): Line | null {
  const { u, k } = on
  const met = on.openings
    .map((n) => {
      const [o, span] = [g.openings[n]!, on.spans[n]!]
      const [first, last] = [k === span.first, k === span.last]
      const local = first ? o.left : last ? o.right : about(u, o.at, g.closed)
      const [low, high] = o.edges(local)
      return first || last
        ? { n, low: (low + high) / 2, high: (low + high) / 2, one: true }
        : { n, low, high, one: false }
    })
    .sort((a, b) => a.low - b.low)
  const [bottom, top] = [g.bottom(u), g.top(u)]
  const put = (v: number) => vertex(d, g.place(u, v))
  const ids = [tip ?? put(bottom)]
  const v = [bottom]
  const meets = new Map<number, readonly [number, number]>()
  for (const m of met) {
    if (m.low - v.at(-1)! < LEAST_m) return null
    v.push(m.low)
    ids.push(put(m.low))
    const low = v.length - 1
    if (!m.one) {
      if (m.high <= m.low) return null
      v.push(m.high)
      ids.push(put(m.high))
    }
    meets.set(m.n, [low, v.length - 1])
  }
  if (top - v.at(-1)! < LEAST_m) return null
  v.push(top)
  ids.push(put(top))
  return { u, ids, v, meets }
}

/** Triangles between two lines, from one place of each up to another. */
function band(
  d: Draft,
  l: Line,
  r: Line,
  from: readonly [number, number],
  to: readonly [number, number],
  flip: boolean,
): void {
  let [i, j] = from
  while (i < to[0] || j < to[1]) {
    const left = i < to[0] && (j === to[1] || l.v[i + 1]! <= r.v[j + 1]!)
    if (left) {
      face(d, l.ids[i]!, r.ids[j]!, l.ids[i + 1]!, flip)
      i += 1
    } else {
      face(d, l.ids[i]!, r.ids[j]!, r.ids[j + 1]!, flip)
      j += 1
    }
  }
}

function slab(d: Draft, g: SheetGiven, l: Line, r: Line, through: readonly number[]): void {
  const order = [...through].sort((a, b) => l.meets.get(a)![0] - l.meets.get(b)![0])
  let from: readonly [number, number] = [0, 0]
  for (const n of order) {
    const [a, b] = [l.meets.get(n)!, r.meets.get(n)!]
    band(d, l, r, from, [a[0], b[0]], g.flip === true)
    from = [a[1], b[1]]
  }
  band(d, l, r, from, [l.ids.length - 1, r.ids.length - 1], g.flip === true)
}

/** The vertices round one opening by the angle from its crown. */
function openingEdge(g: SheetGiven, n: number, lines: readonly Line[], span: Span): Edge {
  const o = g.openings[n]!
  const found: { id: number; along: number }[] = []
  for (const k of linesIn(span, lines.length)) {
    const line = lines[k]!
    const at = line.meets.get(n)!
    const share = Math.max(-1, Math.min(1, o.share(about(line.u, o.at, g.closed))))
    const angle = Math.asin(share)
    if (at[0] === at[1]) {
      found.push({ id: line.ids[at[0]]!, along: share > 0 ? Math.PI / 2 : 1.5 * Math.PI })
      continue
    }
    found.push({ id: line.ids[at[1]]!, along: (angle + TURN) % TURN }, { id: line.ids[at[0]]!, along: Math.PI - angle })
  }
  found.sort((a, b) => a.along - b.along)
  return { ids: found.map((f) => f.id), along: found.map((f) => f.along) }
}

/** Draws a sheet; null where its openings meet each other or its ends. */
export function sheet(d: Draft, g: SheetGiven): Sheet | null {
  const own = g.openings.flatMap((o) => [o.left, ...o.samples, o.right].map((u) => o.at + u))
  const us = spacedLines([...g.must, ...own], g.step, g.closed)
  const spans = g.openings.map((o) => ({
    first: lineAt(us, o.at + o.left, g.closed),
    last: lineAt(us, o.at + o.right, g.closed),
  }))
  const met = meetings(spans, us.length)
  const tip = g.pointed === true ? vertex(d, g.place(0, g.bottom(0))) : null
  const lines: Line[] = []
  for (let k = 0; k < us.length; k++) {
    const line = lineOf(d, g, { u: us[k]!, k, openings: met[k]!.line, spans }, tip)
    if (line === null) return null
    lines.push(line)
  }
  const slabs = g.closed ? lines.length : lines.length - 1
  for (let k = 0; k < slabs; k++) {
    slab(d, g, lines[k]!, lines[(k + 1) % lines.length]!, met[k]!.slab)
  }
  const edge = (id: (l: Line) => number): Edge => ({ ids: lines.map(id), along: us })
  const last = lines.at(-1)!
  return {
    bottom: edge((l) => l.ids[0]!),
    top: edge((l) => l.ids.at(-1)!),
    openings: g.openings.map((_, n) => openingEdge(g, n, lines, spans[n]!)),
    left: { ids: lines[0]!.ids, along: lines[0]!.v },
    right: { ids: last.ids, along: last.v },
  }
}

/** Closes the space between an outer sheet and the inner one behind it; openings are lined, open sides walled up. */
export function close(d: Draft, outer: Sheet, inner: Sheet, closed: boolean, lined = true): void {
  const round = closed ? { period: TURN } : {}
  sew(d, outer.bottom, inner.bottom, { ...round, flip: true })
  sew(d, outer.top, inner.top, round)
  if (lined)
    outer.openings.forEach((o, n) => {
      sew(d, o, inner.openings[n]!, { period: TURN, flip: true })
    })
  if (closed) return
  sew(d, outer.right, inner.right, { flip: true })
  sew(d, outer.left, inner.left, {})
}
