import type { Field } from '../../../plan/field.ts'
import { pipeField, pipeOfRow } from '../../../plan/pipe.ts'
import { containers } from '../../../tables/containers.ts'
import { type PipeId, pipes } from '../../../tables/pipes.ts'

const pipeNames: readonly string[] = (Object.keys(pipes.rows) as PipeId[]).map((id) => pipeOfRow(id).label)
const tankNames: readonly string[] = Object.values(containers.rows).map((row) => row.name)

/** Names of a table's rows, for a field that takes one. */
export function suggestions(field: Field): readonly string[] | null {
  if (field.kind !== 'named') return null
  return field.about === pipeField.about ? pipeNames : tankNames
}
