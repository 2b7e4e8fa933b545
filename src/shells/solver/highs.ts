import type { Improve } from '../../disciplines/cuts/index.ts'
import type { Model } from '../../disciplines/cuts/model.ts'
import type { Load, Packing } from '../../disciplines/cuts/room.ts'

/** The part of the solver package that is used here. */
interface Solver {
  solve(
    problem: string,
    options?: { readonly time_limit?: number; readonly mip_rel_gap?: number; readonly output_flag?: boolean },
  ): {
    readonly Status: string
    readonly ObjectiveValue: number
    readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>
  }
}

/** One line of a linear program; terms of weight 0 are left out, and lines are kept short for readers with small buffers. */
const line = (terms: readonly (readonly [number, string])[]): string =>
  terms
    .filter(([weight]) => weight !== 0)
    .map(([weight, name]) => `${weight < 0 ? '-' : '+'} ${Math.abs(weight)} ${name}`)
    .join('\n ')

/** Sticks that could be in a plan that costs less than `most`, as bins in order. */
function candidates(model: Model, most: number): number[] {
  return model.bins.flatMap((bin, b) => {
    const pieces = model.counts.reduce((a, n) => a + n, 0)
    const affordable = bin.cost > 0 ? Math.floor(most / bin.cost + 1e-9) : pieces
    return Array.from({ length: Math.min(affordable, bin.limit, pieces) }, () => b)
  })
}

/**
 * The job as an integer program in the LP text format: n pieces of kind i on stick j, stick j used or not, and for each
 * mitre the number of shared or single cuts c >= n/2, which with (2c - n) wedges is the stick rule without a case.
 */
export function program(model: Model, sticks: readonly number[]): string {
  const rows: string[] = []
  const whole: string[] = []
  const bounds: string[] = []
  const used = sticks.map((_, j) => `y${j}`)
  sticks.forEach((b, j) => {
    const bin = model.bins[b]!
    const terms: [number, string][] = model.kinds.map((k, i) => {
      const mitre = model.mitres[k.mitre]
      if (k.role === 'stub') return [k.own_m - mitre!.reach_m, `x${i}_${j}`]
      return [k.role === 'parallel' ? k.own_m + mitre!.along_m : k.own_m, `x${i}_${j}`]
    })
    model.mitres.forEach((mitre, g) => {
      const of = (role: string) => model.kinds.flatMap((k, i) => (k.role === role && k.mitre === g ? [i] : []))
      const stubs = of('stub')
      const parallels = of('parallel')
      if (stubs.length + parallels.length === 0) return
      terms.push([mitre.along_m + model.kerf_m + 2 * mitre.reach_m, `c${g}_${j}`])
      whole.push(`c${g}_${j}`)
      if (stubs.length > 0)
        rows.push(`${line([[2, `c${g}_${j}`], ...stubs.map((i) => [-1, `x${i}_${j}`] as const)])} >= 0`)
      for (const i of parallels)
        rows.push(
          `${line([
            [model.counts[i]!, `c${g}_${j}`],
            [-1, `x${i}_${j}`],
          ])} >= 0`,
        )
    })
    rows.push(`${line([...terms, [-bin.capacity_m, used[j]!]])} <= 0`)
    if (sticks[j + 1] === b)
      rows.push(
        `${line([
          [1, used[j]!],
          [-1, used[j + 1]!],
        ])} >= 0`,
      )
    model.kinds.forEach((_, i) => {
      whole.push(`x${i}_${j}`)
      bounds.push(`0 <= x${i}_${j} <= ${model.counts[i]!}`)
    })
  })
  model.kinds.forEach((_, i) => {
    rows.push(`${line(sticks.map((_, j) => [1, `x${i}_${j}`] as const))} = ${model.counts[i]!}`)
  })
  const cost = line(sticks.map((b, j) => [model.bins[b]!.cost, used[j]!] as const)) || '0 y0'
  return `Minimize\n cost: ${cost}\nSubject To\n${rows.map((r, n) => ` r${n}: ${r}`).join('\n')}\nBounds\n ${bounds.join('\n ')}\nGeneral\n ${whole.join('\n ')}\nBinary\n ${used.join('\n ')}\nEnd\n`
}

/** Lets the solver look for a cheaper plan, or prove that there is none, within a time. */
export const improvedBy =
  (solver: Solver, most_s: number): Improve =>
  async (model, { packing, bound }) => {
    const sticks = candidates(model, packing.cost)
    const answer = solver.solve(program(model, sticks), { time_limit: most_s, mip_rel_gap: 0, output_flag: false })
    const count = (name: string) => Math.round(answer.Columns[name]?.Primal ?? 0)
    const loads = sticks
      .map((bin, j): Load => ({ bin, counts: Int32Array.from(model.kinds, (_, i) => count(`x${i}_${j}`)) }))
      .filter((load) => load.counts.some((n) => n > 0))
    const cost = loads.reduce((sum, load) => sum + model.bins[load.bin]!.cost, 0)
    const found: Packing | null = loads.length > 0 ? { loads, cost } : null
    return { packing: found, bound: answer.Status === 'Optimal' ? answer.ObjectiveValue : bound }
  }

/** Loads the optional solver package on demand; null where it is not installed. */
export async function loadSolver(): Promise<Solver | null> {
  try {
    const { default: load } = await import('highs')
    return (await load()) as unknown as Solver
  } catch {
    return null
  }
}
