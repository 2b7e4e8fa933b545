import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import balcony from '../../examples/balcony.plan.json' with { type: 'json' }
import { drafted } from '../../src/shells/web/model/draft.ts'
import { adjustedPlan } from '../../src/shells/web/workers/adjust.ts'
import { measure } from './overlaps.ts'
import { launched, opened, served, watched } from './workbench.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launched()
})
afterAll(() => browser.close())

const pump = { name: '', maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' }
const answers = {
  ...{ setting: 'balcony', open: true, crops: ['lettuce'], height: '2.5 m', towers: '1', pipe: '', pump, name: '' },
}

const example = (name: string): string =>
  readFileSync(join(import.meta.dirname, `../../examples/${name}.plan.json`), 'utf8')

const plans: Readonly<Record<string, () => string>> = {
  balcony: () => example('balcony'),
  school: () => example('school'),
  hall: () => example('hall'),
  'a new plan': () => JSON.stringify(adjustedPlan(drafted(balcony, answers, 'new')).document),
}

describe('texts, pins and titles of the loop, the drawings and the charts', () => {
  for (const [name, plan] of Object.entries(plans))
    it(`lie over each other in no window: ${name}`, async () => {
      const server = await served()
      writeFileSync(join(server.folder, 'x.plan.json'), plan())
      for (const width of [320, 768, 1440, 1920]) {
        const context = await browser.newContext({ viewport: { width, height: width === 1920 ? 1080 : 900 } })
        const { page, wrongs } = await watched(context)
        await opened(page, server.url)
        await page.waitForTimeout(1000)
        for (const part of ['distributor', 'pump', 'reservoir', 'batch']) {
          await page.locator(`.loop a[data-part="${part}"]`).click()
          await page.waitForTimeout(1200)
          expect(await page.evaluate(measure), `${width}, ${part}`).toEqual([])
        }
        expect(wrongs).toEqual([])
        await context.close()
      }
      await server.close()
    })
})
