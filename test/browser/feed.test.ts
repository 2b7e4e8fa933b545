import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import type { Browser, BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launched, opened, served, watched } from './workbench.ts'

let browser: Browser
let server: Awaited<ReturnType<typeof served>>

beforeAll(async () => {
  browser = await launched()
  server = await served()
})
afterAll(async () => {
  await browser.close()
  await server.close()
})

const choose = async (page: Page, part: string): Promise<void> => {
  await page.locator(`.loop a[data-part="${part}"]`).click()
  await page.waitForSelector(`.loop .stop.on a[data-part="${part}"]`)
}

const shown = async (width: number): Promise<{ context: BrowserContext; page: Page; wrongs: string[] }> => {
  const context = await browser.newContext({ viewport: { width, height: width < 400 ? 568 : 900 } })
  const { page, wrongs } = await watched(context)
  await opened(page, server.url)
  await choose(page, 'batch')
  await page.waitForSelector('.feed-ladder .live')
  return { context, page, wrongs }
}

describe('the feed on the page', () => {
  it('is three parts of the loop, each with its figure, its fields and its findings', async () => {
    const { context, page, wrongs } = await shown(1440)
    const figure = (part: string) => page.locator(`.loop .stop:has(a[data-part="${part}"]) .fig`).innerText()
    expect(await figure('water')).toMatch(/Tap, 4\.20?\smeq\/L/)
    expect(await figure('shelf')).toMatch(/^12\sproducts$/)
    expect(await figure('batch')).toMatch(/^1\.6\d\smS\/cm$/)
    const wanted = { water: 'Ca', shelf: 'fine scale', batch: 'pH' }
    for (const [part, field] of Object.entries(wanted)) {
      await choose(page, part)
      await page.waitForFunction((name) => document.querySelector('.fields')?.textContent?.includes(name), field)
      expect(await page.locator('.fields .fd').count(), part).toBeGreaterThan(5)
      expect(await page.locator('.loop .stop.on .bal').count(), `${part} has findings`).toBeGreaterThan(0)
    }
    expect(wrongs).toEqual([])
    await context.close()
  })

  for (const width of [320, 1440])
    it(`draws three charts whose every figure opens its why, ${width} wide`, async () => {
      const { context, page, wrongs } = await shown(width)
      for (const id of ['feed-ions', 'feed-charge', 'feed-ladder']) {
        const figures = page.locator(`.${id} .live`)
        const count = await figures.count()
        expect(count, id).toBeGreaterThan(10)
        for (let i = 0; i < count; i++) expect(await figures.nth(i).getAttribute('data-why')).toMatch(/^(field|fact):/)
        const box = await page.locator(`.${id} svg`).boundingBox()
        expect(box!.x + box!.width, id).toBeLessThanOrEqual(width)
      }
      await page.locator('.feed-charge .live').last().dispatchEvent('click')
      await page.waitForSelector('.slip')
      expect(await page.locator('.slip').innerText()).toContain('as many positive charges as negative ones')
      expect(wrongs).toEqual([])
      await context.close()
    })

  it('redraws as the plan is typed: with more rain calcium nitrate finds room', async () => {
    const { context, page } = await shown(1440)
    const nitrogen = page.locator('.feed-ions .live[data-why="fact:feed/reached"]').nth(1)
    expect(await nitrogen.textContent()).toMatch(/^125/)
    await choose(page, 'water')
    const share = page.locator('.fields [data-why="field:water/sources/1/share"] input')
    await share.fill('60 %')
    await share.press('Enter')
    await page.waitForFunction(() => {
      const figure = document.querySelectorAll('.feed-ions .live[data-why="fact:feed/reached"]')[1]
      return Number(figure?.textContent) > 140
    })
    await context.close()
  })
})

describe('today’s correction on the page', () => {
  it('takes the height on the dip stick, tells how a figure was read, keeps it, and says what the command line says', async () => {
    const { context, page, wrongs } = await shown(1440)
    await page.getByRole('button', { name: 'Tend', exact: true }).click()
    const readings = { 'in the tank': '130 mm', conductivity: '1,5 mS/cm', pH: '6,4', temperature: '21' }
    for (const [name, typed] of Object.entries(readings))
      await page.locator('form').getByLabel(name, { exact: true }).fill(typed)
    await page.getByRole('button', { name: 'Draw', exact: true }).click()
    await page.getByRole('button', { name: 'Tend', exact: true }).click()
    expect(await page.locator('form').getByLabel('in the tank', { exact: true }).inputValue()).toBe('130 mm')
    await page.getByRole('button', { name: 'What to pour in' }).click()
    await page.waitForSelector('.pour li')
    const lines = await page.locator('.pour li').allInnerTexts()
    expect(lines[0]).toContain('“6,4” read as 6.4')
    expect(lines[1]).toContain('“1,5 mS/cm” read as 1.5 mS/cm')
    const said = execFileSync(
      join(import.meta.dirname, '../../rootfall'),
      [
        'correct',
        'examples/balcony.plan.json',
        '--level',
        '130 mm',
        '--ec',
        '1.5 mS/cm',
        '--ph',
        '6.4',
        '--temp',
        '21 °C',
      ],
      { cwd: join(import.meta.dirname, '../..') },
    ).toString()
    const squeezed = (text: string) => text.replaceAll(/\s+/g, ' ').trim()
    for (const line of lines.slice(2)) expect(squeezed(said)).toContain(squeezed(line))
    await page.locator('form').getByLabel('in the tank', { exact: true }).fill('400 mm')
    await page.getByRole('button', { name: 'What to pour in' }).click()
    await page.waitForFunction(() => /over its rim/.test(document.querySelector('.pour')?.textContent ?? ''))
    expect(wrongs).toEqual([])
    await context.close()
  })
})
