/** Seeded trees of tower size: a riser, headers that branch, and open ends of which some lie too high. */
import type { Network, Run } from '../src/disciplines/hydraulics/network.ts'
import { EPANET_GRAVITY_m_s2, EPANET_VISCOSITY_m2_s } from './epanet-constants.ts'

/** A small repeatable stream of numbers in 0 to 1 (Park and Miller). */
export function stream(seed: number): () => number {
  let state = (seed * 48271) % 2147483647
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}

const BORES = [0.01, 0.013, 0.016, 0.019, 0.025]

function randomRun(next: () => number, depth: number, names: { count: number }): Run {
  const between = (low: number, high: number) => low + (high - low) * next()
  const tube = {
    length_m: between(0.3, 3),
    bore_m: BORES[Math.floor(next() * BORES.length)]!,
    roughness_m: next() < 0.5 ? 1.5e-6 : 1e-5,
    fittingLoss: between(0, 8),
  }
  const serial = names.count++
  if (depth === 0 || next() < 0.35) return { id: `e${serial}`, ...tube, outlet_m: between(0.6, 3.4) }
  const width = 1 + Math.floor(next() * 4)
  const branches = Array.from({ length: width }, () => randomRun(next, depth - 1, names))
  return { id: `h${serial}`, ...tube, branches }
}

export function randomNetwork(seed: number): Network {
  const next = stream(seed)
  next()
  const depth = 1 + Math.floor(next() * 4)
  const branches = Array.from({ length: 1 + Math.floor(next() * 4) }, (_, i) =>
    randomRun(next, depth, { count: i * 1000 }),
  )
  return {
    level_m: 0.1 + 0.3 * next(),
    pump: {
      kind: 'shape',
      shutoff_m: 1.5 + 4 * next(),
      runout_m3_s: (8 + 60 * next()) / 60_000,
      exponent: 1 + next(),
    },
    viscosity_m2_s: EPANET_VISCOSITY_m2_s * (0.7 + 0.9 * next()),
    gravity_m_s2: EPANET_GRAVITY_m_s2,
    riser: {
      id: 'riser',
      length_m: 0.3 + 2 * next(),
      bore_m: BORES[1 + Math.floor(next() * 4)]!,
      roughness_m: 1.5e-6,
      fittingLoss: 3 * next(),
      branches,
    },
  }
}
