/** Builds one of our trees in the open hydraulic engine EPANET, as an independent answer for tests and races. */
import {
  CurveType,
  FlowUnits,
  HeadLossType,
  InitHydOption,
  LinkProperty,
  LinkType,
  NodeProperty,
  NodeType,
  Option,
  Project,
  Workspace,
} from 'epanet-js'
import type { Network, Run } from '../src/disciplines/hydraulics/network.ts'
import { EPANET_VISCOSITY_m2_s } from './epanet-constants.ts'

const M3S_PER_LPM = 1 / 60_000

export interface EpanetAnswer {
  readonly flow_m3_s: ReadonlyMap<string, number>
  /** Head at the lower end of each tube. */
  readonly outletHead_m: ReadonlyMap<string, number>
}

export async function epanetWorkspace(): Promise<Workspace> {
  const workspace = new Workspace()
  await workspace.loadModule()
  return workspace
}

const allRuns = (run: Run): Run[] => [run, ...(run.branches ?? []).flatMap(allRuns)]

function reservoir(project: Project, id: string, head_m: number): void {
  project.addNode(id, NodeType.Reservoir)
  project.setNodeValue(project.getNodeIndex(id), NodeProperty.Elevation, head_m)
}

function setPump(project: Project, network: Network): void {
  if (network.pump.kind !== 'shape') throw new RangeError('epanet: only shapes are built')
  const { shutoff_m, runout_m3_s, exponent } = network.pump
  project.addCurve('curve')
  const index = project.getCurveIndex('curve')
  const shares = [0, 0.4, 0.8]
  project.setCurveType(index, CurveType.PumpCurve)
  project.setCurve(
    index,
    shares.map((x) => (x * runout_m3_s) / M3S_PER_LPM),
    shares.map((x) => shutoff_m * (1 - x ** exponent)),
  )
  project.addLink('pump', LinkType.Pump, 'source', 'top')
  project.setHeadCurveIndex(project.getLinkIndex('pump'), index)
}

/** Opens, builds, solves, reads and closes. Junctions come before reservoirs: later junctions would renumber them. */
export function epanetAnswer(workspace: Workspace, network: Network): EpanetAnswer {
  const project = new Project(workspace)
  const runs = allRuns(network.riser)
  project.init('report.rpt', 'out.bin', FlowUnits.LPM, HeadLossType.DW)
  project.setOption(Option.SpViscos, network.viscosity_m2_s / EPANET_VISCOSITY_m2_s)
  project.setOption(Option.Accuracy, 1e-6)
  project.setOption(Option.Trials, 500)
  project.addNode('top', NodeType.Junction)
  for (const run of runs) if (run.outlet_m === undefined) project.addNode(`end-${run.id}`, NodeType.Junction)
  reservoir(project, 'source', network.level_m)
  for (const run of runs) if (run.outlet_m !== undefined) reservoir(project, `end-${run.id}`, run.outlet_m)
  setPump(project, network)
  const add = (run: Run, from: string) => {
    project.addLink(run.id, run.outlet_m === undefined ? LinkType.Pipe : LinkType.CVPipe, from, `end-${run.id}`)
    const index = project.getLinkIndex(run.id)
    project.setPipeData(index, run.length_m, run.bore_m * 1000, run.roughness_m * 1000, run.fittingLoss)
    for (const branch of run.branches ?? []) add(branch, `end-${run.id}`)
  }
  add(network.riser, 'top')
  project.openH()
  project.initH(InitHydOption.NoSave)
  project.runH()
  const flow_m3_s = new Map<string, number>()
  const outletHead_m = new Map<string, number>()
  for (const run of runs) {
    flow_m3_s.set(run.id, project.getLinkValue(project.getLinkIndex(run.id), LinkProperty.Flow) * M3S_PER_LPM)
    outletHead_m.set(run.id, project.getNodeValue(project.getNodeIndex(`end-${run.id}`), NodeProperty.Head))
  }
  project.closeH()
  project.close()
  return { flow_m3_s, outletHead_m }
}
