import { withRemedy } from '../../../findings/apply.ts'
import type { Finding, Remedy, Verdict } from '../../../findings/finding.ts'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import type { Issue } from '../../../plan/issue.ts'
import { readField } from '../../../plan/parse.ts'
import { valueAt, withValue } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { fieldAt } from './fields.ts'

/** Answers of the five questions; quantities as typed. */
export interface Answers {
  readonly setting: string
  readonly crops: readonly string[]
  readonly height: string
  readonly pipe: string
  readonly pump: {
    readonly name: string
    readonly maxHead: string
    readonly maxFlow: string
    readonly power: string
  } | null
}

/** The figures of a pump's box, in the order in which they are asked for. */
export const pumpFigures = ['maxHead', 'maxFlow', 'power'] as const

/** The places of the plan that a question fills, with what was answered; a figure left empty is not told. */
export function told(question: number, answers: Answers): readonly (readonly [path: string, value: unknown])[] {
  const { setting, crops, height, pipe, pump } = answers
  switch (question) {
    case 1:
      return [['place/setting', setting]]
    case 2:
      return crops.map((crop, i) => [`crops/${i}/crop`, crop] as const)
    case 3:
      return [['place/ceiling', height]]
    case 4:
      return pipe.trim() === '' ? [] : [['column/pipe', pipe.trim()]]
    default:
      return pumpFigures.flatMap((key) => {
        const text = pump?.[key].trim() ?? ''
        return text === '' ? [] : [[`pump/${key}`, text] as const]
      })
  }
}

/** Crops that are offered, by the names of the plan. */
export const offered = [
  ...['lettuce', 'basil', 'spinach', 'pak choi', 'chard'],
  ...['coriander', 'parsley', 'strawberry', 'mint', 'rocket'],
] as const

/** What is wrong with the answer to a question, as the field of the plan itself would say it. */
export function answerIssues(question: number, answers: Answers): readonly Issue[] {
  const issues: Issue[] = []
  if (question === 2 && answers.crops.length === 0)
    issues.push({ at: 'crops', problem: 'none-chosen', received: '', expected: offered })
  for (const [path, value] of told(question, answers)) {
    const field = fieldAt(path)
    if (field === null) throw new RangeError(`answerIssues: no field ${path}`)
    readField({ issues }, field, value, path)
  }
  return issues
}

const OUTDOORS: readonly string[] = ['balcony', 'garden', 'courtyard']

/** A tower of this height stands under the sky of the answer: fewer rings where it is low, and a riser as much shorter. */
function lowered(plan: PlanDocument, height: string): PlanDocument {
  const metres = (path: string): number | null => {
    const text = valueAt(plan, path)
    const read = typeof text === 'string' ? readQuantity(text, 'm') : null
    return read?.ok ? read.value : null
  }
  const ceiling = readQuantity(height, 'm')
  const [length, pitch] = [metres('column/length'), metres('column/sites/pitch')]
  const rings = valueAt(plan, 'column/sites/rings')
  if (!ceiling.ok || length === null || pitch === null || typeof rings !== 'number') return plan
  const over = length + LIFT_OUT_m - ceiling.value
  const fewer = Math.min(rings - 1, Math.max(0, Math.ceil(over / pitch)))
  if (fewer === 0) return plan
  const shorter = (path: string): readonly (readonly [string, unknown])[] => {
    const m = metres(path)
    return m === null ? [] : [[path, `${Math.round((m - fewer * pitch) * 1000)} mm`]]
  }
  const puts = [
    ['column/sites/rings', rings - fewer] as const,
    ...shorter('column/length'),
    ...shorter('riser/length'),
    ...shorter('riser/outletHeight'),
  ]
  return puts.reduce<PlanDocument>((p, [path, value]) => withValue(p, path, value), plan)
}

/** Room over the column in which the distributor is lifted out. */
const LIFT_OUT_m = 0.35

/** Most wind that a sheltered place in a town is planned for; indoors there is none. */
const GUST = '20 m/s'

/** The plan of a common tower with the answers put in; the rest is the example's, to be measured and changed. */
export function drafted(example: PlanDocument, answers: Answers, name: string): PlanDocument {
  const puts: readonly (readonly [string, unknown])[] = [
    ['name', name],
    ['note', ''],
    ['change', 0],
    [
      'place',
      {
        setting: answers.setting,
        ceiling: answers.height,
        ...(OUTDOORS.includes(answers.setting) ? { gust: GUST } : {}),
        walkRound: '0.6 m',
      },
    ],
    ['crops', answers.crops.map((crop) => ({ crop }))],
    ...told(4, answers),
    ['pump', answers.pump === null ? {} : { name: answers.pump.name, supply: 'mains', minimumDepth: '40 mm' }],
    ...told(5, answers),
  ]
  const base = Object.fromEntries(
    Object.entries(example).filter(([key]) => !['measured', 'water', 'prices'].includes(key)),
  )
  const plan = puts.reduce<PlanDocument>((p, [path, value]) => withValue(p, path, value), base)
  return lowered(plan, answers.height)
}

const weight: Readonly<Record<Verdict, number>> = { fail: 100, watch: 1, unknown: 0, pass: 0 }
const ROUNDS = 12

const burden = (findings: readonly Finding[]): number => findings.reduce((sum, f) => sum + weight[f.verdict], 0)

/** One change that was made so that the tower holds. */
export interface Adjusted {
  readonly document: PlanDocument
  readonly made: readonly Remedy[]
}

/**
 * Applies proved remedies, worst finding first, until nothing fails that one change can cure. `proved` gives the
 * findings with their remedies.
 */
export function adjusted(
  document: PlanDocument,
  proved: (document: PlanDocument) => readonly Finding[],
  told: (round: number, of: number) => void = () => undefined,
): Adjusted {
  const made: Remedy[] = []
  let plan = document
  for (let round = 0; round < ROUNDS; round++) {
    told(round, ROUNDS)
    const findings = proved(plan)
    const next = findings.find((f) => f.verdict === 'fail' && f.remedies.length > 0)?.remedies[0]
    if (!next) break
    const changed = withRemedy(plan, next)
    made.push(next)
    plan = changed
    if (burden(findings) === 0) break
  }
  return { document: plan, made }
}
