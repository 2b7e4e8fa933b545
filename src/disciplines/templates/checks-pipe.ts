import type { Finding } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { asBuilt, type Pipe, pipeOfRow } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { holeClearances } from '../../tables/joining.ts'
import { type PipesNear, pipesNear } from '../../tables/pipe-match.ts'
import { pipes } from '../../tables/pipes.ts'
import { practiceLengths } from '../../tables/practice.ts'

/** Step in which a gap is planned. */
const GAP_STEP_m = 0.0001

/** Most names that a sentence lists. */
const NAMES = 3

/** What the list of pipes says to one that is known by measure alone, or by a tape that outranks its name. */
function listed(at: string, pipe: Pipe | undefined, tape: Parameters<typeof asBuilt>[1]): Finding[] {
  const source = practiceLengths.source
  if (pipe === undefined) return [unknown('templates/known-pipe', { at, source, needs: [at] })]
  const built = asBuilt(pipe, tape)
  if (!built.measured) return named(at, built)
  const near = pipesNear({ outside_m: built.outside_m, wall_m: built.wall_m })
  return [knownPipe(at, built, near), ...marking(at, built, near)]
}

/** A pipe known by its row: nothing was measured that could say otherwise. */
function named(at: string, pipe: Pipe): Finding[] {
  const own = { id: pipe.row!, distance_m: 0, wallDistance_m: null }
  const near = {
    matches: [own],
    nearest: [own],
    ambiguous: false,
    outsides_m: [pipe.outside_m],
    walls_m: [pipe.wall_m],
  }
  return [knownPipe(at, pipe, near), ...marking(at, pipe, near)]
}

/** Outside diameter as measured against the nearest row. */
function knownPipe(at: string, built: Pipe, near: PipesNear): Finding {
  const labels = near.nearest.map((n) => pipeOfRow(n.id).label)
  const first = near.nearest[0]!
  return judge('templates/known-pipe', quantity(first.distance_m, 'm'), {
    at,
    source: practiceLengths.source,
    want: { max: practiceLengths.rows['pipe-match'].high_m },
    slots: {
      outside: quantity(built.outside_m, 'm'),
      round: quantity(Math.PI * built.outside_m, 'm'),
      first: labels[0] ?? '',
      second: labels[1] ?? '',
      listed: quantity(pipes.rows[first.id].outside_m, 'm'),
    },
    levers: () => [among(at, labels)],
  })
}

/** Rows of different outside diameter that a tape cannot tell apart. */
function marking(at: string, built: Pipe, near: PipesNear): Finding[] {
  if (near.matches.length === 0) return []
  const seen = new Set<number>()
  const names = near.matches
    .filter(({ id }) => !seen.has(pipes.rows[id].outside_m) && seen.add(pipes.rows[id].outside_m))
    .map((n) => pipeOfRow(n.id).label)
  return [
    judge('templates/pipe-marking', quantity(near.outsides_m.length, 'count'), {
      at,
      source: practiceLengths.source,
      want: { max: 1 },
      slots: { outside: quantity(built.outside_m, 'm'), names: names.slice(0, NAMES).join(', ') },
      levers: () => [among(at, names)],
    }),
  ]
}

export function pipeFindings(plan: Plan): readonly Finding[] {
  const { column, measured } = plan
  const own = { circumference_m: measured?.columnCircumference_m, wall_m: measured?.columnWall_m }
  const stub = { circumference_m: measured?.stubCircumference_m, wall_m: measured?.stubWall_m }
  return [
    ...listed('column/pipe', column?.pipe, own),
    ...(column?.sites?.method === 'stub' ? listed('column/stub/pipe', column.stub?.pipe, stub) : []),
  ]
}

/** Gap of a joint of silicone, on the radius; cement is judged with the plastics that it must join. */
export function gapFindings(plan: Plan): readonly Finding[] {
  const stub = plan.column?.stub
  if (stub?.joint !== 'silicone') return []
  const terms = { at: 'column/stub/gap', source: holeClearances.source }
  const id = 'templates/joint-gap'
  if (stub.gap_m === undefined) return [unknown(id, { ...terms, needs: ['column/stub/gap'] })]
  const { clearanceLow_m, clearanceHigh_m } = holeClearances.rows.silicone
  if (clearanceLow_m === null || clearanceHigh_m === null) return []
  const want = { min: clearanceLow_m / 2, max: clearanceHigh_m / 2 }
  return [
    judge(id, quantity(stub.gap_m, 'm'), {
      ...terms,
      want,
      slots: { joint: stub.joint, from: quantity(want.min, 'm'), to: quantity(want.max, 'm') },
      levers: [along('column/stub/gap', stub.gap_m > want.max ? want.min : want.max, 'm', GAP_STEP_m)],
    }),
  ]
}
