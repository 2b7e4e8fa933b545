import { describe, expect, it } from 'vitest'
import { type CutJob, cutPlan, type Improve, improvedCutPlan } from '../../disciplines/cuts/index.ts'
import { modelOf } from '../../disciplines/cuts/model.ts'
import { pack } from '../../disciplines/cuts/pack.ts'
import { improvedBy, loadSolver } from './highs.ts'

/** Longest first needs three sticks; 6 + 4 + 2 and 5 + 5 + 2 fill two. Steps are cut off before the search sees it. */
const job: CutJob = {
  pieces: [6, 5, 5, 4, 2, 2].map((dm, i) => ({ id: `p${i}`, count: 1, length_m: dm / 10, cut: { kind: 'square' } })),
  purchase: [{ id: 'stick', length_m: 1.2, socket_m: 0, price_money: null }],
  offcuts: [],
  kerf_m: 0,
  trim_m: 0,
  share: true,
  steps_count: 0,
}

/** Stubs in pairs, an odd one, and parallel pieces between them. */
const mitred: CutJob = {
  ...job,
  pieces: [
    { id: 'stub', count: 7, length_m: 0.21, cut: { kind: 'mitre', angle_rad: Math.PI / 4, radius_m: 0.03 } },
    { id: 'link', count: 3, length_m: 0.25, cut: { kind: 'parallel', angle_rad: Math.PI / 4, radius_m: 0.03 } },
    { id: 'post', count: 3, length_m: 0.55, cut: { kind: 'square' } },
  ],
  kerf_m: 0.003,
}

describe('the solver package', () => {
  it('closes the gap of a plan whose search was cut off', async () => {
    expect(cutPlan(job)).toMatchObject({ status: 'gap', value: 3, bound: 2 })
    const solver = (await loadSolver())!
    const plan = await improvedCutPlan(job, improvedBy(solver, 10))
    expect(plan).toMatchObject({ status: 'proved-best', value: 2, bound: 2 })
    expect(plan.sticks.flatMap((s) => s.pieces.map((p) => p.id)).sort()).toEqual(['p0', 'p1', 'p2', 'p3', 'p4', 'p5'])
  })

  it('agrees with the search on mitred and parallel pieces', async () => {
    const solver = (await loadSolver())!
    for (const posts of [0, 1, 2, 3, 4, 5]) {
      const pieces = [...mitred.pieces.slice(0, 2), { ...mitred.pieces[2]!, count: posts }]
      const { model } = modelOf({ ...mitred, pieces })
      const ours = pack(model!, { left: 20_000 })!
      const loose = { ...ours, packing: { ...ours.packing, cost: ours.packing.cost + 1 } }
      const theirs = await improvedBy(solver, 20)(model!, loose)
      expect(ours.packing.cost).toBe(ours.bound)
      expect(theirs.packing?.cost, `${posts} posts`).toBe(ours.packing.cost)
      expect(Math.round(theirs.bound)).toBe(ours.packing.cost)
    }
  })

  it('is not believed when its sticks are overfull or pieces are missing', async () => {
    const lie: Improve = async (model) => {
      const counts = Int32Array.from(model.counts)
      return { packing: { loads: [{ bin: 0, counts }], cost: 1 }, bound: 0 }
    }
    expect(await improvedCutPlan(job, lie)).toMatchObject({ status: 'gap', value: 3 })
    const part: Improve = async () => ({ packing: { loads: [], cost: 0 }, bound: 0 })
    expect(await improvedCutPlan(job, part)).toMatchObject({ status: 'gap', value: 3 })
  })
})
