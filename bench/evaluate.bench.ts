import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { evaluate } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
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

/** Processor time, so that other work on the machine does not count as ours. */
function p95(plan: Plan, day: boolean): number {
  for (let i = 0; i < 60; i++) evaluate(plan, { day })
  const times = Array.from({ length: 100 }, () => {
    const t = process.cpuUsage()
    evaluate(plan, { day })
    const used = process.cpuUsage(t)
    return (used.user + used.system) / 1000
  })
  return times.sort((a, b) => a - b)[94]!
}

export const bench = {
  name: 'Whole evaluation of a 40-site column: 95th percentile of processor time against its goal in milliseconds',
  async run() {
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
      const time = p95(plan, day)
      return { label, agreed: same, detail: `${time.toFixed(1)} ms of ${goal}`, ratio: time / goal, limit: 1 }
    })
  },
}
