/**
 * The guarded way through a tree of tubes, for the rare tree in which the fast one does not settle.
 *
 * The heads and flows of a whole path follow from the head at its last branching: downstream of it each open end draws
 * what that head drives (nothing where the end lies above it), and going up, each tube adds its loss and each branching
 * the draw of its other branches. Both the head at the top and the flow rise with the head at the bottom, so one
 * bracketed search closes the balance with the pump. A branch that branches again is the same question with its top
 * head given; the longest path is always the outer one, so that the nesting stays shallow.
 */

import type { Network, Run } from './network-tree.ts'
import { lossAndSlope, type PipeLaw, pipeFlow, pipeLaw } from './pipe-law.ts'
import { compiledPump } from './pump-law.ts'

/** Newton and halving steps of one search; a bracket of doubles closes well before. */
const STEP_LIMIT = 100
const OUTER_CLOSED_m = 1e-10
const INNER_CLOSED_m = 1e-12

/** A tube at work: the law of its loss, what hangs on it, and where the search stands. */
interface Working {
  readonly run: Run
  readonly law: PipeLaw
  /** Lowest open end below: under this head nothing flows. */
  readonly lowest_m: number
  /** The path of branchings below this tube, the deepest first; empty for an open or dead end. */
  readonly path: readonly Working[]
  /** For a branching: the branches that the path does not follow. At the deepest branching: all of them. */
  readonly aside: readonly Working[]
  readonly below: readonly Working[]
  flow_m3_s: number
  inletHead_m: number
  /** Head at the deepest branching in the last search: where the next one starts. */
  deepHead_m: number
}

/** Flow into a part of the tree at a head, and its growth with the head. */
interface Draw {
  readonly flow: number
  readonly slope: number
}

function working(run: Run, network: Network): Working {
  const law = pipeLaw(run, network.viscosity_m2_s, network.gravity_m_s2)
  const below = (run.branches ?? []).map((branch) => working(branch, network))
  const rest = { run, law, below, flow_m3_s: 0, inletHead_m: 0, deepHead_m: Number.NaN }
  const lowest_m = Math.min(run.outlet_m ?? Number.POSITIVE_INFINITY, ...below.map((b) => b.lowest_m))
  const main = below.reduce<Working | null>(
    (deepest, b) => (b.path.length > (deepest?.path.length ?? 0) ? b : deepest),
    null,
  )
  if (below.length === 0) return { ...rest, lowest_m, path: [], aside: [] }
  const node: Working = { ...rest, lowest_m, path: [], aside: below.filter((b) => b !== main) }
  // The path ends with the tube itself, so it must be the same object: filled in once, here.
  return Object.assign(node, { path: [...(main?.path ?? []), node] })
}

/** Flow that enters a branch whose upper end stands at a head. Leaves the state of the branch behind. */
function draw(w: Working, head_m: number): Draw {
  w.inletHead_m = head_m
  if (w.path.length > 0) return drawOfPath(w, head_m)
  w.flow_m3_s = w.run.outlet_m === undefined ? 0 : pipeFlow(w.law, head_m - w.run.outlet_m)
  if (w.flow_m3_s === 0) return { flow: 0, slope: 0 }
  return { flow: w.flow_m3_s, slope: 1 / lossAndSlope(w.law, w.flow_m3_s).slope }
}

/** Draw of a branch that branches again: the head at its deepest branching is sought that gives the head above. */
function drawOfPath(w: Working, head_m: number): Draw {
  if (head_m <= w.lowest_m) {
    climb(w.path, head_m)
    return { flow: 0, slope: 0 }
  }
  const found = search({
    low: w.lowest_m,
    high: head_m,
    start: w.deepHead_m,
    closed: INNER_CLOSED_m,
    of: (deep) => {
      const top = climb(w.path, deep)
      return { over: top.head - head_m, slope: top.headSlope, top }
    },
  })
  w.deepHead_m = found.at
  return { flow: found.value.top.flow, slope: found.value.top.flowSlope / found.value.top.headSlope }
}

interface Top {
  readonly head: number
  readonly flow: number
  readonly headSlope: number
  readonly flowSlope: number
}

/** From the head at the deepest branching of a path to head and flow at its upper end. */
function climb(path: readonly Working[], deepHead_m: number): Top {
  let head = deepHead_m
  let flow = 0
  let headSlope = 1
  let flowSlope = 0
  for (const w of path) {
    for (const branch of w.aside) {
      const d = draw(branch, head)
      flow += d.flow
      flowSlope += d.slope * headSlope
    }
    const { loss_m, slope } = lossAndSlope(w.law, flow)
    w.flow_m3_s = flow
    head += loss_m
    headSlope += slope * flowSlope
    w.inletHead_m = head
  }
  return { head, flow, headSlope, flowSlope }
}

/** Bracketed Newton on a rising function; halves the bracket where Newton leaves it or gains too little. */
function search<T extends { readonly over: number; readonly slope: number }>(given: {
  readonly low: number
  readonly high: number
  readonly start: number
  readonly closed: number
  readonly of: (x: number) => T
}): { readonly at: number; readonly value: T; readonly steps: number } {
  let { low, high } = given
  let at = given.start > low && given.start < high ? given.start : (low + high) / 2
  let value = given.of(at)
  let last = Number.POSITIVE_INFINITY
  let steps = 1
  for (; steps < STEP_LIMIT && Math.abs(value.over) > given.closed; steps++) {
    if (value.over > 0) high = at
    else low = at
    const newton = at - value.over / value.slope
    const gains = Math.abs(value.over) < last / 2
    const next = gains && newton > low && newton < high ? newton : (low + high) / 2
    if (next === low || next === high) break
    last = Math.abs(value.over)
    at = next
    value = given.of(at)
  }
  return { at, value, steps }
}

/** The pump against an open or dead end without branches is a path of one. */
function climbOf(riser: Working, deep: number): Top {
  if (riser.path.length > 0) return climb(riser.path, deep)
  const { flow, slope } = draw(riser, deep)
  return { head: deep, flow, headSlope: 1, flowSlope: slope }
}

/** Flow of each open end, in the order in which the runs are met going down. */
export function nestedFlows(network: Network): { readonly flows: readonly number[]; readonly steps: number } {
  const pump = compiledPump(network.pump)
  const riser = working(network.riser, network)
  const still_m = network.level_m + pump(0).head_m
  const ask = (deep: number) => {
    const top = climbOf(riser, deep)
    const { head_m, slope } = pump(top.flow)
    return { over: top.head - network.level_m - head_m, slope: top.headSlope - slope * top.flowSlope }
  }
  if (riser.lowest_m >= still_m) return { flows: collected(riser).map(() => 0), steps: 0 }
  const found = search({ low: riser.lowest_m, high: still_m, start: Number.NaN, closed: OUTER_CLOSED_m, of: ask })
  return { flows: collected(riser), steps: found.steps }
}

function collected(w: Working): number[] {
  return [w.flow_m3_s, ...w.below.flatMap(collected)]
}
