import type { Issue } from './issue.ts'
import { migrate } from './migrations.ts'
import { DOCUMENT_LIMITS, documentSize, readField, shown } from './parse.ts'
import { PLAN_VERSION, type Plan, type PlanDocument, planFields } from './plan.ts'

/** A document that was read: the plan as far as it could be understood, and what is wrong with the rest. */
export interface ReadPlan {
  readonly plan: Plan
  /** The document in the present form, texts as typed. */
  readonly document: PlanDocument
  readonly issues: readonly Issue[]
}

const refused = (problem: Issue['problem'], received: unknown, expected: readonly string[] = []): ReadPlan => ({
  plan: {},
  document: {},
  issues: [{ at: '', problem, received: shown(received), expected }],
})

/**
 * Reads a plan document. Never throws on any value: what cannot be read becomes an issue, the rest is read.
 */
export function parsePlan(json: unknown): ReadPlan {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return refused('not-an-object', json)
  const size = documentSize(json)
  if (size.depth > DOCUMENT_LIMITS.depth) return refused('too-deep', size.depth, [String(DOCUMENT_LIMITS.depth)])
  if (size.values > DOCUMENT_LIMITS.values) return refused('too-large', size.values, [String(DOCUMENT_LIMITS.values)])
  const given = json as PlanDocument
  const version = Object.hasOwn(given, 'rootfall') ? given['rootfall'] : undefined
  if (version === undefined)
    return { ...read(given), issues: [...read(given).issues, versionIssue('version-missing', version)] }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return { ...refused('version-unknown', version, [String(PLAN_VERSION)]), document: given }
  if (version > PLAN_VERSION) return { ...refused('version-newer', version, [String(PLAN_VERSION)]), document: given }
  return read(migrate(given, version, PLAN_VERSION))
}

const versionIssue = (problem: Issue['problem'], received: unknown): Issue => ({
  at: 'rootfall',
  problem,
  received: shown(received),
  expected: [String(PLAN_VERSION)],
})

function read(document: PlanDocument): ReadPlan {
  const issues: Issue[] = []
  const plan = readField({ issues }, planFields, document, '') as Plan
  return { plan, document, issues }
}

/** Reads the text of a plan file. */
export function readPlanText(text: string): ReadPlan {
  if (text.length > DOCUMENT_LIMITS.characters)
    return refused('too-large', text.length, [String(DOCUMENT_LIMITS.characters)])
  let json: unknown
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return refused('not-json', error instanceof Error ? error.message : '')
  }
  return parsePlan(json)
}

/** The text of a plan file: the document as typed, two spaces, one newline at the end. */
export const planText = (document: PlanDocument): string => `${JSON.stringify(document, null, 2)}\n`
