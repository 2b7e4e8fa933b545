import type { Field } from '../../../plan/field.ts'
import { pipeField, pipeOfRow } from '../../../plan/pipe.ts'
import { containers } from '../../../tables/containers.ts'
import { type PipeId, pipes } from '../../../tables/pipes.ts'
import { type SourceId, sources } from '../../../tables/sources.ts'
import { rowSource } from '../../../tables/table.ts'

/** A place in a source of the register; without an id, what was written in place of one. */
export interface Citation {
  readonly id: SourceId | null
  readonly where: string
}

const isSource = (id: string): id is SourceId => Object.hasOwn(sources, id)

/** What the `Source` line of an equation cites: `Id, place; Id, place`. */
export const citationsOf = (line: string): readonly Citation[] =>
  line.split(/;\s+/).map((part) => {
    const id = (/^[\p{L}\d.-]+/u.exec(part)?.[0] ?? '').replace(/\.$/, '')
    return isSource(id) ? { id, where: part.slice(id.length).replace(/^[,:]?\s*/, '') } : { id: null, where: part }
  })

/** The source of the row of a table that a field names; null where it names none. */
export function sourceOfRow(field: Field, value: unknown): SourceId | null {
  if (field.kind !== 'named' || typeof value !== 'string') return null
  if (field.about === pipeField.about) {
    const answer = pipeField.find(value)
    const label = 'found' in answer ? answer.found.label : null
    const id = (Object.keys(pipes.rows) as PipeId[]).find((row) => pipeOfRow(row).label === label)
    return id === undefined ? null : rowSource(pipes, id)
  }
  const id = (Object.keys(containers.rows) as (keyof typeof containers.rows)[]).find(
    (row) => containers.rows[row].name === value || row === value,
  )
  return id === undefined ? null : rowSource(containers, id)
}
