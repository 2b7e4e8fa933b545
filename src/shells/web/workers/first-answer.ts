import type { Facts } from '../../../evaluate.ts'
import { isKnown } from '../../../plan/known.ts'
import type { PlanDocument } from '../../../plan/plan.ts'
import type { First } from '../first.ts'
import { evaluated } from './evaluated.ts'

/** Figures that a drawing can show are far fewer; the engine's own answer follows within a second. */
const FIGURES = 7

const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(FIGURES)) : value

/** Curves of more points than this are of no view of the first screen, but for the outline that is cut. */
const POINTS = 24

const withoutCurves = <T>(value: T): T =>
  JSON.parse(JSON.stringify(value, (_, v: unknown) => (Array.isArray(v) && v.length > POINTS ? [] : v))) as T

/** Facts that the views of the first screen draw. */
function drawn({ room, layout, templates, pocket, tank, hydraulics }: Facts): Partial<Facts> {
  if (!isKnown(templates)) return { room, layout, templates, pocket, tank, hydraulics }
  const { holeAlong, holeSquare, ...rest } = templates.known
  const along = rest.joint.cut === 'axis'
  const known = {
    ...withoutCurves(rest),
    holeAlong: along ? holeAlong : withoutCurves(holeAlong),
    holeSquare: along ? withoutCurves(holeSquare) : holeSquare,
  }
  return { room, layout, templates: { known }, pocket, tank, hydraulics }
}

/** The first answer as it lies beside the page. */
export function firstAnswer(example: PlanDocument): string {
  const whole = evaluated(example)
  const facts = JSON.parse(JSON.stringify(drawn(whole.facts), rounded)) as Facts
  const findings = whole.findings.map((f) => ({ ...f, levers: [] }))
  const first: First = { evaluated: { ...whole, facts, findings, whole: false } }
  return JSON.stringify(first)
}
