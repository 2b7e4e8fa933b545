import { type MaterialId, materials } from '../tables/materials.ts'
import { pipeNamed, pipesNear } from '../tables/pipe-match.ts'
import { type PipeId, pipes } from '../tables/pipes.ts'
import { choice, flag, named, quantity, section, text, type ValuesOf } from './field.ts'

/** A pipe as the plan knows it, whether by its row or by measure. */
export interface Pipe {
  /** Name to print: of the row, or made of the measures. */
  readonly label: string
  readonly row: PipeId | null
  readonly standard: string | null
  readonly plastic: string
  readonly foamCore: boolean
  readonly outside_m: number
  /** Least wall: for strength. */
  readonly wall_m: number
  /** Average bore where the standard prints one, else outside less two walls: for fit. */
  readonly bore_m: number
  readonly mass_kg_m: number | null
  readonly measured: boolean
}

const measures = section('A pipe by measure.', {
  outside: quantity('m', { min: 0.01, max: 0.5, example: '50 mm', about: 'Outside diameter.' }),
  circumference: quantity('m', {
    min: 0.03,
    max: 1.6,
    example: '346 mm',
    about: 'Tape round the outside; outranks `outside`.',
  }),
  wall: quantity('m', { min: 0.0004, max: 0.04, example: '1.8 mm', about: 'Wall.' }),
  plastic: choice(
    ['PVC-U', 'PVC-U-foam-core', 'PVC-C', 'ABS', 'PP', 'PE-HD'],
    'What the marking on the pipe says it is made of.',
  ),
  foamCore: flag('Whether the wall is foamed inside.'),
  name: text('Name to print.', 60),
})

const mm = (x: number): string => String(Number((x * 1000).toFixed(2)))

/** A pipe of the table. */
export function pipeOfRow(id: PipeId): Pipe {
  const row = pipes.rows[id]
  return {
    label: [row.standard, row.nominal, row.series].filter((s) => s !== '').join(' '),
    row: id,
    standard: row.standard,
    plastic: row.plastic,
    foamCore: false,
    outside_m: row.outside_m,
    wall_m: row.wall_m,
    bore_m: row.averageBore_m ?? row.bore_m,
    mass_kg_m: row.mass_kg_m,
    measured: false,
  }
}

function pipeOfMeasures(values: ValuesOf<typeof measures.fields>): { found: Pipe } | { missing: string[] } {
  const outside_m = values.circumference_m === undefined ? values.outside_m : values.circumference_m / Math.PI
  const wall_m = values.wall_m
  if (outside_m === undefined || wall_m === undefined || 2 * wall_m >= outside_m)
    return {
      missing: [
        ...(outside_m === undefined ? ['circumference'] : []),
        ...(wall_m === undefined || outside_m !== undefined ? ['wall'] : []),
      ],
    }
  return {
    found: {
      label: values.name ?? `${mm(outside_m)} × ${mm(wall_m)}`,
      row: null,
      standard: null,
      plastic: values.plastic ?? 'unknown',
      foamCore: values.foamCore ?? values.plastic === 'PVC-U-foam-core',
      outside_m,
      wall_m,
      bore_m: outside_m - 2 * wall_m,
      mass_kg_m: null,
      measured: true,
    },
  }
}

/** A pipe as built: what the tape says in place of what the table says; a wall that leaves no bore is no wall. */
export function asBuilt(
  pipe: Pipe,
  tape: { readonly circumference_m?: number | undefined; readonly wall_m?: number | undefined },
): Pipe {
  if (tape.circumference_m === undefined && tape.wall_m === undefined) return pipe
  const outside_m = tape.circumference_m === undefined ? pipe.outside_m : tape.circumference_m / Math.PI
  const wide_m = tape.wall_m === undefined ? pipe.outside_m - pipe.bore_m : 2 * tape.wall_m
  const bore_m = outside_m - wide_m
  if (bore_m <= 0) return pipe
  return { ...pipe, outside_m, wall_m: tape.wall_m ?? pipe.wall_m, bore_m, measured: true }
}

/** The plastic that the marking names, by its row in the table; null where the plan does not tell. */
export function plasticOf(pipe: Pick<Pipe, 'plastic' | 'foamCore'> | undefined): MaterialId | null {
  if (pipe === undefined || !Object.hasOwn(materials.rows, pipe.plastic)) return null
  return pipe.foamCore && pipe.plastic === 'PVC-U' ? 'PVC-U-foam-core' : (pipe.plastic as MaterialId)
}

/** Names of the pipes nearest to an outside diameter, for messages. */
export const pipesLike = (outside_m: number): string[] =>
  pipesNear({ outside_m }).nearest.map((n) => pipeOfRow(n.id).label)

export const pipeField = named<Pipe>({
  about: 'A pipe: its row by name as printed on it, or its measures.',
  example: 'EN 1401 110 x 3.2',
  section: measures,
  find: (typed) => {
    const answer = pipeNamed(typed)
    if (answer.id !== null) return { found: pipeOfRow(answer.id) }
    const near = answer.fits.length > 0 ? answer.fits : answer.nearest
    return { nearest: near.slice(0, 6).map((id) => pipeOfRow(id).label) }
  },
  build: (values) => pipeOfMeasures(values as ValuesOf<typeof measures.fields>),
})
