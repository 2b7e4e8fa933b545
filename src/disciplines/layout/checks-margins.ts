import type { Check } from '../../findings/check.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceLengths, practiceRatios } from '../../tables/practice.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import type { LayoutFacts } from './index.ts'
import { lengthUp, pitchDown, ringsFewer, STEP_m } from './levers.ts'

/** How far the opening of a site reaches from its mark, by whatever method it is made; down is negative. */
export interface Opening {
  readonly layout: LayoutFacts
  readonly top_m: number
  readonly bottom_m: number
  readonly radius_m: number
}

/** The opening of a site: of the stub, of the plain hole for a cup, or of a slit, which has no height. */
export function openingOf(plan: Plan, layout: Known<LayoutFacts>, templates: Known<TemplatesFacts>): Known<Opening> {
  if (!isKnown(layout)) return layout
  const own = { layout: layout.known }
  const { sites, cup, pocket } = plan.column ?? {}
  if (sites?.method === undefined) return { needs: ['column/sites/method'] }
  if (sites.method === 'hole') {
    const given = needed({ body_m: ['column/cup/body', cup?.body_m] })
    if (!isKnown(given)) return given
    const radius_m = given.known.body_m / 2
    return { known: { ...own, top_m: radius_m, bottom_m: -radius_m, radius_m } }
  }
  if (sites.method === 'pocket') {
    const given = needed({ former_m: ['column/pocket/former', pocket?.former_m] })
    if (!isKnown(given)) return given
    return { known: { ...own, top_m: 0, bottom_m: 0, radius_m: given.known.former_m / 2 } }
  }
  if (!isKnown(templates)) return templates
  const { edges, joint } = templates.known
  return { known: { ...own, ...edges, radius_m: joint.stub.stubRadius_m } }
}

const bored = (plan: Plan): boolean => plan.column?.sites?.method !== 'fitting'

/** Level under which nothing may open: the lid that the column passes, else its foot. */
function drainLevel(plan: Plan, layout: LayoutFacts): Known<number> {
  const kind = plan.column?.base?.kind
  if (kind === undefined) return layout.lid_m === null ? { needs: ['column/base/kind'] } : { known: layout.lid_m }
  if (kind !== 'through the lid') return { known: 0 }
  return layout.lid_m === null ? { needs: ['reservoir/lidHeight'] } : { known: layout.lid_m }
}

/** Pipe kept whole over the highest hole; a stated margin goes before the rule of the trade. */
const topMargin: Check<Opening> = {
  id: 'layout/top-margin',
  at: 'column/topMargin',
  source: practiceLengths.source,
  applies: bored,
  judged: ({ layout, top_m }, plan, terms) => {
    const stated_m = plan.column?.topMargin_m
    const { low_m, high_m } = practiceLengths.rows['top-margin']
    const left_m = layout.aboveLast_m - top_m
    const first_m = plan.column?.sites?.first_m
    return [
      judge(topMargin.id, quantity(left_m, 'm'), {
        ...terms,
        must: { min: stated_m ?? low_m },
        want: { min: Math.max(low_m, stated_m ?? high_m) },
        slots: { highest: quantity(layout.lastMark_m, 'm'), length: quantity(layout.columnLength_m, 'm') },
        levers: [
          ...pitchDown(plan),
          ...(first_m === undefined ? [] : [along('column/sites/first', 0, 'm', STEP_m)]),
          ...ringsFewer(plan),
          ...lengthUp(plan),
        ],
      }),
    ]
  },
}

/** Pipe between the drain's level and the lowest opening. */
const firstHole: Check<Opening> = {
  id: 'layout/first-hole',
  at: 'column/sites/first',
  source: practiceRatios.source,
  applies: bored,
  judged: ({ layout, bottom_m, radius_m }, plan, terms) => {
    const level = drainLevel(plan, layout)
    if (!isKnown(level)) return [unknown(firstHole.id, { ...terms, needs: level.needs })]
    const least_m = practiceRatios.rows['drain-radii'].low * radius_m
    const above_m = layout.firstMark_m + bottom_m - level.known
    const first_m = plan.column?.sites?.first_m
    return [
      judge(firstHole.id, quantity(above_m, 'm'), {
        ...terms,
        must: { min: least_m },
        slots: { lowest: quantity(layout.firstMark_m + bottom_m, 'm'), level: quantity(level.known, 'm') },
        levers:
          first_m === undefined
            ? []
            : [along('column/sites/first', first_m + Math.max(0, least_m - above_m) + STEP_m, 'm', STEP_m)],
      }),
    ]
  },
}

export const marginChecks: readonly Check<Opening>[] = [topMargin, firstHole]
