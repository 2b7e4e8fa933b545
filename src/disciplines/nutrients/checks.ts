import { checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import type { Plan } from '../../plan/plan.ts'
import { batchChecks, shelfEntries } from './checks-batch.ts'
import { packChecks } from './checks-packs.ts'
import { careFindings, runningChecks } from './checks-running.ts'
import { solutionChecks } from './checks-solution.ts'
import { stockChecks } from './checks-stock.ts'
import { shares, waterChecks } from './checks-water.ts'
import type { NutrientsFacts } from './index.ts'

/** Judges water, shelf, batch, bottles and the care of a solution. */
export const nutrientsFindings = (plan: Plan, facts: NutrientsFacts): readonly Finding[] => [
  ...shares(plan),
  ...checked(waterChecks, facts.blend, plan),
  ...shelfEntries(plan, facts.shelf),
  ...checked([...batchChecks, ...solutionChecks], facts.batch, plan),
  ...(plan.feed?.stock === undefined ? [] : checked(stockChecks, facts.stock, plan)),
  ...checked(packChecks, facts.packs, plan),
  ...checked(runningChecks, facts.running, plan),
  ...careFindings(plan, facts),
]
