import type { Finding, Verdict } from './finding.ts'

const rank: Readonly<Record<Exclude<Verdict, 'unknown'>, number>> = { pass: 0, watch: 1, fail: 2 }

/** What makes two findings the same question. */
export const key = (f: Pick<Finding, 'id' | 'at'>): string => `${f.id} ${f.at}`

/** How good a change must make its finding: hold over the whole band, or at least no longer fail. */
export type Aim = 'pass' | 'watch'

/** What is worth aiming at, the best first. */
export const aims = (before: Finding): readonly Aim[] => (before.verdict === 'fail' ? ['pass', 'watch'] : ['pass'])

/** Whether a finding comes as far as that; where the question no longer arises it does. */
export const reaches = (after: Finding | undefined, aim: Aim): boolean =>
  !after || after.verdict === 'pass' || (aim === 'watch' && after.verdict === 'watch')

/** Cured: holds now, or at least no longer fails where it failed; or the question no longer arises. */
export const cures = (before: Finding, after: Finding | undefined): boolean =>
  aims(before).some((aim) => reaches(after, aim))

/** Whether a finding got a worse verdict; a number may move within its verdict. What was known must stay known. */
function isWorse(before: Verdict | undefined, after: Verdict): boolean {
  if (before === undefined) return after === 'fail'
  if (before === 'unknown') return false
  return after === 'unknown' || rank[after] > rank[before]
}

export function worsened(before: readonly Finding[], after: readonly Finding[]): boolean {
  const was = new Map(before.map((f) => [key(f), f.verdict]))
  return after.some((f) => isWorse(was.get(key(f)), f.verdict))
}

/** Findings that were unknown and fail now that they are known. */
export function revealed(before: readonly Finding[], after: readonly Finding[]): readonly Finding[] {
  const hidden = new Set(before.filter((f) => f.verdict === 'unknown').map(key))
  return after.filter((f) => f.verdict === 'fail' && hidden.has(key(f)))
}
