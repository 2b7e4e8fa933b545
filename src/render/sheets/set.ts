import type { Plan } from '../../plan/plan.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Page } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { type Correction, corrected, correctionFactor, correctionIssues } from '../paper/correction.ts'
import { sheet } from '../paper/sheet.ts'
import { placeName } from '../words/sentences.ts'
import { ruled } from './blanks.ts'
import { type Context, context, type Draft, type Drafted, type SheetId, type SheetInput } from './context.ts'
import { cutsSheet } from './cuts.ts'
import { dipStickSheet } from './dip-stick.ts'
import { distributorSheet } from './distributor.ts'
import { batchSheet } from './feed-batch.ts'
import { disposalSheet } from './feed-disposal.ts'
import { labelsSheet } from './feed-labels.ts'
import { gaugeSheet } from './gauge.ts'
import { holeSheet } from './hole.ts'
import { lidSheet } from './lid.ts'
import { markingSheet } from './marking.ts'
import { cupHoleSheet, fittingSheet, pocketSheet } from './other-sites.ts'
import { overviewSheet } from './overview.ts'
import { partsSheet } from './parts.ts'
import { sectionSheet } from './section.ts'
import { standSheet } from './stand.ts'
import { stepsSheet } from './steps.ts'
import { poleSheet, stripSheet } from './strips.ts'
import { stubSheet } from './stub.ts'
import { waterSheet } from './water.ts'
import { wrapSheet } from './wrap.ts'

/** A finished page of the set. */
export interface SetPage {
  readonly id: SheetId
  readonly title: string
  readonly page: Page
}

export interface SheetSet {
  readonly pages: readonly SetPage[]
  /** Sentences about sheets that could not be drawn. */
  readonly leftOut: readonly string[]
  /** Sentences that forbid printing at all: the printer's scale is off. Then there are no pages. */
  readonly refused: readonly string[]
  /** Full-size shapes side by side, for a cutter. */
  readonly contours: Drawing
}

/** Sheets that somebody may want to cut from plastic by machine. */
const FULL_SIZE: readonly SheetId[] = ['hole', 'wrap', 'stub', 'lid', 'distributor', 'pocket', 'cup-hole']

type Maker = (c: Context, numbers: ReadonlyMap<SheetId, number>) => Drafted

const sites: Readonly<Record<string, readonly (readonly [SheetId, Maker])[]>> = {
  stub: [
    ['hole', holeSheet],
    ['wrap', wrapSheet],
    ['stub', stubSheet],
    ['gauge', gaugeSheet],
  ],
  pocket: [['pocket', pocketSheet]],
  hole: [['cup-hole', cupHoleSheet]],
  fitting: [['fitting', fittingSheet]],
}

const makersOf = (plan: Plan): readonly (readonly [SheetId, Maker])[] => {
  const method = plan.column?.sites?.method ?? 'stub'
  return [
    ['overview', overviewSheet],
    ...(method === 'stub' ? ([['section', sectionSheet]] as const) : ([['section', sectionSheet]] as const)),
    ['marking', markingSheet],
    ['strip', stripSheet],
    ['pole', poleSheet],
    ...(sites[method] ?? []),
    ['lid', lidSheet],
    ['dip-stick', dipStickSheet],
    ['distributor', distributorSheet],
    ['water', waterSheet],
    ['stand', standSheet],
    ['cuts', cutsSheet],
    ['parts', partsSheet],
    ['steps', stepsSheet],
    ['batch', batchSheet],
    ['labels', labelsSheet],
    ['disposal', disposalSheet],
  ]
}

/** The printer's correction as the plan states it. */
export function correctionOf(plan: Plan): Correction {
  const nominal_mm = practiceLengths.rows['printed-bar'].low_m * 1000
  const factor = (bar_m: number | undefined) =>
    bar_m === undefined ? 1 : correctionFactor({ nominal_mm, measured_mm: bar_m * 1000 })
  return { x: factor(plan.tools?.barAcross_m), y: factor(plan.tools?.barUp_m) }
}

function refusals(c: Context, correction: Correction): readonly string[] {
  const nominal = practiceLengths.rows['printed-bar'].low_m
  return correctionIssues(correction).map(({ at, expected, received }) =>
    c.say('bar-refused', {
      bar: c.length(nominal / received),
      way: c.say(at === 'correction/x' ? 'way-x' : 'way-y'),
      low: c.length(nominal / expected.high),
      high: c.length(nominal / expected.low),
    }),
  )
}

function leftOutText(c: Context, id: SheetId, drafted: Drafted): readonly string[] {
  if (drafted === null || 'pages' in drafted) return []
  const name = c.say(`name-${id}` as never)
  if ('because' in drafted) return [c.say('left-out-because', { sheet: name, why: c.say(drafted.because) })]
  const needs = drafted.needs.map((n) => placeName(n, c.words)).join(', ')
  return [c.say('left-out', { sheet: name, needs })]
}

function numbered(c: Context, draft: Draft, n: number, of: number, correction: Correction): SetPage {
  const scaled =
    correction.x === 1 && correction.y === 1
      ? ''
      : c.say('corrected', { x: correction.x.toFixed(4), y: correction.y.toFixed(4) })
  const remark = [FULL_SIZE.includes(draft.id) ? c.say('laser-short') : '', scaled].filter((s) => s !== '').join('; ')
  const cell = (label: 'plan' | 'sheet' | 'scale' | 'change' | 'date', value: string) => ({
    label: c.say(label),
    value,
  })
  const page = sheet({
    paper: c.paper,
    words: {
      title: draft.title,
      subtitle: draft.subtitle,
      block: {
        plan: cell('plan', c.plan.name ?? c.say('unnamed')),
        sheet: cell('sheet', c.say('of', { n: String(n), m: String(of) })),
        scale: cell('scale', draft.scale),
        change: cell('change', String(c.plan.change ?? 0)),
        date: cell('date', c.date),
      },
      mm: c.say('mm'),
      inch: c.say('inch'),
      remark,
    },
    drawing: ruled(draft.drawing),
  })
  return { id: draft.id, title: draft.title, page: corrected({ page, correction }).page ?? page }
}

/** Shapes laid side by side with room between them. */
function sideBySide(drawings: readonly Drawing[]): Drawing {
  let x = 0
  return drawings.flatMap((d) => {
    const box = bounds(d)
    if (box === null) return []
    const put = moved(d, [x - box.left, -box.bottom])
    x += box.right - box.left + 20
    return put
  })
}

/** Draws the whole set of a plan. */
export function sheetSet(input: SheetInput, only: readonly SheetId[] = []): SheetSet {
  const c = context(input)
  const correction = correctionOf(input.plan)
  const refused = refusals(c, correction)
  if (refused.length > 0) return { pages: [], leftOut: [], refused, contours: [] }
  const drafts: Draft[] = []
  const leftOut: string[] = []
  const numbers = new Map<SheetId, number>()
  for (const [id, make] of makersOf(input.plan)) {
    const drafted = make(c, numbers)
    leftOut.push(...leftOutText(c, id, drafted))
    if (drafted === null || !('pages' in drafted) || drafted.pages.length === 0) continue
    numbers.set(id, drafts.length + 1)
    drafts.push(...drafted.pages)
  }
  const pages = drafts.map((d, i) => numbered(c, d, i + 1, drafts.length, correction))
  const contours = sideBySide(drafts.flatMap((d) => (d.contours === undefined ? [] : [d.contours])))
  return { pages: only.length === 0 ? pages : pages.filter((p) => only.includes(p.id)), leftOut, refused, contours }
}
