import { type Pipe, pipeOfRow } from '../../plan/pipe.ts'
import { type PipeId, pipes } from '../../tables/pipes.ts'

/** Most pipes that a remedy tries. */
const MOST = 20

interface Choice {
  readonly label: string
  readonly standard: string
  readonly outside_m: number
  readonly wall_m: number
  readonly bore_m: number
}

const choices: readonly Choice[] = (Object.keys(pipes.rows) as PipeId[]).map((id) => ({
  ...pipes.rows[id],
  bore_m: pipeOfRow(id).bore_m,
  label: pipeOfRow(id).label,
}))

/** One pipe of each outside diameter, the one whose wall is nearest to that of the pipe it stands in for. */
function oneOfEach(list: readonly Choice[], wall_m: number): Choice[] {
  const best = new Map<number, Choice>()
  for (const c of list) {
    const held = best.get(c.outside_m)
    if (!held || Math.abs(c.wall_m - wall_m) < Math.abs(held.wall_m - wall_m)) best.set(c.outside_m, c)
  }
  return [...best.values()]
}

/** Pipes of the table to try in place of one: its own standard first, then the others; the nearest in size first. */
function others(pipe: Pipe, fits: (choice: Choice) => boolean): readonly string[] {
  const near = (a: Choice, b: Choice) =>
    Math.abs(a.outside_m - pipe.outside_m) - Math.abs(b.outside_m - pipe.outside_m) || a.wall_m - b.wall_m
  const usable = choices.filter(fits)
  const own = usable.filter((c) => c.standard === pipe.standard)
  const foreign = usable.filter((c) => c.standard !== pipe.standard)
  const ordered = [own, foreign].flatMap((list) => oneOfEach(list, pipe.wall_m).sort(near))
  return ordered.slice(0, MOST).map((c) => c.label)
}

/** Pipes of the table that are narrower than one and no wider than a limit, widest first. */
export const narrowerPipes = (pipe: Pipe, limit_m = Number.POSITIVE_INFINITY): readonly string[] =>
  others(pipe, (c) => c.outside_m < pipe.outside_m && c.outside_m <= limit_m)

/** Pipes of the table that are wider than one and no narrower than a limit, narrowest first. */
export const widerPipes = (pipe: Pipe, limit_m = 0): readonly string[] =>
  others(pipe, (c) => c.outside_m > pipe.outside_m && c.outside_m >= limit_m)

/** Pipes of the table whose bore lies between two limits, the nearest in outside diameter first. */
export const pipesOfBore = (pipe: Pipe, least_m: number, most_m: number): readonly string[] =>
  others(pipe, (c) => c.bore_m >= least_m && c.bore_m <= most_m)
