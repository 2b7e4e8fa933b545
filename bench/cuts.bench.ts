import { performance } from 'node:perf_hooks'
import load from 'highs'
import { cutPlan } from '../src/disciplines/cuts/index.ts'
import type { CutJob, Piece } from '../src/disciplines/cuts/job.ts'
import { modelOf } from '../src/disciplines/cuts/model.ts'
import { program } from '../src/shells/solver/highs.ts'

export interface Row {
  readonly label: string
  readonly agreed: boolean
  readonly detail: string
  /** Our time over the solver's, at the median. */
  readonly ratio: number
  readonly limit: number
}

const SEEDS = 20
const LENGTHS = 12
const TIMES_EACH = 5
const SOLVER_LIMIT_s = 10

/** Sixty pieces of twelve lengths from 150 to 1000 mm, for 3 m sticks and a 3 mm kerf; the same for the same seed. */
function jobOf(seed: number): CutJob {
  let state = Math.imul(seed, 2654435761) >>> 0
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
  const pieces = Array.from({ length: LENGTHS }, (_, i): Piece => {
    const length_m = (150 + Math.floor(next() * 851)) / 1000
    return { id: `p${i}`, count: TIMES_EACH, length_m, cut: { kind: 'square' } }
  })
  const purchase = [{ id: '3 m', length_m: 3, socket_m: 0, price_money: null }]
  return { pieces, purchase, offcuts: [], kerf_m: 0.003, trim_m: 0, share: true }
}

/** Sticks of the plan that takes the pieces longest first and each onto the first stick with room: what the solver may use. */
function firstFit(lengths: readonly number[]): number {
  const rooms: number[] = []
  for (const length_m of [...lengths].sort((a, b) => b - a)) {
    const at = rooms.findIndex((room) => room >= length_m + 0.003 - 1e-9)
    if (at < 0) rooms.push(3.003 - length_m - 0.003)
    else rooms[at]! -= length_m + 0.003
  }
  return rooms.length
}

const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!

async function run(): Promise<Row[]> {
  const solver = await load()
  const ours_ms: number[] = []
  const theirs_ms: number[] = []
  const worse: string[] = []
  let proved = 0
  let open = 0
  for (let seed = 1; seed <= SEEDS; seed++) {
    const job = jobOf(seed)
    const { model } = modelOf(job)
    const lengths = job.pieces.flatMap((p) => Array.from({ length: p.count }, () => p.length_m))
    const from = performance.now()
    const plan = cutPlan(job)
    const between = performance.now()
    const sticks = Array.from({ length: firstFit(lengths) }, () => 0)
    const answer = solver.solve(program(model!, sticks), { time_limit: SOLVER_LIMIT_s, mip_rel_gap: 0 })
    theirs_ms.push(performance.now() - between)
    ours_ms.push(between - from)
    const best = answer.Status === 'Optimal'
    const theirs = answer.Status === 'Infeasible' ? Number.POSITIVE_INFINITY : Math.round(answer.ObjectiveValue)
    if (plan.status === 'proved-best') proved += 1
    if (!best) open += 1
    const agrees = best ? plan.value === theirs : plan.value <= theirs
    if (!agrees) worse.push(`seed ${seed}: ${plan.value} sticks, solver ${theirs} (${answer.Status})`)
  }
  const ratio = median(ours_ms) / median(theirs_ms)
  const times = `median ${median(ours_ms).toFixed(1)} ms against ${median(theirs_ms).toFixed(1)} ms`
  const told = `${proved} of ${SEEDS} proved, solver left ${open} open, ${times}`
  return [
    {
      label: `cuts: 60 pieces, ${LENGTHS} lengths, ${SEEDS} jobs, against a direct integer program`,
      agreed: worse.length === 0,
      detail: worse.length === 0 ? told : worse.join('; '),
      ratio,
      limit: 1,
    },
  ]
}

export const bench = { name: 'cuts', run }
