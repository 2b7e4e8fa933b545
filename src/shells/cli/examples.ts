import balcony from '../../../examples/balcony.plan.json'
import hall from '../../../examples/hall.plan.json'
import school from '../../../examples/school.plan.json'
import type { PlanDocument } from '../../plan/plan.ts'

const examples: Readonly<Record<string, PlanDocument>> = { balcony, school, hall }

export const exampleNames = Object.keys(examples)

export const exampleOf = (name: string): PlanDocument | undefined =>
  Object.hasOwn(examples, name) ? examples[name] : undefined
