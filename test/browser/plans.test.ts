import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { planText } from '../../src/plan/document.ts'
import { page as words } from '../../src/render/words/en/page.ts'
import { example } from '../plans.ts'
import { launched, opened, savedState, served, type Watched, watched } from './workbench.ts'

let browser: Browser
const servers: Awaited<ReturnType<typeof served>>[] = []

beforeAll(async () => {
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  await Promise.all(servers.map((server) => server.close()))
})

/** A page on a folder of its own, with the first example. */
async function fresh(): Promise<Watched> {
  const server = await served()
  servers.push(server)
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, acceptDownloads: true })
  const w = await watched(context)
  await opened(w.page, server.url)
  return w
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).first().click()

/** A file let go over the page, as a hand lets it go. */
const dropped = (page: Page, text: string): Promise<void> =>
  page.evaluate((content) => {
    const data = new DataTransfer()
    data.items.add(new File([content], 'mine.plan.json', { type: 'application/json' }))
    document.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }))
  }, text)

const named = (page: Page, name: string): Promise<unknown> =>
  page.waitForFunction((n) => document.querySelector('h1')?.textContent === n, name)

describe('plans on the page', () => {
  it('begins a new one in five questions, tells what it chose, and takes nothing for tied', async () => {
    const { page, wrongs } = await fresh()
    await press(page, 'Plans')
    await press(page, 'New plan, in five questions')
    await press(page, 'Next')
    const crop = (name: string) => page.getByRole('checkbox', { name, exact: true })
    await crop('basil').check()
    expect(await page.locator('.apart').innerText()).toBe('')
    await crop('chard').check()
    expect(await page.locator('.apart').innerText()).toContain('one tank cannot feed both')
    await crop('chard').uncheck()
    for (let i = 0; i < 3; i++) await press(page, 'Next')
    expect(await page.locator('.ask input').first().inputValue()).toBe('')
    await press(page, 'Draw it')
    await named(page, 'Lettuce, basil: balcony')
    await page.waitForFunction(() => document.querySelector('#drawing')?.getAttribute('aria-busy') === 'false')
    const told = await page.locator('.begun li').allInnerTexts()
    expect(told.join(' ')).not.toMatch(/[{}]/)
    for (const part of [/To be done in the build: tie it at .* with a strap/, /any will do that says at least/, /gust/])
      expect(told.filter((t) => part.test(t))).toHaveLength(1)
    expect(await page.locator('.sum').innerText()).toContain(words['sum-fail'])
    await press(page, 'I will tie it so: put it into the plan')
    await page.waitForFunction(
      (fails) => document.querySelector<HTMLElement>('.sum')?.innerText.includes(fails) === false,
      words['sum-fail'],
    )
    await page.locator('.begun input').fill('Roof of ours')
    await page.locator('.begun input').press('Enter')
    await named(page, 'Roof of ours')
    await savedState(page)
    if (process.env['SHOT']) await page.screenshot({ path: process.env['SHOT'] })
    await press(page, 'Understood')
    expect(await page.locator('.begun').count()).toBe(0)
    await press(page, 'Changes')
    expect(await page.locator('.beginning li').allInnerTexts()).toEqual(
      told.map((t) => t.replace(/ I will tie it so.*$/, '')),
    )
    expect(wrongs).toEqual([])
    await page.context().close()
  })

  it('says at the question what is wrong with an answer, keeps it, and asks no further before', async () => {
    const { page } = await fresh()
    await press(page, 'Plans')
    await press(page, 'New plan, in five questions')
    for (let i = 0; i < 2; i++) await press(page, 'Next')
    const field = page.locator('.ask input').first()
    const typed = async (text: string) => {
      await field.fill(text)
      await press(page, 'Next')
    }
    await typed('0.4 m')
    expect(await page.locator('.ask .issue').innerText()).toContain('0.4 m lies outside 0.5 m to 50 m')
    expect(await field.inputValue()).toBe('0.4 m')
    expect(await field.getAttribute('aria-invalid')).toBe('true')
    expect(await page.locator('.panel').innerText()).toContain('Question 3 of 5')
    await typed('2.4 m')
    expect(await page.locator('.panel').innerText()).toContain('Question 4 of 5')
    await typed('a drain')
    expect(await page.locator('.ask .issue').innerText()).toContain('“a drain”')
    await typed('')
    await page.locator('.ask input').first().fill('200 m')
    await press(page, 'Draw it')
    expect(await page.locator('.ask .issue').innerText()).toContain('200 m lies outside 0.1 m to 60 m')
    expect(await page.locator('.panel').innerText()).toContain('Question 5 of 5')
    await page.context().close()
  })

  it('takes a file that is dropped or chosen, and gives the same file back', async () => {
    const { page, wrongs } = await fresh()
    const school = example('school')
    await dropped(page, planText(school))
    await named(page, String(school['name']))
    await press(page, 'Plans')
    const download = page.waitForEvent('download')
    await press(page, 'Save as a file')
    const saved = JSON.parse(readFileSync(String(await (await download).path()), 'utf8')) as object
    expect({ ...saved, change: 0 }).toEqual({ ...school, change: 0 })
    const file = join(mkdtempSync(join(tmpdir(), 'rootfall-file-')), 'hall.plan.json')
    writeFileSync(file, planText(example('hall')))
    await page.locator('input[type=file]').setInputFiles(file)
    await named(page, String(example('hall')['name']))
    expect(wrongs).toEqual([])
    await page.context().close()
  })

  it('says why a file is no plan, and keeps the one that is open', async () => {
    const { page, wrongs } = await fresh()
    const name = String(example('balcony')['name'])
    await dropped(page, '{"rootfall": 99}')
    await page.waitForFunction(() => /99/.test(document.querySelector('[role=alert]')?.textContent ?? ''))
    await named(page, name)
    expect(wrongs).toEqual([])
    await page.context().close()
  })

  it('sets two side by side: only what differs, by the same findings, and the change in words', async () => {
    const { page, wrongs } = await fresh()
    await page.locator('.loop a[data-part="column"]').click()
    await page.locator('#field-column-sites-pitch').fill('190 mm')
    await page.locator('#field-column-sites-pitch').press('Enter')
    await savedState(page)
    await press(page, 'Compare')
    await page.waitForFunction(() => /190 mm/.test(document.querySelector('.panel')?.textContent ?? ''))
    await page.waitForFunction(() => document.querySelectorAll('.diff').length === 2)
    const text = await page.locator('.panel').innerText()
    expect(text).toContain('180 mm')
    expect(text).not.toContain('110 mm')
    expect(await page.locator('.diff tbody tr').count()).toBeGreaterThan(1)
    expect(text).not.toContain(words['compare-uneven'])
    await page.locator('.panel select').selectOption({ label: words['example-school'] })
    await page.waitForFunction(
      (uneven) => document.querySelector('.panel')?.textContent?.includes(uneven),
      words['compare-uneven'],
    )
    expect(await page.locator('.panel .diff').first().innerText()).toMatch(
      new RegExp(`${words['compare-sites']}\\s+24\\s+\\d+`),
    )
    await press(page, 'Changes')
    expect(await page.locator('.log').innerText()).toMatch(/180 mm.*190 mm/)
    expect(wrongs).toEqual([])
    await page.context().close()
  })
})
