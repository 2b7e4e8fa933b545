import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launched, savedState, served, watched } from './workbench.ts'

let browser: Browser
beforeAll(async () => {
  browser = await launched()
})
afterAll(() => browser.close())

const balcony = JSON.parse(readFileSync(join(import.meta.dirname, '../../examples/balcony.plan.json'), 'utf8'))

/** The balcony without its water and its feed, opened from the folder of plans. */
async function withoutFeed() {
  const { water, feed, ...rest } = balcony
  expect([water, feed]).not.toContain(undefined)
  const server = await served()
  const file = join(server.folder, 'dry.plan.json')
  writeFileSync(file, JSON.stringify({ ...rest, name: 'dry' }, null, 2))
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const { page, wrongs } = await watched(context)
  await page.addInitScript(() => localStorage.setItem('rootfall', JSON.stringify({ last: 'dry' })))
  await page.goto(server.url)
  await page.waitForFunction(() => document.querySelector('h1')?.textContent === 'dry')
  await page.waitForSelector('.fs .f')
  const end = async () => {
    await context.close()
    await server.close()
  }
  return { page, wrongs, file, end }
}

const part = (page: Page, id: string): Promise<void> => page.locator(`.loop a[data-part="${id}"]`).click()

async function typed(page: Page, path: string, text: string): Promise<void> {
  const field = page.locator(`#field-${path.replace(/[^a-zA-Z0-9]/g, '-')}`)
  await field.fill(text)
  await field.press('Enter')
}

/** One more entry under a name, and its figure. */
async function under(page: Page, path: string, name: string, text: string): Promise<void> {
  await typed(page, path, name)
  await typed(page, `${path}/${name}`, text)
}

describe('a plan that was begun without water and feed', () => {
  it('gets a batch by the page alone', { timeout: 120_000 }, async () => {
    const { page, wrongs, file, end } = await withoutFeed()
    await page.getByRole('button', { name: 'Tend', exact: true }).click()
    await page.locator('.tend').getByRole('button', { name: 'the waters' }).click()
    await typed(page, 'water/sources/0/name', 'tap')
    await typed(page, 'water/sources/0/analysis/conductivity', '0.53 mS/cm')
    await typed(page, 'water/sources/0/analysis/pH', '7.4')
    await typed(page, 'water/sources/0/analysis/alkalinity', '4.2 meq/L')
    const ions = { Ca: '82 mg/L', Mg: '12 mg/L', Na: '14 mg/L', Cl: '22 mg/L', SO4: '38 mg/L', NO3: '4 mg/L' }
    for (const [ion, text] of Object.entries(ions)) await under(page, 'water/sources/0/analysis/ions', ion, text)

    await part(page, 'shelf')
    const shelf = ['calcium nitrate tetrahydrate', 'potassium nitrate', 'monopotassium phosphate', 'epsom salt']
    for (const name of shelf) await typed(page, 'feed/shelf', name)

    await part(page, 'batch')
    const targets = { N: '150 mg/L', P: '40 mg/L', K: '200 mg/L', Ca: '150 mg/L', Mg: '40 mg/L' }
    for (const [element, text] of Object.entries(targets)) await under(page, 'feed/targets', element, text)
    await page.waitForFunction(() =>
      /mS\/cm/.test(document.querySelector('.stop:has(a[data-part="batch"]) .fig')?.textContent ?? ''),
    )
    await savedState(page)
    const plan = JSON.parse(readFileSync(file, 'utf8'))
    expect(plan.water.sources).toHaveLength(1)
    expect(plan.water.sources[0].analysis.ions).toEqual(ions)
    expect(plan.feed.shelf).toEqual(shelf.map((name) => ({ name })))
    expect(plan.feed.targets).toEqual(targets)
    const said = await page.locator('.saved').innerText()
    expect(said).toMatch(new RegExp(`change ${plan.change}$`))

    await page.getByRole('button', { name: 'Tend', exact: true }).click()
    await page.getByRole('button', { name: 'What to pour in' }).waitFor()
    expect(wrongs).toEqual([])
    await end()
  })

  it('adds the water from the finding that misses it, and takes it out again', { timeout: 60_000 }, async () => {
    const { page, wrongs, end } = await withoutFeed()
    await part(page, 'water')
    await page.locator('.f.open').getByRole('button', { name: 'Add: water' }).first().click()
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-water-sources-0-name')
    await page.locator('.gh').getByRole('button', { name: 'Remove' }).click()
    await page.locator('#field-water-sources-0-name').waitFor({ state: 'detached' })
    await page.locator('.fields').getByRole('button', { name: 'Add: water' }).waitFor()
    expect(wrongs).toEqual([])
    await end()
  })
})
