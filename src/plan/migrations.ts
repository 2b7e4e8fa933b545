import type { PlanDocument } from './plan.ts'

/** One step from a version to the next: a pure change of the document. */
export interface Migration {
  readonly from: number
  readonly name: string
  readonly step: (document: PlanDocument) => PlanDocument
}

/**
 * Steps in order, without a gap, from version 1 on. A step once released is never edited; a later form adds a step.
 * The first version has none before it.
 */
export const migrations: readonly Migration[] = []

/** Brings a document of an older version to `to`; throws RangeError on a gap, which is our bug. */
export function migrate(
  document: PlanDocument,
  from: number,
  to: number,
  steps: readonly Migration[] = migrations,
): PlanDocument {
  let current = document
  for (let version = from; version < to; version++) {
    const next = steps.find((m) => m.from === version)
    if (!next) throw new RangeError(`migrate: no step from version ${version}`)
    current = { ...next.step(current), rootfall: version + 1 }
  }
  return current
}
