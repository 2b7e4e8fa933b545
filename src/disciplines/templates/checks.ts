import { checked } from '../../findings/check.ts'
import type { Finding } from '../../findings/finding.ts'
import { unknown } from '../../findings/judge.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { boreChecks, fitFindings } from './checks-bore.ts'
import { cupFindings } from './checks-cup.ts'
import { holeChecks } from './checks-hole.ts'
import { lipChecks } from './checks-lip.ts'
import { fittingFindings, plainHoleChecks } from './checks-other.ts'
import { paperFindings } from './checks-paper.ts'
import { gapFindings, pipeFindings } from './checks-pipe.ts'
import { pocketChecks } from './checks-pocket.ts'
import type { JointRoom, PocketFacts, TemplatesFacts } from './index.ts'
import { plainHoleFacts } from './plain-hole-facts.ts'

interface Sites {
  readonly room: Known<JointRoom>
  readonly templates: Known<TemplatesFacts>
  readonly pocket: Known<PocketFacts>
}

function stubFindings(plan: Plan, { room, templates }: Sites): readonly Finding[] {
  return [
    ...fitFindings(plan, room),
    ...checked([...holeChecks, ...boreChecks, ...lipChecks], templates, plan),
    ...cupFindings(plan, templates),
    ...gapFindings(plan),
  ]
}

/** What belongs to the way in which the sites are made; while that is open, only that it is. */
function siteFindings(plan: Plan, facts: Sites): readonly Finding[] {
  switch (plan.column?.sites?.method) {
    case 'stub':
      return stubFindings(plan, facts)
    case 'pocket':
      return checked(pocketChecks, facts.pocket, plan)
    case 'hole':
      return checked(plainHoleChecks, plainHoleFacts(plan), plan)
    case 'fitting':
      return fittingFindings(plan)
    default:
      return [
        unknown('templates/stub-fits', {
          at: 'column/stub/pipe',
          source: 'Geometry.bore',
          needs: ['column/sites/method'],
        }),
      ]
  }
}

/** Judges pipes, sites and the paper of the templates. */
export const templatesFindings = (plan: Plan, facts: Sites): readonly Finding[] => [
  ...pipeFindings(plan),
  ...siteFindings(plan, facts),
  ...paperFindings(plan),
]
