/** Finding a pipe of the tables by what a tape tells or by what is typed or printed on it. */
import { pipeWords } from './pipe-words.ts'
import { type PipeId, type PipeRow, pipes } from './pipes.ts'
import { practiceLengths, practiceRatios } from './practice.ts'
import { tradeNames } from './trade-names.ts'

export interface NearPipe {
  readonly id: PipeId
  /** Distance of the outside diameters. */
  readonly distance_m: number
  /** Distance of the walls; null where no wall was measured. */
  readonly wallDistance_m: number | null
}

export interface PipesNear {
  /** Rows that fit, nearest first. */
  readonly matches: readonly NearPipe[]
  /** Rows of two or more different outside diameters fit: only the printed marking can tell. */
  readonly ambiguous: boolean
  /** Outside diameters of the rows that fit, smallest first. */
  readonly outsides_m: readonly number[]
  /** Minimum walls of the rows that fit, smallest first. */
  readonly walls_m: readonly number[]
  /** The nearest rows, fitting or not: at most six of different outside diameter. */
  readonly nearest: readonly NearPipe[]
}

const ids = Object.keys(pipes.rows) as PipeId[]
const entries: readonly (readonly [PipeId, PipeRow])[] = ids.map((id) => [id, pipes.rows[id]])

const sizes_m: readonly number[] = [...new Set(entries.map(([, row]) => row.outside_m))]
/** Sizes that are named as nearest. */
const NAMED = 6

const ascending = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b)

/** Rows near a measured outside diameter (circumference over π) and, where given, a measured wall. */
export function pipesNear(given: { readonly outside_m: number; readonly wall_m?: number }): PipesNear {
  const { outside_m, wall_m } = given
  if (!(outside_m > 0)) throw new RangeError(`pipesNear: outside_m must be positive, got ${outside_m}`)
  if (wall_m !== undefined && !(wall_m > 0)) throw new RangeError(`pipesNear: wall_m must be positive, got ${wall_m}`)
  const reach_m = practiceLengths.rows['pipe-match'].high_m
  const apart_m = sizes_m.map((size) => Math.abs(size - outside_m)).sort((a, b) => a - b)
  const far_m = Math.max(apart_m[NAMED - 1]!, reach_m + 1e-12)
  const near = entries
    .filter(([, row]) => Math.abs(row.outside_m - outside_m) <= far_m)
    .map(([id, row]) => ({
      id,
      distance_m: Math.abs(row.outside_m - outside_m),
      wallDistance_m: wall_m === undefined ? null : Math.abs(row.wall_m - wall_m),
    }))
    .sort((a, b) => a.distance_m - b.distance_m || (a.wallDistance_m ?? 0) - (b.wallDistance_m ?? 0))
  const { low, high } = practiceRatios.rows['measured-wall']
  const fits = near.filter(({ id, distance_m }) => {
    const share = wall_m === undefined ? 1 : wall_m / pipes.rows[id].wall_m
    // A picometre of slack keeps 110.6 mm within 0.6 mm of 110 mm in floating point.
    return distance_m <= reach_m + 1e-12 && share >= low && share <= high
  })
  const outsides_m = ascending(fits.map(({ id }) => pipes.rows[id].outside_m))
  const seen = new Set<number>()
  const nearest = near.filter(({ id }) => {
    const size = pipes.rows[id].outside_m
    return seen.has(size) ? false : seen.add(size).size <= NAMED
  })
  return {
    matches: fits,
    ambiguous: outsides_m.length > 1,
    outsides_m,
    walls_m: ascending(fits.map(({ id }) => pipes.rows[id].wall_m)),
    nearest,
  }
}

export interface PipeNamed {
  /** The one row that fits, or null. */
  readonly id: PipeId | null
  /** Rows that fit all that was said: several where the text leaves a choice. */
  readonly fits: readonly PipeId[]
  /** Rows that fit most of what was said; empty where some fit all. */
  readonly nearest: readonly PipeId[]
}

const bare = (text: string) => text.toLowerCase().replace(/[^a-z0-9]+/g, '')

/** Pipes that share a trade name such as "4 in" or "100": six different outside diameters in the worst case. */
export function pipesOfTradeName(name: { readonly inch?: string; readonly bore?: string }): PipeId[] {
  const names = Object.values(tradeNames.rows).filter(
    ({ inch, bore }) =>
      (name.inch !== undefined && inch === name.inch) || (name.bore !== undefined && bore === name.bore),
  )
  return ids.filter((id) =>
    names.some(({ inch, bore, outside }) => {
      const { nominal } = pipes.rows[id]
      // JIS 75 is sold beside the 80 mm bore of AU/NZ as the three-inch pipe.
      const asBore = nominal === bore || nominal === `DN ${bore}` || (bore === '80' && nominal === '75')
      return nominal === inch || asBore || outside.split(',').some((size) => nominal === `${size} mm`)
    }),
  )
}

/**
 * Rows named by what people type ("4 in Sch 40") or by what is printed on a pipe ("EN 1401 110 × 3,2 SN4").
 * A size alone, without a standard, yields every pipe that shops sell under that name.
 */
export function pipeNamed(text: string): PipeNamed {
  const exact = ids.find((id) => bare(id) === bare(text))
  if (exact !== undefined) return { id: exact, fits: [exact], nearest: [] }
  const words = pipeWords(text)
  const tests = words.tests
  if (tests.length === 0) return { id: null, fits: [], nearest: [] }
  if (tests.length === 1 && words.tradeName !== null) {
    // "50 mm" is a metric outside diameter before it is a bore; "100" can only be a bore.
    const metric = ids.some((id) => pipes.rows[id].nominal === `${words.tradeName?.bore} mm`)
    const fits = metric ? [] : pipesOfTradeName(words.tradeName)
    if (fits.length > 0) return { id: fits.length === 1 ? fits[0]! : null, fits, nearest: [] }
  }
  const scored = entries.map(([id, row]) => ({
    id,
    score: tests.reduce((sum, { weight, holds }) => sum + (holds(row) ? weight : 0), 0),
  }))
  const whole = tests.reduce((sum, { weight }) => sum + weight, 0)
  const fits = scored.filter(({ score }) => score === whole).map(({ id }) => id)
  const best = Math.max(...scored.map(({ score }) => score))
  const away = ({ id }: { id: PipeId }) => Math.abs(pipes.rows[id].outside_m - (words.size_m ?? 0))
  const close = best > 0 ? scored.filter(({ score }) => score === best) : []
  const most = words.size_m === null ? close : close.sort((a, b) => away(a) - away(b))
  return {
    id: fits.length === 1 ? fits[0]! : null,
    fits,
    nearest: fits.length > 0 ? [] : most.slice(0, 6).map(({ id }) => id),
  }
}
