import type { Workspace } from 'epanet-js'
import { beforeAll, describe, expect, it } from 'vitest'
import { type Network, type Run, solveNetwork } from '../src/disciplines/hydraulics/network.ts'
import { lossAndSlope, pipeLaw } from '../src/disciplines/hydraulics/pipe-law.ts'
import { EPANET_GRAVITY_m_s2, EPANET_VISCOSITY_m2_s } from './epanet-constants.ts'
import { epanetAnswer, epanetWorkspace } from './epanet-network.ts'
import { randomNetwork } from './random-network.ts'

const LPM = 1 / 60_000

/** The engine leaves 1e-6 ft³/s (0.0017 L/min) in each closed link; a header of several may show their sum. */
const DRY_m3_s = 0.01 * LPM

let workspace: Workspace
beforeAll(async () => {
  workspace = await epanetWorkspace()
})

const smooth = { roughness_m: 1.5e-6 }
const engine = { viscosity_m2_s: EPANET_VISCOSITY_m2_s, gravity_m_s2: EPANET_GRAVITY_m_s2 }

describe('200 random trees against EPANET with the same friction law', () => {
  it('agrees in flows within 0.5 %, heads within 5 mm, and starved ends', () => {
    const starved = { ours: 0, ends: 0 }
    for (let seed = 1; seed <= 200; seed++) {
      const network = randomNetwork(seed)
      const ours = solveNetwork(network)
      const theirs = epanetAnswer(workspace, network)
      for (const run of ours.runs) {
        const flow = theirs.flow_m3_s.get(run.id)!
        const at = `seed ${seed}, run ${run.id}: ${run.flow_m3_s / LPM} and ${flow / LPM} L/min`
        expect(Math.abs(run.flow_m3_s - flow), at).toBeLessThanOrEqual(Math.max(0.005 * flow, DRY_m3_s))
        const isEnd = theirs.outletHead_m.has(run.id)
        if (!run.starved && isEnd && flow > DRY_m3_s)
          expect(Math.abs(run.outletHead_m - theirs.outletHead_m.get(run.id)!), at).toBeLessThan(0.005)
        if (run.starved) {
          starved.ours++
          expect(flow, at).toBeLessThan(DRY_m3_s)
        }
        starved.ends += run.id.startsWith('e') ? 1 : 0
      }
    }
    // The set must try both: many ends that run and many that starve.
    expect(starved.ours).toBeGreaterThan(100)
    expect(starved.ends - starved.ours).toBeGreaterThan(500)
  })
})

const shape = (shutoff_m: number, runout_lpm: number, exponent: number) =>
  ({ kind: 'shape', shutoff_m, runout_m3_s: runout_lpm * LPM, exponent }) as const

const pipe = (id: string, length_m: number, bore_m: number, fittingLoss: number, rest: Partial<Run>): Run => ({
  id,
  length_m,
  bore_m,
  fittingLoss,
  ...smooth,
  ...rest,
})

const threeColumns: Network = {
  ...engine,
  level_m: 0.3,
  pump: shape(3.5, Math.sqrt(3.5 * 450), 2),
  riser: pipe('J0-M1', 0.6, 0.019, 1.5, {
    branches: [
      pipe('T1', 1.7, 0.013, 4, { outlet_m: 1.8 }),
      pipe('M1-M2', 0.8, 0.019, 0.5, {
        branches: [
          pipe('T2', 1.9, 0.013, 4, { outlet_m: 2 }),
          pipe('M2-M3', 0.8, 0.019, 0.5, { branches: [pipe('T3', 2.1, 0.013, 4, { outlet_m: 2.2 })] }),
        ],
      }),
    ],
  }),
}

