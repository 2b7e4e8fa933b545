import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { buildWhenStale } from '../scripts/prepare.mjs'
import type { evaluate as Evaluate } from '../src/evaluate.ts'
import type { parsePlan as ParsePlan } from '../src/plan/document.ts'
import { withValue } from '../src/plan/patch.ts'
import type { Plan, PlanDocument } from '../src/plan/plan.ts'

const read = (name: string) =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', 'examples', `${name}.plan.json`), 'utf8')) as PlanDocument

/** The sections that the making of a tower needs; the water's path and the feed left out. */
const MAKING = ['rootfall', 'name', 'place', 'reservoir', 'towers', 'column', 'stock', 'tools', 'prices', 'measured']

function forty(): PlanDocument {
  const five = withValue(withValue(read('balcony'), 'column/sites/perRing', 5), 'column/sites/turn', '36 deg')
  return withValue(five, 'column/pipe', { outside: '160 mm', wall: '4 mm', plastic: 'PVC-U' })
}

const only = (document: PlanDocument, keys: readonly string[]): PlanDocument =>
  Object.fromEntries(Object.entries(document).filter(([k]) => keys.includes(k)))

const percentile = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.ceil(share * times.length) - 1]!

/** The engine as it ships: run from its sources, the runner's own marks on every function would be timed with it. */
async function shipped(): Promise<{ readonly evaluate: typeof Evaluate; readonly parsePlan: typeof ParsePlan }> {
  await buildWhenStale()
  return import(pathToFileURL(join(import.meta.dirname, '..', 'dist', 'index.mjs')).href)
}

/** Times of many evaluations by the clock, in milliseconds; on a busy machine they count the waiting too. */
function times(evaluate: typeof Evaluate, plan: Plan, day: boolean): readonly number[] {
  for (let i = 0; i < 200; i++) evaluate(plan, { day })
  return Array.from({ length: 200 }, () => {
    const start = performance.now()
    evaluate(plan, { day })
    return performance.now() - start
  })
}

export const bench = {
  name: 'Whole evaluation of a 40-site column: 95th percentile by the clock against its goal in milliseconds',
  async run() {
    const { evaluate, parsePlan } = await shipped()
    const document = forty()
    const cases = [
      ['geometry, cuts, parts and steps', parsePlan(only(document, MAKING)).plan, false, 10],
      ['with water, stand and power, without the day', parsePlan({ ...document, feed: undefined }).plan, false, 20],
      ['with the day', parsePlan({ ...document, feed: undefined }).plan, true, 50],
      ['with the feed as well', parsePlan(document).plan, true, 70],
    ] as const
    return cases.map(([label, plan, day, goal]) => {
      const [one, two] = [0, 1].map(() => JSON.stringify(evaluate(plan, { day })))
      const same = one === two
      const all = times(evaluate, plan, day)
      const [half, time] = [percentile(all, 0.5), percentile(all, 0.95)]
      const detail = `${time.toFixed(1)} ms of ${goal}; median ${half.toFixed(1)} ms`
      return { label, agreed: same, detail, ratio: time / goal, limit: 1 }
    })
  },
}
