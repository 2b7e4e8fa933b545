/** The smallest changes after which every site gets water, each proved by the map itself. */
import type { WettingCase } from './wetting-map.ts'
import { cloggedWetting } from './wetting-map.ts'

export interface WettingChange {
  /** What is changed: the turn of the plate, the lean, the number of holes, or the flow. */
  readonly what: 'first_rad' | 'lean_rad' | 'count' | 'flow_m3_s'
  readonly from: number
  readonly to: number
  /** Size of the change: share of the value, for a turn share of the pitch of the holes. */
  readonly size: number
}

export interface WettingLimits {
  readonly cloggedShare: number
  readonly mostFlow_m3_s: number
  readonly mostHoles: number
}

const STEPS = 24

const allWet = (c: WettingCase, cloggedShare: number): boolean =>
  cloggedWetting(c, cloggedShare).every((s) => s.reached)

function turned(c: WettingCase, limits: WettingLimits): WettingChange | null {
  const pitch = (2 * Math.PI) / c.holes.count
  for (let step = 1; step <= STEPS; step++) {
    for (const sign of [1, -1]) {
      const to = c.holes.first_rad + (sign * step * pitch) / (2 * STEPS)
      if (!allWet({ ...c, holes: { ...c.holes, first_rad: to } }, limits.cloggedShare)) continue
      return { what: 'first_rad', from: c.holes.first_rad, to, size: step / (2 * STEPS) }
    }
  }
  return null
}

function levelled(c: WettingCase, limits: WettingLimits): WettingChange | null {
  for (let step = STEPS - 1; step >= 0; step--) {
    const to = (c.lean_rad * step) / STEPS
    if (c.lean_rad !== 0 && allWet({ ...c, lean_rad: to }, limits.cloggedShare))
      return { what: 'lean_rad', from: c.lean_rad, to, size: 1 - step / STEPS }
  }
  return null
}

function withHoles(c: WettingCase, limits: WettingLimits): WettingChange | null {
  const from = c.holes.count
  for (let to = from + 1; to <= limits.mostHoles; to++)
    if (allWet({ ...c, holes: { ...c.holes, count: to } }, limits.cloggedShare))
      return { what: 'count', from, to, size: (to - from) / from }
  return null
}

/** Strips only widen with the flow, so halving finds the least that wets all. */
function withFlow(c: WettingCase, limits: WettingLimits): WettingChange | null {
  const from = c.flow_m3_s
  const wet = (flow_m3_s: number) => allWet({ ...c, flow_m3_s }, limits.cloggedShare)
  if (!(limits.mostFlow_m3_s > from) || !wet(limits.mostFlow_m3_s)) return null
  let [low, high] = [from, limits.mostFlow_m3_s]
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2
    if (wet(middle)) high = middle
    else low = middle
  }
  return { what: 'flow_m3_s', from, to: high, size: high / from - 1 }
}

/** Changes that wet every site, the smallest first; empty where all are wet, or where no single change does it. */
export function wettingChanges(c: WettingCase, limits: WettingLimits): readonly WettingChange[] {
  if (!(c.flow_m3_s > 0) || allWet(c, limits.cloggedShare)) return []
  return [turned, levelled, withHoles, withFlow]
    .map((change) => change(c, limits))
    .filter((change) => change !== null)
    .sort((a, b) => a.size - b.size)
}
