import { withoutValue, withValue } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'
import type { Remedy, Setting } from './finding.ts'

/** The document with several fields set. */
export const withSettings = (document: PlanDocument, settings: readonly Setting[]): PlanDocument =>
  settings.reduce((d, { set, to }) => (to === null ? withoutValue(d, set) : withValue(d, set, to)), document)

/** The document with a remedy made, all of it in one step. */
export const withRemedy = (document: PlanDocument, remedy: Pick<Remedy, 'set' | 'to' | 'with'>): PlanDocument =>
  withSettings(document, [remedy, ...remedy.with])
