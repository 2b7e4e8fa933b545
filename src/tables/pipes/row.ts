import type { SourceId } from '../sources.ts'
import type { RowNotes } from '../table.ts'

/** One pipe as a standard lists it. */
export interface PipeRow {
  readonly standard: string
  readonly nominal: string
  readonly series: string
  readonly plastic: 'PVC-U'
  readonly outside_m: number
  readonly wall_m: number
  readonly bore_m: number
  readonly averageBore_m: number | null
  readonly mass_kg_m: number | null
  readonly massComputed: boolean
}

/** Keeps the ids of one family of pipes as literal types. */
export const pipeRows = <Id extends string>(
  rows: Readonly<Record<Id, PipeRow & RowNotes & { readonly source: SourceId }>>,
): Readonly<Record<Id, PipeRow & RowNotes>> => rows
