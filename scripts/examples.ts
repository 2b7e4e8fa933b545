// Writes the reviewed evaluations beside the examples. Only `npm run examples` runs it; tests only compare.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { evaluate } from '../src/evaluate.ts'
import type { Finding } from '../src/findings/finding.ts'
import { ends } from '../src/kernel/units.ts'
import { parsePlan } from '../src/plan/document.ts'
import type { PlanDocument } from '../src/plan/plan.ts'

const DIGITS = 6
/** Below this a number is nothing but the rounding of floating point. */
const NOTHING = 1e-12
const rounded = (n: number): number => (Math.abs(n) < NOTHING ? 0 : Number(n.toPrecision(DIGITS)))

function finding(f: Finding) {
  const { id, at, verdict, measured } = f
  if (measured === null) return { id, at, verdict, needs: f.needs }
  return { id, at, verdict, measured: [...new Set(ends(measured).map(rounded))], unit: measured.unit }
}

/** The facts that a grower would know the tower by. */
function keyFacts({ facts }: ReturnType<typeof evaluate>) {
  const { layout, templates } = facts
  const l = 'known' in layout ? layout.known : null
  const t = 'known' in templates ? templates.known : null
  return {
    plants: l?.plants ?? null,
    firstMark_m: l ? rounded(l.firstMark_m) : null,
    lastMark_m: l ? rounded(l.lastMark_m) : null,
    holeHeight_m: t ? rounded(t.holeAlong.extent.height_m) : null,
    holeArc_m: t ? rounded(t.holeAlong.extent.arc_m) : null,
    stubCentre_m: t ? rounded(t.stub.lengths.centre_m) : null,
    lip_m: t ? rounded(t.stub.lip_m) : null,
  }
}

/** Issues, findings and key facts of a plan, one finding a line. */
export function evaluationText(document: PlanDocument): string {
  const { plan, issues } = parsePlan(document)
  const evaluation = evaluate(plan)
  const lines = (list: readonly unknown[]) => list.map((x) => `\n    ${JSON.stringify(x)}`).join(',')
  return `{
  "facts": ${JSON.stringify(keyFacts(evaluation))},
  "issues": [${lines(issues.map(({ at, problem }) => ({ at, problem })))}\n  ],
  "findings": [${lines(evaluation.findings.map(finding))}\n  ]
}
`
}

const folder = join(import.meta.dirname, '..', 'examples')

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const plans = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) => f.endsWith('.plan.json'))
  for (const file of plans) {
    const document = JSON.parse(readFileSync(join(folder, file), 'utf8')) as PlanDocument
    writeFileSync(join(folder, file.replace('.plan.json', '.evaluation.json')), evaluationText(document))
  }
}
