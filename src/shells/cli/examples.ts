import balcony from '../../../examples/balcony.plan.json'
import type { PlanDocument } from '../../plan/plan.ts'

const examples: Readonly<Record<string, PlanDocument>> = { balcony }

export const exampleNames = Object.keys(examples)

export const exampleOf = (name: string): PlanDocument | undefined =>
  Object.hasOwn(examples, name) ? examples[name] : undefined
