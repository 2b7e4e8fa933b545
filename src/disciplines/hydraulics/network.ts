/**
 * Steady flow from one pump through a tree of tubes to open ends at any height.
 *
 * The unknowns are the flows of the open ends; those of all other tubes are their sums, so water is conserved by
 * construction, and what is left over at an open end is a head. Each round takes the heads down the tree with the true
 * losses, then makes one Newton step for all ends at once: in a tree the linear system is solved by one sweep up and
 * one down. An end that would run backward is shut, and opened again when the head before it rises above its height.
 * Should the rounds not settle, the guarded way of `network-nested.ts` is
 * asked as well, and the better answer taken; `residual_m` says how good it is.
 */

import { nestedFlows } from './network-nested.ts'
import type { Network, Run } from './network-tree.ts'
import { lossAndSlope, type PipeLaw, pipeFlow, pipeLaw } from './pipe-law.ts'
import { compiledPump, type HeadAndSlope } from './pump-law.ts'

export type { Network, Run } from './network-tree.ts'

export interface RunState {
  readonly id: string
  readonly flow_m3_s: number
  readonly velocity_m_s: number
  readonly reynolds: number
  readonly loss_m: number
  readonly inletHead_m: number
  readonly outletHead_m: number
  /** An open end that lies above the head there is. */
  readonly starved: boolean
}

export interface NetworkState {
  readonly flow_m3_s: number
  readonly pumpHead_m: number
  readonly runs: readonly RunState[]
  readonly byId: ReadonlyMap<string, RunState>
  /** Largest head by which an open end is out of balance. */
  readonly residual_m: number
  readonly iterations: number
}

/** Rounds after which the guarded way takes over; the usual tree settles in six to twelve. */
const ROUND_LIMIT = 40
/** A tenth of a micrometre of water: far below any reading, far above the rounding of the sums. */
const CLOSED_m = 1e-7

/** The tree laid out so that a tube comes before its branches, with the numbers of the search beside it. */
interface Work {
  readonly pump: (flow_m3_s: number) => HeadAndSlope
  readonly level_m: number
  readonly runs: readonly Run[]
  readonly parent: readonly number[]
  readonly laws: readonly PipeLaw[]
  /** Height of the open end; NaN where the tube branches or is dead. */
  readonly outlet: Float64Array
  readonly flow: Float64Array
  readonly inlet: Float64Array
  readonly loss: Float64Array
  readonly slope: Float64Array
  /** Head left over at an open end. */
  readonly over: Float64Array
  /** Change of flow as a + b × change of head at the upper end. */
  readonly a: Float64Array
  readonly b: Float64Array
}

function laidOut(network: Network): Work {
  const runs: Run[] = []
  const parent: number[] = []
  const lay = (run: Run, from: number) => {
    if (run.outlet_m !== undefined && (run.branches?.length ?? 0) > 0)
      throw new RangeError(`solveNetwork: run ${run.id} has an open end and branches`)
    const at = runs.push(run) - 1
    parent.push(from)
    for (const branch of run.branches ?? []) lay(branch, at)
  }
  lay(network.riser, -1)
  const column = () => new Float64Array(runs.length)
  return {
    pump: compiledPump(network.pump),
    level_m: network.level_m,
    runs,
    parent,
    laws: runs.map((run) => pipeLaw(run, network.viscosity_m2_s, network.gravity_m_s2)),
    outlet: Float64Array.from(runs, (run) => run.outlet_m ?? Number.NaN),
    flow: column(),
    inlet: column(),
    loss: column(),
    slope: column(),
    over: column(),
    a: column(),
    b: column(),
  }
}

const isOpen = (w: Work, i: number): boolean => !Number.isNaN(w.outlet[i]!)

/** Sums the flows of the open ends up the tree. */
function sumUp(w: Work): void {
  for (let i = w.runs.length - 1; i >= 0; i--) if (!isOpen(w, i)) w.flow[i] = 0
  for (let i = w.runs.length - 1; i > 0; i--) w.flow[w.parent[i]!]! += w.flow[i]!
}

/** Heads down the tree at the present flows; gives the largest head out of balance, and the slope of the pump. */
function headsDown(w: Work): Settled {
  const { head_m, slope } = w.pump(w.flow[0]!)
  let worst_m = 0
  for (let i = 0; i < w.runs.length; i++) {
    const up = w.parent[i]!
    w.inlet[i] = up < 0 ? w.level_m + head_m : w.inlet[up]! - w.loss[up]!
    const at = lossAndSlope(w.laws[i]!, w.flow[i]!)
    w.loss[i] = at.loss_m
    w.slope[i] = at.slope
    if (!isOpen(w, i)) continue
    const over = w.inlet[i]! - at.loss_m - w.outlet[i]!
    w.over[i] = over
    worst_m = Math.max(worst_m, w.flow[i]! > 0 ? Math.abs(over) : over)
  }
  return { worst_m, pumpSlope: slope }
}

/** Opens the shut ends that now lie below the head: half of what that head alone would drive. */
function openEnds(w: Work): boolean {
  let opened = false
  for (let i = 0; i < w.runs.length; i++) {
    if (!isOpen(w, i) || w.flow[i]! > 0 || w.over[i]! <= CLOSED_m) continue
    w.flow[i] = pipeFlow(w.laws[i]!, w.over[i]!) / 2
    opened = true
  }
  return opened
}

