import type { SourceId } from './sources.ts'

type Cell = number | string | boolean | null

/** What every row of a sourced table may say of itself. */
export interface RowNotes {
  readonly source?: SourceId
  readonly note?: string
}

export interface Table<Id extends string, Row> {
  readonly title: string
  /** What each column holds, with conditions and basis; the unit is in the column's name. */
  readonly columns: Readonly<Record<string, string>>
  /** Source of every row that does not name its own. */
  readonly source: SourceId
  readonly rows: Readonly<Record<Id, Row & RowNotes>>
}

/**
 * A table of facts of the world: stable row ids, units in the column names, a source on each row.
 * A row that lacks a declared column, or holds one that is not declared, does not compile.
 */
export function table<Column extends string, Id extends string, Row extends Record<Column, Cell>>(given: {
  readonly title: string
  readonly columns: Readonly<Record<Column, string>>
  readonly source: SourceId
  readonly rows: Readonly<Record<Id, Row & RowNotes>>
}): Table<Id, Row> {
  return given
}

/** Source of one row. */
export const rowSource = <Id extends string, Row>(t: Table<Id, Row>, id: Id): SourceId => t.rows[id].source ?? t.source
