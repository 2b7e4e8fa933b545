/** A pump and ten columns: built and solved by us, against open, build, solve and close in EPANET. */
import { type Network, type Run, solveNetwork } from '../src/disciplines/hydraulics/network.ts'
import { EPANET_GRAVITY_m_s2, EPANET_VISCOSITY_m2_s } from '../test/epanet-constants.ts'
import { epanetAnswer, epanetWorkspace } from '../test/epanet-network.ts'

const COLUMNS = 10
const REPEATS = 41
const WARM_UPS = 15
const FLOW_WITHIN = 0.005
const HEAD_WITHIN_m = 0.005

const plastic = { roughness_m: 1.5e-6 }

/** Built anew for each repeat, so that building counts. All ten columns run, so that every flow and head compares. */
function tenColumns(): Network {
  const from = (i: number): Run => {
    const outlet_m = 1.8 + 0.03 * i
    const column: Run = { id: `c${i}`, length_m: 1.7 + 0.03 * i, bore_m: 0.013, fittingLoss: 4, outlet_m, ...plastic }
    const branches = i + 1 < COLUMNS ? [column, from(i + 1)] : [column]
    return { id: `h${i}`, length_m: 0.6, bore_m: 0.025, fittingLoss: 0.5, branches, ...plastic }
  }
  return {
    level_m: 0.3,
    pump: { kind: 'shape', shutoff_m: 5, runout_m3_s: 2e-3, exponent: 1.7 },
    riser: from(0),
    viscosity_m2_s: EPANET_VISCOSITY_m2_s,
    gravity_m_s2: EPANET_GRAVITY_m_s2,
  }
}

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!

function timed(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}

async function run() {
  const workspace = await epanetWorkspace()
  const [ours, theirs] = [solveNetwork(tenColumns()), epanetAnswer(workspace, tenColumns())]
  let [flowOff, headOff_m] = [0, 0]
  for (const tube of ours.runs) {
    flowOff = Math.max(flowOff, Math.abs(tube.flow_m3_s / theirs.flow_m3_s.get(tube.id)! - 1))
    headOff_m = Math.max(headOff_m, Math.abs(tube.outletHead_m - theirs.outletHead_m.get(tube.id)!))
  }
  const own: number[] = []
  const engine: number[] = []
  for (let i = 0; i < WARM_UPS + REPEATS; i++) {
    const turns = [
      () => own.push(timed(() => solveNetwork(tenColumns()))),
      () => engine.push(timed(() => epanetAnswer(workspace, tenColumns()))),
    ]
    for (const turn of i % 2 === 0 ? turns : turns.reverse()) turn()
  }
  const [own_ms, engine_ms] = [median(own.slice(WARM_UPS)), median(engine.slice(WARM_UPS))]
  return [
    {
      label: `${COLUMNS} columns: build and solve, against open, build, solve and close in EPANET`,
      agreed: flowOff <= FLOW_WITHIN && headOff_m <= HEAD_WITHIN_m,
      detail:
        `flows within ${(flowOff * 100).toFixed(4)} %, heads within ${(headOff_m * 1000).toFixed(3)} mm; ` +
        `${own_ms.toFixed(3)} ms against ${engine_ms.toFixed(3)} ms`,
      ratio: own_ms / engine_ms,
      limit: 1,
    },
  ]
}

export const bench = { name: 'hydraulics', run }
