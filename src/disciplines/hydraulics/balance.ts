/**
 * Evening the columns on one pump: what each branch must throttle, or which bore it should have.
 *
 * With the flows of all ends given as shares of one flow q, every head in the tree is known without a search, and so is
 * the head that is left at each end. It falls as q grows; the largest q that leaves none negative is the most that the
 * pump can give evenly, and what is left at the other ends is what their valves must take.
 */
import { root } from '../../kernel/solve.ts'
import type { Network, Run } from './network-tree.ts'
import { lossAndSlope, pipeLaw } from './pipe-law.ts'
import { compiledPump } from './pump-law.ts'

export interface BalancedEnd {
  readonly id: string
  readonly flow_m3_s: number
  /** Head that the valve of this branch must take; zero at the end that is hardest to reach. */
  readonly valveHead_m: number
  /** Loss coefficient of that valve on the bore of the branch. */
  readonly valveLoss: number
}

export interface Balance {
  /** Flow of an end of share 1. */
  readonly flow_m3_s: number
  readonly ends: readonly BalancedEnd[]
  /** The network with the valves set, to be solved as any other. */
  readonly network: Network
}

/** Head left at each open end when the ends draw their shares of a flow. */
function headsLeft(network: Network, flow: number, shareOf: (id: string) => number): ReadonlyMap<string, number> {
  const sum = (run: Run): number =>
    run.outlet_m === undefined ? (run.branches ?? []).reduce((s, b) => s + sum(b), 0) : flow * shareOf(run.id)
  const left = new Map<string, number>()
  const down = (run: Run, head: number) => {
    const law = pipeLaw(run, network.viscosity_m2_s, network.gravity_m_s2)
    const below = head - lossAndSlope(law, sum(run)).loss_m
    if (run.outlet_m !== undefined) left.set(run.id, below - run.outlet_m)
    for (const branch of run.branches ?? []) down(branch, below)
  }
  const total = sum(network.riser)
  down(network.riser, network.level_m + compiledPump(network.pump)(total).head_m)
  return left
}

function withValves(run: Run, lossOf: ReadonlyMap<string, number>): Run {
  const branches = run.branches?.map((branch) => withValves(branch, lossOf))
  const fittingLoss = run.fittingLoss + (lossOf.get(run.id) ?? 0)
  return { ...run, fittingLoss, ...(branches === undefined ? {} : { branches }) }
}

function openEnds(run: Run): readonly Run[] {
  return run.outlet_m === undefined ? (run.branches ?? []).flatMap(openEnds) : [run]
}

/**
 * Valves that give each open end its share, at the largest flow the pump can give so. Null where an end lies above the
 * shut-off head, so that nothing can be even.
 */
export function balance(network: Network, shares: ReadonlyMap<string, number> = new Map()): Balance | null {
  const shareOf = (id: string) => shares.get(id) ?? 1
  const ends = openEnds(network.riser)
  const least = (flow: number) => Math.min(...headsLeft(network, flow, shareOf).values())
  if (ends.length === 0 || !(least(0) > 0)) return null
  let high = 1e-6
  while (least(high) > 0) high *= 2
  const flow_m3_s = root({ of: least, low: 0, high, within: 1e-13 })
  const left = headsLeft(network, flow_m3_s, shareOf)
  const set = ends.map((end): BalancedEnd => {
    const flow = flow_m3_s * shareOf(end.id)
    const valveHead_m = Math.max(0, left.get(end.id)!)
    const perLoss = lossAndSlope(
      pipeLaw({ ...end, fittingLoss: 1 }, network.viscosity_m2_s, network.gravity_m_s2),
      flow,
    )
    const without = lossAndSlope(
      pipeLaw({ ...end, fittingLoss: 0 }, network.viscosity_m2_s, network.gravity_m_s2),
      flow,
    )
    return { id: end.id, flow_m3_s: flow, valveHead_m, valveLoss: valveHead_m / (perLoss.loss_m - without.loss_m) }
  })
  const lossOf = new Map(set.map((end) => [end.id, end.valveLoss]))
  return { flow_m3_s, ends: set, network: { ...network, riser: withValves(network.riser, lossOf) } }
}

/** Spread of the flows of the open ends: (largest − smallest)/mean. Zero is even, above one something starves. */
export function flowSpread(flows_m3_s: readonly number[]): number {
  const mean = flows_m3_s.reduce((sum, q) => sum + q, 0) / flows_m3_s.length
  return mean > 0 ? (Math.max(...flows_m3_s) - Math.min(...flows_m3_s)) / mean : 0
}

/** The bore of a branch that takes up by itself what its valve would take at the common flow. Fittings keep their coefficients, each on the new bore. */
function boreInstead(network: Network, end: Run, valve: BalancedEnd): number {
  const lossAt = (bore_m: number) =>
    lossAndSlope(pipeLaw({ ...end, bore_m }, network.viscosity_m2_s, network.gravity_m_s2), valve.flow_m3_s).loss_m
  const wanted = lossAt(end.bore_m) + valve.valveHead_m
  let low = end.bore_m
  while (lossAt(low) < wanted) low /= 2
  return low === end.bore_m ? low : root({ of: (b) => lossAt(b) - wanted, low, high: end.bore_m, within: 1e-7 })
}

/** Bores that even the branches of a balanced network without a valve: for each end the bore that does what its valve does. */
export function boresOf(network: Network, even: Balance): ReadonlyMap<string, number> {
  const valves = new Map(even.ends.map((e) => [e.id, e]))
  return new Map(openEnds(network.riser).map((end) => [end.id, boreInstead(network, end, valves.get(end.id)!)]))
}

/** The same for a network that is not balanced yet; null where nothing can be even. */
export function evenBores(
  network: Network,
): { readonly flow_m3_s: number; readonly bore_m: ReadonlyMap<string, number> } | null {
  const even = balance(network)
  return even === null ? null : { flow_m3_s: even.flow_m3_s, bore_m: boresOf(network, even) }
}
