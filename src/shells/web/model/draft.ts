import { readQuantity } from '../../../kernel/quantity-text.ts'
import { valueAt, withoutValue, withValue } from '../../../plan/patch.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import { pipeNamed } from '../../../tables/pipe-match.ts'
import { type PipeId, pipes } from '../../../tables/pipes.ts'
import { type Chosen, chosen } from './chosen.ts'
import { inInches } from './in-inches.ts'
import { type Answers, eitherWay, told } from './new-plan.ts'

/** A first plan, with what the program chose in it. */
export interface Draft {
  readonly document: PlanDocument
  readonly chosen: readonly Chosen[]
}

type Put = readonly [path: string, value: unknown]

const OUTDOORS: readonly string[] = ['balcony', 'garden', 'courtyard']

/** Room over the column in which the distributor is lifted out. */
const LIFT_OUT_m = 0.35

/** Most wind that a sheltered place in a town is planned for; indoors there is none. */
const GUST = { metric: '20 m/s', inch: '45 mph' } as const
const NO_WIND = '0 m/s'
/** Standing room kept free, and lengths that shops sell. */
const WALK_ROUND = { metric: '0.6 m', inch: '24 in' } as const
const SOLD = { metric: '2 m', inch: '10 ft' } as const
/** Under a column narrower than this three stubs of the usual size would meet. */
const NARROW_m = 0.1

const put = (plan: PlanDocument, puts: readonly Put[]): PlanDocument =>
  puts.reduce<PlanDocument>((p, [path, value]) => withValue(p, path, value), plan)

/** A tower of this height stands under the sky of the answer: fewer rings where it is low, and a riser as much shorter. */
function lowered(plan: PlanDocument, height: string): Draft {
  const metres = (path: string): number | null => {
    const text = valueAt(plan, path)
    const read = typeof text === 'string' ? readQuantity(text, 'm') : null
    return read?.ok ? read.value : null
  }
  const ceiling = readQuantity(height, 'm')
  const [length, pitch] = [metres('column/length'), metres('column/sites/pitch')]
  const rings = valueAt(plan, 'column/sites/rings')
  if (!ceiling.ok || length === null || pitch === null || typeof rings !== 'number')
    return { document: plan, chosen: [] }
  const over = length + LIFT_OUT_m - ceiling.value
  const fewer = Math.min(rings - 1, Math.max(0, Math.ceil(over / pitch)))
  if (fewer === 0) return { document: plan, chosen: [] }
  const shorter = (path: string): readonly Put[] => {
    const m = metres(path)
    return m === null ? [] : [[path, `${Math.round((m - fewer * pitch) * 1000)} mm`]]
  }
  const document = put(plan, [
    ['column/sites/rings', rings - fewer],
    ...shorter('column/length'),
    ...shorter('riser/length'),
    ...shorter('riser/outletHeight'),
  ])
  return { document, chosen: [chosen('rings', { rings: rings - fewer, height: height.trim() })] }
}

/** Whether the grower's shop or tape speaks of inches. */
const spokenInInches = (row: PipeId | null, height: string): boolean => {
  const read = readQuantity(height, 'm')
  return (row !== null && / in$/.test(pipes.rows[row].nominal)) || (read.ok && ['in', 'ft'].includes(read.spelled))
}

/** A stub for a column in inches, of the same standard and series, or the nearest that the tables have. */
function inchStub(column: PipeId | null): string {
  const row = column === null ? null : pipes.rows[column]
  const size = row !== null && row.outside_m < NARROW_m ? '1-1/2 in' : '2 in'
  const same = Object.values(pipes.rows).find(
    (r) => r.nominal === size && r.standard === row?.standard && r.series === row.series,
  )
  const usual = same ?? pipes.rows['astm-d1785-2in-sch40']
  return [usual.standard, usual.nominal, usual.series].filter((s) => s !== '').join(' ')
}

/** Wind of the place: as answered, else as a sheltered place has it. */
function windOf({ setting, open }: Answers): 'proposed' | 'none' | 'by the place' {
  if (Object.hasOwn(eitherWay, setting)) return open ? 'proposed' : 'none'
  return OUTDOORS.includes(setting) ? 'proposed' : 'by the place'
}

/** Sections of the example that are somebody's own: measured, owned or paid. */
const OWN = ['measured', 'water', 'prices', 'feed', 'tools', 'stock', 'made']

/** What of the example serves every tower: its measures, without its figures, names and owners. */
const usualTower = (example: PlanDocument): PlanDocument =>
  withoutValue(
    Object.fromEntries(Object.entries(example).filter(([key]) => !OWN.includes(key))),
    'reservoir/container/name',
  )

/** The answers and what goes with them, put into the usual tower. */
function answered(base: PlanDocument, answers: Answers, tongue: keyof typeof GUST, stub: string): PlanDocument {
  const { setting, crops, height, pump, towers } = answers
  const wind = windOf(answers)
  const gust = wind === 'none' ? NO_WIND : GUST[tongue]
  const place = {
    ...{ setting, ceiling: height.trim(), walkRound: WALK_ROUND[tongue] },
    ...(wind === 'by the place' ? {} : { gust }),
  }
  return put(base, [
    ['place', place],
    ['crops', crops.map((crop) => ({ crop }))],
    ['towers', { count: Number(towers), perPump: 1 }],
    ...told(4, answers),
    ...(stub === '' ? [] : [['column/stub/pipe', stub] as const]),
    ['stock', { lengths: ['column', 'stub'].map((of) => ({ of, length: SOLD[tongue] })) }],
    ['pump', { ...(pump?.name ? { name: pump.name } : {}), supply: 'mains' }],
    ...told(5, answers),
  ])
}

/** The plan of a common tower with the answers put in; what else stands in it is proposed, and told. */
export function drafted(example: PlanDocument, answers: Answers, name: string): Draft & { readonly inch: boolean } {
  const row = pipeNamed(answers.pipe.trim()).id
  const inch = spokenInInches(row, answers.height)
  const tongue = inch ? 'inch' : 'metric'
  const heading: readonly Put[] = [
    ...([
      ['name', name],
      ['note', ''],
      ['change', 0],
    ] as const),
    ...([
      ['place', {}],
      ['crops', []],
      ['pump', {}],
    ] as const),
  ]
  const low = lowered(put(usualTower(example), heading), answers.height)
  const stub = inch ? inchStub(row) : ''
  const document = answered(inch ? inInches(low.document) : low.document, answers, tongue, stub)
  const count = Number(answers.towers)
  return {
    document,
    inch,
    chosen: [
      chosen('sizes'),
      ...low.chosen,
      ...(inch ? [chosen('stub', { pipe: stub })] : []),
      chosen('tank', { volume: String(valueAt(document, 'reservoir/fillVolume')) }),
      ...(count > 1 ? [chosen('towers', { count })] : []),
      ...(windOf(answers) === 'proposed' ? [chosen('gust', { gust: GUST[tongue] })] : []),
      chosen('blank'),
    ],
  }
}
