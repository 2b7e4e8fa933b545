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
