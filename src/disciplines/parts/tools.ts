import { type Quantity, quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { measuresOf } from '../../plan/tape.ts'
import { drills, drillsNear } from '../../tables/drills.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { BuildFacts } from '../build/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'

/** A tool that steps of the build need. */
export interface Tool {
  readonly id: string
  readonly sizes: Readonly<Record<string, Quantity>>
  /** Mark of the nearest size of the trade. */
  readonly label: string | null
  /** Whether the plan says that it is there; null where the plan does not say. */
  readonly atHand: boolean | null
  readonly steps: readonly string[]
}

/** A saw is at hand where its size is the one meant, within what a label rounds. */
const LABEL_m = 0.0006

/** Wider holes are sawn. */
const WIDEST_m = Math.max(
  ...Object.values(drills.rows).flatMap((d) => (d.kind === 'twist drill' ? [d.diameter_m] : [])),
)

function sized(
  plan: Plan,
  kind: 'twist drill' | 'hole saw',
  diameter_m: number | null,
): Pick<Tool, 'sizes' | 'label' | 'atHand'> {
  if (diameter_m === null) return { sizes: {}, label: null, atHand: null }
  const near = drills.rows[drillsNear({ diameter_m, system: measuresOf(plan), kind }).nearest]
  const owned = plan.tools?.holeSaws
  const atHand =
    kind === 'twist drill' || owned === undefined ? null : owned.some((d) => Math.abs(d - near.diameter_m) <= LABEL_m)
  return {
    sizes: { wanted: quantity(diameter_m, 'm'), nearest: quantity(near.diameter_m, 'm') },
    label: near.label,
    atHand,
  }
}

const plain = (atHand: boolean | null, label: string | null = null) => ({ sizes: {}, label, atHand })

function detail(plan: Plan, templates: TemplatesFacts | null, id: string): Pick<Tool, 'sizes' | 'label' | 'atHand'> {
  const { tools, column, distributor } = plan
  const said = (value: unknown): boolean | null => (value === undefined ? null : true)
  const hole_m = templates === null ? (column?.cup?.body_m ?? null) : 2 * templates.joint.hole.holeRadius_m
  switch (id) {
    case 'saw':
      return plain(said(tools?.saw), tools?.saw ?? null)
    case 'tape':
    case 'ruler':
      return plain(said(tools?.tape), tools?.tape ?? null)
    case 'printer':
      return plain(said(tools?.paper), tools?.paper ?? null)
    case 'jigsaw':
      return plain(tools?.holeTool === 'jigsaw' || tools?.saw === 'jigsaw' ? true : null)
    case 'rotary-tool':
    case 'hole-tool':
      return plain(said(tools?.holeTool))
    case 'hole-saw':
      return sized(plan, 'hole saw', hole_m)
    case 'filler-saw':
      return sized(plan, 'hole saw', practiceLengths.rows['lid-filler'].low_m)
    case 'distributor-bit':
      return sized(plan, 'twist drill', distributor?.hole_m ?? null)
    case 'drain-bit':
      return sized(
        plan,
        plan.drain?.hole_m !== undefined && plan.drain.hole_m > WIDEST_m ? 'hole saw' : 'twist drill',
        plan.drain?.hole_m ?? null,
      )
    case 'starter-bit':
      return sized(plan, 'twist drill', practiceLengths.rows['starter-drill'].low_m)
    case 'scale':
      return plain(said(plan.feed?.scale_kg))
    default:
      return plain(null)
  }
}

/** Steps by what they name, in the order in which it is first named. */
export function stepsBy<Step extends { readonly id: string }, Id extends string>(
  steps: readonly Step[],
  named: (step: Step) => readonly Id[],
): ReadonlyMap<Id, readonly Step['id'][]> {
  const by = new Map<Id, Step['id'][]>()
  for (const step of steps)
    for (const id of new Set(named(step))) {
      const known = by.get(id)
      if (known) known.push(step.id)
      else by.set(id, [step.id])
    }
  return by
}

/** All tools of the steps, each with the steps that use it. */
export function toolsOf(plan: Plan, build: BuildFacts | null, templates: TemplatesFacts | null): readonly Tool[] {
  const byTool = stepsBy(build?.steps ?? [], (s) => s.tools)
  return [...byTool].map(([id, steps]) => ({ id, ...detail(plan, templates, id), steps }))
}
