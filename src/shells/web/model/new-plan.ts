import { cropFacts } from '../../../disciplines/nutrients/crop-strength.ts'
import type { Issue } from '../../../plan/issue.ts'
import { readField } from '../../../plan/parse.ts'
import { fieldAt } from './fields.ts'

/** Answers of the five questions; quantities as typed. */
export interface Answers {
  readonly setting: string
  /** Under the open sky, where the kind of place does not settle it. */
  readonly open: boolean
  readonly crops: readonly string[]
  readonly height: string
  readonly towers: string
  readonly pipe: string
  readonly pump: {
    readonly name: string
    readonly maxHead: string
    readonly maxFlow: string
    readonly power: string
  } | null
  /** As the grower calls it; empty where nobody said. */
  readonly name: string
}

/** Places that may lie in a yard or in a room: it is asked, beginning with the more usual. */
export const eitherWay: Readonly<Record<string, boolean>> = {
  school: true,
  'care home': false,
  'community kitchen': false,
}

/** The figures of a pump's box, in the order in which they are asked for. */
export const pumpFigures = ['maxHead', 'maxFlow', 'power'] as const

const asCount = (text: string): unknown => (/^\d+$/.test(text.trim()) ? Number(text) : text.trim())

/** The places of the plan that a question fills, with what was answered; a figure left empty is not told. */
export function told(question: number, answers: Answers): readonly (readonly [path: string, value: unknown])[] {
  const { setting, crops, height, towers, pipe, pump, name } = answers
  switch (question) {
    case 1:
      return [['place/setting', setting]]
    case 2:
      return crops.map((crop, i) => [`crops/${i}/crop`, crop] as const)
    case 3:
      return [
        ['place/ceiling', height],
        ['towers/count', asCount(towers)],
      ]
    case 4:
      return pipe.trim() === '' ? [] : [['column/pipe', pipe.trim()]]
    default:
      return [
        ...(name.trim() === '' ? [] : [['name', name.trim()] as const]),
        ...pumpFigures.flatMap((key) => {
          const text = pump?.[key].trim() ?? ''
          return text === '' ? [] : [[`pump/${key}`, text] as const]
        }),
      ]
  }
}

/** Crops that are offered, by the names of the plan. */
export const offered = [
  ...['lettuce', 'basil', 'spinach', 'pak choi', 'chard'],
  ...['coriander', 'parsley', 'strawberry', 'mint', 'rocket'],
] as const

/** Crops that cannot share one tank: the two at odds, and the most of them that one strength suits. */
export interface Apart {
  readonly strongest: string
  readonly weakest: string
  /** Least strength of the one, and most of the other. */
  readonly least_S_m: number
  readonly most_S_m: number
  readonly together: readonly string[]
  readonly rest: readonly string[]
}

/** What keeps the crops from sharing a tank; null where they do. */
export function cropsApart(crops: readonly string[]): Apart | null {
  const facts = cropFacts({ crops: crops.map((crop) => ({ crop })) })
  const { shared_S_m: shared, strongest, weakest } = facts
  if (shared === null || shared.low <= shared.high || strongest === null || weakest === null) return null
  const suited = facts.crops.map(({ conductivity_S_m: { low: at } }) =>
    facts.crops.filter(({ conductivity_S_m: { low, high } }) => low <= at && at <= high).map(({ crop }) => crop),
  )
  const together = suited.reduce((a, b) => (b.length > a.length ? b : a))
  const rest = facts.crops.map(({ crop }) => crop).filter((crop) => !together.includes(crop))
  return { strongest, weakest, least_S_m: shared.low, most_S_m: shared.high, together, rest }
}

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