// Its accuracy is a relative change of flow of about 1e-5 here, so four to five digits are compared.
describe('networks computed beforehand with EPANET', () => {
  it('N-A: a single riser', () => {
    const state = solveNetwork({
      ...engine,
      level_m: 0.3,
      pump: shape(3, Math.sqrt(3 / 0.006), 2),
      riser: pipe('riser', 2.3, 0.013, 4.5, { outlet_m: 2.2 }),
    })
    expect(state.flow_m3_s / LPM).toBeCloseTo(8.97896, 3)
    expect(state.byId.get('riser')!.inletHead_m).toBeCloseTo(2.81627, 4)
    expect(state.byId.get('riser')!.loss_m).toBeCloseTo(0.61627, 4)
    expect(state.pumpHead_m).toBeCloseTo(2.51627, 4)
    expect(state.byId.get('riser')!.velocity_m_s).toBeCloseTo(1.12746, 4)
  })

  it('N-B: three columns with open tops at 1.80, 2.00 and 2.20 m', () => {
    const state = solveNetwork(threeColumns)
    const flow = (id: string) => state.byId.get(id)!.flow_m3_s / LPM
    expect(state.flow_m3_s / LPM).toBeCloseTo(22.7865, 3)
    expect(flow('T1')).toBeCloseTo(10.2306, 3)
    expect(flow('T2')).toBeCloseTo(7.6447, 3)
    expect(flow('T3')).toBeCloseTo(4.9112, 3)
    expect(state.byId.get('J0-M1')!.inletHead_m).toBeCloseTo(2.64617, 4)
    expect(state.byId.get('J0-M1')!.outletHead_m).toBeCloseTo(2.43787, 4)
    expect(state.byId.get('M1-M2')!.outletHead_m).toBeCloseTo(2.39057, 4)
    expect(state.byId.get('M2-M3')!.outletHead_m).toBeCloseTo(2.3818, 4)
    expect(state.pumpHead_m).toBeCloseTo(2.34617, 4)
  })

  it('N-B at the viscosity of 20 °C', () => {
    const state = solveNetwork({ ...threeColumns, viscosity_m2_s: 0.981864 * EPANET_VISCOSITY_m2_s })
    const flow = (id: string) => state.byId.get(id)!.flow_m3_s / LPM
    expect(state.flow_m3_s / LPM).toBeCloseTo(22.7953, 3)
    expect(flow('T1')).toBeCloseTo(10.2361, 3)
    expect(flow('T2')).toBeCloseTo(7.6485, 3)
    expect(flow('T3')).toBeCloseTo(4.9108, 3)
    expect(state.pumpHead_m).toBeCloseTo(2.34527, 4)
  })

  it('N-F: loss of 10 m of 13 mm from laminar through the transition to turbulent', () => {
    const tube = pipe('', 10, 0.013, 0, {})
    const law = pipeLaw(tube, EPANET_VISCOSITY_m2_s, EPANET_GRAVITY_m_s2)
    const printed = [
      [0.5, 0.012378],
      [1, 0.024757],
      [1.5, 0.040332],
      [2, 0.087514],
      [3, 0.214012],
      [6, 0.701499],
    ] as const
    for (const [flow, loss] of printed)
      expect(Math.abs(lossAndSlope(law, flow * LPM).loss_m / loss - 1), `${flow} L/min`).toBeLessThan(2e-4)
  })

  it('P2: a pump of three points and 800 m of 200 mm', () => {
    const state = solveNetwork({
      ...engine,
      level_m: 5,
      pump: {
        kind: 'shape',
        shutoff_m: 50,
        runout_m3_s: (50 / 0.0455846) ** (1 / Math.log2(3)) / 1000,
        exponent: Math.log2(3),
      },
      riser: { id: 'main', length_m: 800, bore_m: 0.2, roughness_m: 0.0005, fittingLoss: 0, outlet_m: 30 },
    })
    expect(state.flow_m3_s * 1000).toBeCloseTo(40.713, 2)
    expect(state.pumpHead_m).toBeCloseTo(33.775, 2)
    expect(state.byId.get('main')!.velocity_m_s).toBeCloseTo(1.2959, 3)
  })
})
