import type { Finding, Verdict } from '../../../findings/finding.ts'
import { findingKey } from '../workers/protocol.ts'

const rank: Readonly<Record<Verdict, number>> = { fail: 0, watch: 1, unknown: 2, pass: 3 }

/** Keys of the findings that do not hold, worst first, safety before the rest, else in the order of the disciplines. */
export const worstFirst = (findings: readonly Finding[]): readonly string[] =>
  findings
    .map((f, i) => ({ f, i }))
    .filter(({ f }) => f.verdict !== 'pass')
    .sort((a, b) => rank[a.f.verdict] - rank[b.f.verdict] || Number(b.f.safety) - Number(a.f.safety) || a.i - b.i)
    .map(({ f }) => findingKey(f))

/** The order while a finding is open: what was there keeps its number, what is new comes after. */
export function heldOrder(before: readonly string[], findings: readonly Finding[]): readonly string[] {
  const now = worstFirst(findings)
  const all = new Set(findings.map(findingKey))
  const kept = before.filter((key) => all.has(key))
  return [...kept, ...now.filter((key) => !kept.includes(key))]
}
