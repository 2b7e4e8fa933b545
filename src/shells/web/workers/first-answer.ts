import type { PlanDocument } from '../../../plan/plan.ts'
import { sheetsOfDetail, sheetsOfTower } from '../drawings.ts'
import type { Drawn } from '../first.ts'
import { usualRooms } from '../model/room.ts'
import { displayFor } from '../model/shown.ts'
import { type AskedViews, pictures } from '../picture.ts'
import { firstViews } from '../view-list.ts'
import { firstWords } from '../words.ts'
import { evaluated } from './evaluated.ts'
import type { Told } from './protocol.ts'
import { told } from './told.ts'

/** Figures that a screen can show are far fewer; the engine's own answer follows within a second. */
const FIGURES = 7

const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(FIGURES)) : value

/** The first answer as it lies beside the page: without what only the second act shows, and what only remedies need. */
export function firstAnswer(example: PlanDocument): string {
  const whole = told(evaluated(example))
  const { cuts, build, parts, packs, ...facts } = whole.facts
  const findings = whole.findings.map((f) => ({ ...f, levers: [] }))
  const first = { ...whole, facts, findings, whole: false } satisfies Omit<Told, 'facts'> & { facts: unknown }
  return JSON.stringify(first, rounded)
}

/** The first screen drawn for each of the usual rooms, in the language that is spoken. */
export function firstDrawn(example: PlanDocument): readonly string[] {
  const e = evaluated(example)
  return usualRooms.map((room) => {
    const display = displayFor(firstWords(), 'mm', e.plan)
    const asked: AskedViews = { ...room, display, part: 'distributor', views: firstViews }
    const drawn: Drawn = { asked, pictures: pictures(e, asked, [...sheetsOfTower, ...sheetsOfDetail]) }
    return JSON.stringify(drawn, rounded)
  })
}
