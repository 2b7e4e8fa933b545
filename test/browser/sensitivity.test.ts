import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, Page } from 'playwright-core'
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

const ALL = 10

/** From the finding of the distributor to the readings that decide it, by keyboard alone. */
async function asked(page: Page): Promise<void> {
  const head = page.locator('.f .head', { hasText: 'Distributor holds its flow' })
  await head.focus()
  await page.keyboard.press('Enter')
  const ask = page.getByRole('button', { name: 'Which reading decides?' })
  await ask.waitFor()
  for (let i = 0; i < 40 && !(await ask.evaluate((b) => b === document.activeElement)); i++)
    await page.keyboard.press('Tab')
  await page.keyboard.press('Enter')
  await page.waitForSelector('.panel')
}

const whole = (page: Page) =>
  page.waitForFunction((n) => document.querySelectorAll('.panel [data-result]').length >= n, ALL, { timeout: 120_000 })

describe('which number matters', () => {
  for (const width of [320, 1440])
    it(`is asked from a finding by keyboard, its own result first, ${width} wide`, async () => {
      const context = await browser.newContext({ viewport: { width, height: width < 400 ? 568 : 900 } })
      const { page, wrongs } = await watched(context)
      await opened(page, server.url)
      await asked(page)
      await whole(page)
      const results = page.locator('.panel [data-result]')
      expect(await results.first().getAttribute('data-result')).toBe('overflow')
      expect(await page.locator('[data-result="flow"] p').first().innerText()).toMatch(
        /^Flow at the top 5\.\d L\/min: the pump’s largest head ±1\.8 L\/min, .*; all else < 0\.\d L\/min\.$/,
      )
      const bars = page.locator('[data-result="flow"] svg')
      expect(await bars.getAttribute('aria-label')).toContain('±1.8 L/min')
      const box = await bars.boundingBox()
      expect(box!.x + box!.width).toBeLessThanOrEqual(width)
      expect(await page.locator('.improve li').first().innerText()).toMatch(/fill a bucket/)
      const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa']).analyze()
      expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.target.join(' ')}`)).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      await page.locator('.improve .link').first().focus()
      await page.keyboard.press('Enter')
      await page.waitForFunction(() => document.activeElement?.id === 'field-pump-maxHead')
      expect(wrongs).toEqual([])
      await context.close()
    }, 180_000)

  it('can be stopped, says so, and begins anew when asked', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
    const { page, wrongs } = await watched(context)
    await opened(page, server.url)
    await asked(page)
    await page.waitForFunction(() => document.activeElement?.textContent === 'Cancel')
    await page.keyboard.press('Enter')
    await page.getByText('Stopped before the end.').waitFor()
    expect(await page.locator('.panel [data-result]').count()).toBeLessThan(ALL)
    await page.waitForFunction(() => document.activeElement?.textContent === 'Compute it')
    await page.keyboard.press('Enter')
    await whole(page)
    expect(await page.getByText('Stopped before the end.').count()).toBe(0)
    expect(wrongs).toEqual([])
    await context.close()
  }, 180_000)

  it('says a number’s why in a slip', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
    const { page } = await watched(context)
    await opened(page, server.url)
    await asked(page)
    await page.waitForSelector('.panel [data-result] .fig')
    await page.locator('.panel [data-result] .fig').first().click()
    await page.waitForSelector('.slip')
    expect(await page.locator('.slip').innerText()).toContain('One reading at a time')
    await context.close()
  }, 120_000)
})
