import load from 'highs'
import { beforeAll, describe, expect, it } from 'vitest'
import { type CutJob, cutPlan, type Piece } from './index.ts'

type Solver = Awaited<ReturnType<typeof load>>

const JOBS = 200
const STICK_m = 3
const KERF_m = 0.003
const RADIUS_m = 0.03
const ANGLES_rad = [Math.PI / 4, Math.PI / 3] as const

/** What the test's own reckoning of a stick needs of a piece. */
interface Part {
  readonly length_m: number
  /** Index of its mitre, or -1 for square ends. */
  readonly mitre: number
  readonly count: number
}

/** The same stream of numbers for the same seed (mulberry32). */
function stream(seed: number): (low: number, high: number) => number {
  let state = seed >>> 0
  return (low, high) => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return low + Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * (high - low + 1))
  }
}

/** 10 to 60 pieces; the more pieces the longer the shortest, so that all fillings can be written down. */
function partsOf(seed: number): Part[] {
  const pick = stream(seed)
  const pieces = pick(10, 60)
  const kinds = Math.min(pick(3, 9), pieces)
  const shortest_mm = pick(330, 520)
  const longest_mm = pick(900, 1900)
  const counts = Array.from({ length: kinds }, () => 1)
  for (let n = kinds; n < pieces; n++) counts[pick(0, kinds - 1)]! += 1
  return counts.map((count) => ({
    count,
    length_m: pick(shortest_mm, longest_mm) / 1000,
    mitre: pick(0, 2) === 0 ? pick(0, 1) : -1,
  }))
}

function jobOf(parts: readonly Part[]): CutJob {
  const pieces = parts.map((p, i): Piece => {
    const angle_rad = ANGLES_rad[p.mitre === 1 ? 1 : 0]
    const cut = p.mitre < 0 ? { kind: 'square' as const } : { kind: 'mitre' as const, angle_rad, radius_m: RADIUS_m }
    return { id: `p${i}`, count: p.count, length_m: p.length_m, cut }
  })
  const purchase = [{ id: 'stick', length_m: STICK_m, socket_m: 0, price_money: null }]
  return { pieces, purchase, offcuts: [], kerf_m: KERF_m, trim_m: 0, share: true }
}

/** The stick rule, written down anew: what a filling takes. */
function taken(parts: readonly Part[], filling: readonly number[]): number {
  let sum_m = 0
  const stubs = [0, 0]
  parts.forEach((p, i) => {
    sum_m += filling[i]! * p.length_m
    if (p.mitre < 0) sum_m += filling[i]! * KERF_m
    else stubs[p.mitre]! += filling[i]!
  })
  stubs.forEach((n, g) => {
    const theta = ANGLES_rad[g]!
    const pairs = Math.floor(n / 2)
    sum_m += pairs * (KERF_m / Math.sin(theta) + KERF_m)
    if (n > 2 * pairs) sum_m += KERF_m / Math.sin(theta) + KERF_m + RADIUS_m / Math.tan(theta)
  })
  return sum_m
}

/** Every filling of a stick to which no piece can be added. */
function fillings(parts: readonly Part[]): number[][] {
  const found: number[][] = []
  const filling = parts.map(() => 0)
  const fits = () => taken(parts, filling) <= STICK_m + KERF_m + 1e-9
  const walk = (i: number): void => {
    if (i === parts.length) {
      const full = parts.every((p, k) => {
        if (filling[k] === p.count) return true
        filling[k]! += 1
        const more = fits()
        filling[k]! -= 1
        return !more
      })
      if (full) found.push(filling.slice())
      return
    }
    for (let n = 0; n <= parts[i]!.count; n++) {
      filling[i] = n
      if (!fits()) break
      walk(i + 1)
    }
    filling[i] = 0
  }
  walk(0)
  return found
}

/** Fewest sticks by an integer program over all fillings. */
function fewest(solver: Solver, parts: readonly Part[]): number | null {
  const all = fillings(parts)
  const names = all.map((_, j) => `x${j}`)
  const rows = parts.map((p, i) => {
    const terms = all.flatMap((f, j) => (f[i]! > 0 ? [`${f[i]} x${j}`] : []))
    return ` d${i}: ${terms.join('\n + ')} >= ${p.count}`
  })
  const text = `Minimize\n n: ${names.join('\n + ')}\nSubject To\n${rows.join('\n')}\nGeneral\n ${names.join('\n ')}\nEnd\n`
  const answer = solver.solve(text, { mip_rel_gap: 0, time_limit: 20 })
  return answer.Status === 'Optimal' ? Math.round(answer.ObjectiveValue) : null
}

describe('the number of sticks', () => {
  let solver: Solver
  beforeAll(async () => {
    solver = await load()
  })

  it(`equals the optimum of an integer program over all fillings on ${JOBS} jobs`, () => {
    const unproved: number[] = []
    for (let seed = 1; seed <= JOBS; seed++) {
      const parts = partsOf(seed)
      const optimum = fewest(solver, parts)
      const plan = cutPlan(jobOf(parts))
      if (optimum === null) unproved.push(seed)
      else expect(plan.value, `sticks of job ${seed}`).toBe(optimum)
      expect(plan.status, `job ${seed}`).toBe('proved-best')
    }
    expect(unproved, 'jobs that the integer program left open').toEqual([])
  })
})
