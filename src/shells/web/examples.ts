import balcony from '../../../examples/balcony.plan.json'
import type { PlanDocument } from '../../plan/plan.ts'

const others: Readonly<Record<string, () => Promise<{ readonly default: PlanDocument }>>> = {
  school: () => import('../../../examples/school.plan.json'),
  hall: () => import('../../../examples/hall.plan.json'),
}

/** The plan that a page without any plan opens with. */
export const firstExample: PlanDocument = balcony

export const exampleNames = ['balcony', ...Object.keys(others)]

export const exampleOf = async (name: string): Promise<PlanDocument | null> =>
  name === 'balcony' ? firstExample : ((await others[name]?.())?.default ?? null)
