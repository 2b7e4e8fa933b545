import type { Finding, Remedy, Verdict } from '../../../findings/finding.ts'
import { withValue } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'

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
        gust: '20 m/s',
        airLow: '8 °C',
        airHigh: '31 °C',
        walkRound: '0.6 m',
      },
    ],
    ['crops', answers.crops.map((crop) => ({ crop }))],
    ...(answers.pipe === '' ? [] : ([['column/pipe', answers.pipe]] as const)),
    ['pump', answers.pump === null ? {} : { ...answers.pump, supply: 'mains', minimumDepth: '40 mm' }],
  ]
  const base = Object.fromEntries(
    Object.entries(example).filter(([key]) => !['measured', 'water', 'prices'].includes(key)),
  )
  return puts.reduce<PlanDocument>((plan, [path, value]) => withValue(plan, path, value), base)
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
    const changed = withValue(plan, next.set, next.to)
    made.push(next)
    plan = changed
    if (burden(findings) === 0) break
  }
  return { document: plan, made }
}
