import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { CutsFacts, MaterialCuts, MaterialKind } from './from-plan.ts'

const lengthAt: Readonly<Record<MaterialKind, string>> = {
  column: 'column/length',
  stub: 'column/stub/lowerSide',
  hose: 'riser/length',
  return: 'drain/length',
}
const pipeAt: Readonly<Record<MaterialKind, string>> = {
  column: 'column/pipe',
  stub: 'column/stub/pipe',
  hose: 'riser/bore',
  return: 'drain/bore',
}

/** Steps that a tape shows and a saw can keep. */
const STEP_m = 0.001

/** How many more lengths on hand a remedy may ask for. */
const MORE = 40

/** One piece is longer than any stick. */
function longestPiece(m: MaterialCuts): Finding[] {
  const at = lengthAt[m.of]
  const terms = { at, source: 'Stick.rule' as const }
  if (m.needs.length > 0)
    return m.of === 'hose' || m.of === 'return' ? [] : [unknown('cuts/longest-piece', { ...terms, needs: m.needs })]
  if (m.usable_m === null || m.pieces.length === 0) return []
  const wedge_m = m.longest_m - Math.max(...m.pieces.map((p) => p.length_m))
  const levers: Lever[] =
    m.of === 'hose' || m.of === 'return'
      ? []
      : [along(at, Math.max(STEP_m, m.usable_m - wedge_m - STEP_m), 'm', STEP_m)]
  return [
    judge('cuts/longest-piece', quantity(m.longest_m, 'm'), {
      ...terms,
      must: { max: m.usable_m },
      slots: { over: quantity(Math.max(0, m.longest_m - m.usable_m), 'm'), what: m.of },
      levers,
    }),
  ]
}

/** A mitre that runs out through the square end of its own stub. */
function shortStub(m: MaterialCuts): Finding[] {
  const piece = m.pieces[0]
  if (m.of !== 'stub' || piece === undefined || piece.cut.kind !== 'mitre') return []
  const { angle_rad, radius_m } = piece.cut
  const at = lengthAt.stub
  return [
    judge('cuts/short-stub', quantity(piece.length_m, 'm'), {
      at,
      source: 'Stick.rule',
      must: { min: radius_m / Math.tan(angle_rad) },
      levers: [along(at, piece.length_m + 4 * radius_m, 'm', STEP_m)],
    }),
  ]
}

/** What is wanted least, sticks, metres or money, against the least that any plan can have. */
function proved(m: MaterialCuts): Finding[] {
  if (m.plan === null || m.plan.status === 'nothing-to-cut' || m.plan.status === 'short-of-stock') return []
  const { value, bound, objective } = m.plan
  return [
    judge('cuts/proved', quantity(Math.max(0, value - bound), objective), {
      at: pipeAt[m.of],
      source: 'Stick.rule',
      want: { max: 0 },
      slots: { value: quantity(value, objective), sticks: m.plan.sticks.length, what: m.of },
    }),
  ]
}

/** Pieces for which the lengths on hand do not reach. */
function stockEnough(m: MaterialCuts): Finding[] {
  if (m.job === null || m.plan === null) return []
  const short = m.plan.issues.reduce((sum, i) => sum + (i.reason === 'stock-used-up' ? i.count : 0), 0)
  const levers = m.job.offcuts.map((o) => {
    const more = Array.from({ length: MORE }, (_, i) => o.count + i + 1)
    return among(`${o.id}/count`, more)
  })
  const wanted = m.pieces.reduce((sum, p) => sum + p.count, 0)
  return [
    judge('cuts/stock-enough', quantity(short, 'count'), {
      at: pipeAt[m.of],
      source: 'Stick.rule',
      must: { max: 0 },
      slots: { wanted, what: m.of },
      levers,
    }),
  ]
}

/** Judges what is to be cut and from what. */
export const cutsFindings = (cuts: CutsFacts): readonly Finding[] =>
  cuts.materials.flatMap((m) => [...longestPiece(m), ...shortStub(m), ...proved(m), ...stockEnough(m)])
