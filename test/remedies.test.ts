import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { layoutFindings } from '../src/disciplines/layout/checks.ts'
import { layoutFacts } from '../src/disciplines/layout/index.ts'
import { templatesFindings } from '../src/disciplines/templates/checks.ts'
import { jointFacts, jointRoom, pocketFacts, templatesFacts } from '../src/disciplines/templates/index.ts'
import { evaluate } from '../src/evaluate.ts'
import { withRemedy } from '../src/findings/apply.ts'
import type { Finding, Lever, Remedy, Verdict } from '../src/findings/finding.ts'
import { withRemedies } from '../src/findings/prove.ts'
import { scaleOf } from '../src/findings/steps.ts'
import { inUnit, readQuantity } from '../src/kernel/quantity-text.ts'
import { parsePlan } from '../src/plan/document.ts'
import type { Issue } from '../src/plan/issue.ts'
import { orNull } from '../src/plan/known.ts'
import { withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { inches, metric } from '../src/render/display.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText, placeName } from '../src/render/words/sentences.ts'
import { BAD, EXAMPLES, example, madeByHand, varied } from './plans.ts'

const VARIATIONS = 40
const SEED = 20_261_125

const named: readonly (readonly [string, PlanDocument])[] = [
  ...EXAMPLES.map((n) => [n, example(n)] as const),
  ...BAD.map((n) => [n, example(`bad/${n}`)] as const),
  ...Object.entries(madeByHand),
]
const all = [...named, ...varied(VARIATIONS, SEED).map((d, i) => [`variation ${i + 1}`, d] as const)]

const key = (f: Finding): string => `${f.id} ${f.at}`
const worse: readonly Verdict[] = ['pass', 'watch', 'fail']
interface Judged {
  readonly findings: readonly Finding[]
  readonly issues: readonly Issue[]
}

const judged = (d: PlanDocument): Judged => {
  const { plan, issues } = parsePlan(d)
  return { findings: evaluate(plan).findings, issues }
}

/** What a person can set: no more than three decimals. */
const SETTABLE = /^(?!.*[.,]\d{4})/
const told = (r: Remedy): string[] => [r, ...r.with].map((c) => String(c.to))

/** What is wrong with a remedy, in words; nothing where it holds. */
function faults(
  judge: typeof judged,
  d: PlanDocument,
  before: readonly Finding[],
  target: Finding,
  remedy: Remedy,
): string[] {
  const { findings: after, issues } = judge(withRemedy(d, remedy))
  const now = after.find((f) => key(f) === key(target))
  const what = `${key(target)}: ${[remedy, ...remedy.with].map((c) => `${c.set} → ${c.to}`).join(', ')}`
  const out: string[] = []
  if (issues.some((i) => i.at.startsWith(remedy.set))) out.push(`${what}: cannot be read`)
  if ((now?.verdict ?? 'pass') !== remedy.leaves) out.push(`${what}: is ${now?.verdict}`)
  if (target.verdict === 'watch' && remedy.leaves === 'watch') out.push(`${what}: changes nothing`)
  if (told(remedy).some((text) => !SETTABLE.test(text))) out.push(`${what}: cannot be set`)
  if (JSON.stringify(now?.measured ?? null) !== JSON.stringify(remedy.gives)) out.push(`${what}: gives another number`)
  for (const old of before) {
    const f = after.find((x) => key(x) === key(old))
    if (f === undefined || old.verdict === 'unknown') continue
    if (f.verdict === 'unknown') out.push(`${what}: hides ${key(f)}`)
    else if (worse.indexOf(f.verdict) > worse.indexOf(old.verdict)) out.push(`${what}: worsens ${key(f)}`)
  }
  const hidden = before.filter((f) => f.verdict === 'unknown').map(key)
  const failing = after.filter((f) => f.verdict === 'fail' && hidden.includes(key(f))).map((f) => f.id)
  if (failing.sort().join() !== [...remedy.reveals].sort().join())
    out.push(`${what}: says nothing of ${failing.join()}`)
  const fresh = after.filter((f) => f.verdict === 'fail' && !before.some((x) => key(x) === key(f)))
  if (fresh.length > 0) out.push(`${what}: raises ${fresh.map(key).join()}`)
  return out
}

/** Whether one step less would have done as well. */
function stepLessCures(judge: typeof judged, d: PlanDocument, target: Finding, remedy: Remedy): boolean {
  const lever = target.levers.find((l) => l.set === remedy.set && 'along' in l)
  if (lever === undefined || !('along' in lever)) return false
  const { unit, to, step } = lever.along
  const read = readQuantity(String(remedy.to), unit)
  const from = remedy.from === null ? null : readQuantity(String(remedy.from), unit)
  if (!read.ok) return true
  const start = from?.ok ? from.value : lever.along.from!
  const way = Math.sign(to - start)
  const size = scaleOf(d, remedy.set, unit, step).step
  const less = read.value - way * size
  if ((less - start) * way <= size * 1e-6) return false
  const text = `${Number(inUnit(less, unit, read.spelled).toPrecision(9))} ${read.spelled}`
  const now = judge(withValue(d, remedy.set, text)).findings.find((f) => key(f) === key(target))
  return !now || now.verdict === 'pass' || now.verdict === remedy.leaves
}

/** The plans that people see are judged whole; of the others only the joint and its places, for the sake of time. */
const whole = new Set<string>([...EXAMPLES, ...BAD])
const JOINT = /^(layout|templates|pocket)\//

function jointOnly(document: PlanDocument): Judged {
  const { plan, issues } = parsePlan(document)
  const room = jointRoom(plan)
  const joint = jointFacts(plan, room)
  const layout = layoutFacts(plan, orNull(joint))
  const templates = templatesFacts(plan, joint, orNull(layout))
  const pocket = pocketFacts(plan, orNull(layout))
  const sites = templatesFindings(plan, { room, templates, pocket })
  return { findings: [...layoutFindings(plan, layout, templates), ...sites], issues }
}

const judgeOf = (name: string) => (whole.has(name) ? judged : jointOnly)
const proved = (name: string, document: PlanDocument): readonly Finding[] =>
  withRemedies(document, (d) => judgeOf(name)(d).findings)

const counted: string[] = []

describe('every remedy', () => {
  it.each(all)(
    'of %s cures, worsens nothing, and is the smallest',
    (name, document) => {
      const findings = proved(name, document)
      const offered = findings.flatMap((f) => f.remedies.map((r) => [f, r] as const))
      counted.push(...offered.map(([f]) => f.id))
      expect(offered.flatMap(([f, r]) => faults(judgeOf(name), document, findings, f, r))).toEqual([])
      const tooMuch = offered.filter(([f, r]) => stepLessCures(judgeOf(name), document, f, r))
      expect(tooMuch.map(([f, r]) => `${key(f)}: ${r.set} → ${r.to}`)).toEqual([])
    },
    240_000,
  )

  it('is offered often enough to be worth the search', () => {
    expect(counted.length).toBeGreaterThan(2 * all.length)
  })
})

const placesOf = (l: Lever): readonly string[] =>
  'together' in l ? l.together.flatMap((wishes) => wishes.map((w) => w.set)) : [l.set]

const page = (id: string): string => join(import.meta.dirname, '..', 'docs/checks', `${id.replace('/', '-')}.md`)
const findings = all.flatMap(([name, d]) => judgeOf(name)(d).findings)
const ids = [...new Set([...Object.keys(english.findings), ...findings.map((f) => f.id)])].sort()

describe('every finding', () => {
  it.each(ids)('%s has its words and its page', (id) => {
    const words = english.findings[id]
    expect(words, 'words').toBeDefined()
    expect(words!.short.length, words!.short).toBeLessThanOrEqual(27)
    expect(existsSync(page(id)), 'page').toBe(true)
    const text = readFileSync(page(id), 'utf8')
    expect(text).toContain(`\`${id}\``)
    for (const heading of ['## Reasoning', '## How it is computed', '## When to ignore it'])
      expect(text).toContain(heading)
  })

  // Of the joint each verdict can be reached from each; elsewhere the slots go with the verdict.
  it('fills every slot of its sentences', () => {
    const open = findings
      .filter((f) => f.measured !== null)
      .flatMap((f) =>
        (JOINT.test(f.id) ? (['pass', 'watch', 'fail'] as const) : [f.verdict]).flatMap((verdict) =>
          [metric, inches].flatMap((display) => {
            const { sentence, because } = findingText({ ...f, verdict }, english, display)
            return /[{}]|NaN|undefined/.test(sentence + because) ? [`${f.id}: ${sentence}`] : []
          }),
        ),
      )
    expect([...new Set(open)]).toEqual([])
  })

  it('names every place in words', () => {
    const places = findings.flatMap((f) => [f.at, ...f.needs, ...f.levers.flatMap(placesOf)])
    expect([...new Set(places)].filter((p) => placeName(p, english) === p)).toEqual([])
  })

  it.each(['layout', 'templates', 'pocket'])('of %s is met by one of these plans', (discipline) => {
    const met = new Set(findings.filter((f) => f.verdict !== 'unknown').map((f) => f.id as string))
    expect(ids.filter((id) => id.startsWith(`${discipline}/`) && !met.has(id))).toEqual([])
  })
})

describe('a bad plan', () => {
  it.each(BAD)(
    '%s is offered a cure for each fault, or its page says why there is none',
    (name) => {
      const left = proved(name, example(`bad/${name}`)).filter((f) => f.verdict === 'fail' && f.remedies.length === 0)
      expect(left.filter((f) => !/no change is offered/i.test(readFileSync(page(f.id), 'utf8'))).map(key)).toEqual([])
    },
    240_000,
  )

  const failing = (name: string) =>
    judged(example(`bad/${name}`))
      .findings.filter((f) => f.verdict === 'fail')
      .map((f) => f.id)

  it('overfull-ring is told of its ring, its lip, its cup and its print', () => {
    const told = ['templates/ring-web', 'templates/lip', 'templates/cup-ledge', 'templates/paper-scale']
    expect(failing('overfull-ring')).toEqual(expect.arrayContaining(told))
  })
  it('stub-wider-than-pipe is told that nothing fits', () => {
    expect(failing('stub-wider-than-pipe')).toContain('templates/stub-fits')
  })
  it('unknown-pipe is told that no table has it', () => {
    const { findings: found } = judged(example('bad/unknown-pipe'))
    expect(found.find((f) => f.id === 'templates/known-pipe' && f.at === 'column/pipe')?.verdict).toBe('watch')
    expect(failing('unknown-pipe')).toContain('templates/stub-fits')
  })
})