/** One Newton step for all open ends: sweep up for the draw of each tube, down for the change of each head. */
function step(w: Work, pumpSlope: number): void {
  const { a, b, flow, slope, over, parent } = w
  for (let i = 0; i < w.runs.length; i++) if (!isOpen(w, i)) a[i] = b[i] = 0
  for (let i = w.runs.length - 1; i >= 0; i--) {
    if (isOpen(w, i)) {
      const runs = flow[i]! > 0
      b[i] = runs ? 1 / slope[i]! : 0
      a[i] = runs ? over[i]! / slope[i]! : 0
    } else {
      const damped = 1 + b[i]! * slope[i]!
      a[i]! /= damped
      b[i]! /= damped
    }
    const up = parent[i]!
    if (up < 0) continue
    a[up]! += a[i]!
    b[up]! += b[i]!
  }
  // The change of head at the upper end of each tube replaces a: it is needed once, by the tubes below.
  const change = a[0]! / (1 - b[0]! * pumpSlope)
  let head = pumpSlope * change
  for (let i = 0; i < w.runs.length; i++) {
    const up = parent[i]!
    if (up >= 0) head = a[up]!
    const more = a[i]! + b[i]! * head
    if (isOpen(w, i)) flow[i] = Math.max(0, flow[i]! + more)
    a[i] = head - slope[i]! * more
  }
}

/**
 * Flows and heads of all tubes of a tree on one pump, none backward, and which open ends starve.
 *
 *   z_w + H_p(Σ q) − Σ_path h(Q) = z_i and q_i > 0, or ≤ z_i and q_i = 0, for each open end i
 *
 * Symbols  z_w level in the reservoir [m], H_p head of the pump [m], q_i flow of an open end [m³/s], Q sum of the flows
 *          below a tube [m³/s], h its loss [m], z_i height of the open end [m]
 * Valid    full tubes, ends open to the air; friction as `frictionFactor`
 * Source   TreeNetwork, with Darcy-Weisbach, Swamee-Jain and the cubic of the transition
 * Throws   RangeError where a tube or the pump is impossible, or a tube has an open end and branches
 */
export function solveNetwork(network: Network): NetworkState {
  const w = laidOut(network)
  const still_m = w.level_m + w.pump(0).head_m
  const start = startFlow(w, still_m)
  for (let i = 0; i < w.runs.length; i++) if (w.outlet[i]! < still_m) w.flow[i] = start
  let rounds = 0
  let state = settle(w)
  const best = { worst_m: state.worst_m, flow: w.flow.slice() }
  while (state.worst_m > CLOSED_m && rounds < ROUND_LIMIT) {
    state = advanced(w, state)
    if (state.worst_m < best.worst_m) {
      best.worst_m = state.worst_m
      best.flow.set(w.flow)
    }
    rounds++
  }
  if (state.worst_m <= CLOSED_m) return report(w, state.worst_m, rounds)
  const guarded = nestedFlows(network)
  w.flow.set(guarded.flows)
  if (settle(w).worst_m > best.worst_m) w.flow.set(best.flow)
  return report(w, settle(w).worst_m, rounds + guarded.steps)
}

interface Settled {
  readonly worst_m: number
  readonly pumpSlope: number
}

/** One round: the Newton step, and the ends that it opens. */
function advanced(w: Work, from: Settled): Settled {
  step(w, from.pumpSlope)
  const state = settle(w)
  return openEnds(w) ? settle(w) : state
}

function settle(w: Work): Settled {
  sumUp(w)
  return headsDown(w)
}

/** Where the pump would give half of the head between still water and the lowest end, shared among the ends. */
function startFlow(w: Work, still_m: number): number {
  let ends = 0
  let lowest = still_m
  for (let i = 0; i < w.runs.length; i++) {
    if (!(w.outlet[i]! < still_m)) continue
    ends++
    lowest = Math.min(lowest, w.outlet[i]!)
  }
  if (ends === 0) return 0
  const half = (still_m - lowest) / 2
  let flow = pipeFlow(w.laws[0]!, half)
  for (let k = 0; k < 30 && w.pump(flow).head_m < still_m - w.level_m - half; k++) flow /= 2
  return flow / ends
}

function report(w: Work, residual_m: number, iterations: number): NetworkState {
  const runs = w.runs.map((run, i): RunState => {
    const flow_m3_s = w.flow[i]!
    return {
      id: run.id,
      flow_m3_s,
      velocity_m_s: flow_m3_s / ((Math.PI / 4) * run.bore_m ** 2),
      reynolds: w.laws[i]!.reynoldsPerFlow * flow_m3_s,
      loss_m: w.loss[i]!,
      inletHead_m: w.inlet[i]!,
      outletHead_m: w.inlet[i]! - w.loss[i]!,
      starved: isOpen(w, i) && flow_m3_s === 0,
    }
  })
  return {
    flow_m3_s: w.flow[0]!,
    pumpHead_m: w.inlet[0]! - w.level_m,
    runs,
    byId: new Map(runs.map((run) => [run.id, run])),
    residual_m,
    iterations,
  }
}
