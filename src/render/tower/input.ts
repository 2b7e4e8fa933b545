import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { TankFacts } from '../../disciplines/reservoir/index.ts'
import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Display } from '../display.ts'

/** Words that stand on the drawing. */
export interface TowerTexts {
  readonly lid: string
  readonly fillLine: string
  readonly lowLine: string
  readonly round: string
}

export interface TowerInput {
  readonly plan: Plan
  readonly layout: LayoutFacts
  readonly templates: TemplatesFacts | null
  readonly tank: TankFacts | null
  readonly display: Display
  readonly texts: TowerTexts
  /** One to how many. */
  readonly scale: number
  readonly elevation: boolean
  readonly unrolled: boolean
}
