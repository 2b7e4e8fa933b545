import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
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

/** Only the named views are shown. */
async function only(page: Page, names: readonly string[]): Promise<void> {
  const buttons = page.locator('footer .views button')
  for (let i = 0; i < (await buttons.count()); i++) {
    const button = buttons.nth(i)
    const shown = (await button.getAttribute('aria-pressed')) === 'true'
    if (shown !== names.includes((await button.innerText()).trim())) await button.click()
  }
}

async function desk(reducedMotion: 'reduce' | 'no-preference' = 'no-preference') {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    acceptDownloads: true,
    reducedMotion,
  })
  const w = await watched(context)
  await opened(w.page, server.url)
  return { ...w, context }
}

/** A browser without a graphics card says of its own that reading a canvas is slow. */
const ours = (wrongs: readonly string[]) => wrongs.filter((t) => !/GPU stall due to ReadPixels/.test(t))

describe('the view of the flow', () => {
  it('draws the water’s way with its numbers, each of which opens its why', async () => {
    const { page, wrongs, context } = await desk()
    await only(page, ['Flow'])
    const figures = page.locator('figure.flow .live')
    await figures.first().waitFor()
    const texts = await figures.allTextContents()
    for (const said of ['over the holes', 'film', 'in the riser', 'pump gives', 'fill line 219.6 mm', 'after a stop'])
      expect(
        texts.some((t) => t.includes(said)),
        said,
      ).toBe(true)
    const facts = page.locator('figure.flow .live:not(.field)')
    for (let i = 0; i < (await facts.count()); i++) {
      await facts.nth(i).click()
      await page.locator('.slip').waitFor()
      expect(
        (await page.locator('.slip').innerText()).length,
        await facts.nth(i).textContent().then(String),
      ).toBeGreaterThan(60)
      await page.keyboard.press('Escape')
      await page.locator('.slip').waitFor({ state: 'detached' })
    }
    expect(ours(wrongs)).toEqual([])
    await context.close()
  })
})

describe('the view of the solid', () => {
  it('is turned, tilted and cut open by keyboard and by its buttons, and says in words what it shows', async () => {
    const { page, wrongs, context } = await desk('reduce')
    await only(page, ['Solid'])
    const canvas = page.locator('.solid canvas')
    await canvas.waitFor({ timeout: 30_000 })
    const picture = async () => {
      await page.waitForTimeout(700)
      return (await canvas.screenshot()).toString('base64')
    }
    const alt = () => canvas.getAttribute('aria-label')
    const first = await picture()
    // Ink on paper: a blank canvas is a picture of a few hundred bytes.
    expect(first.length).toBeGreaterThan(8000)
    expect(await alt()).toContain('24 stubs')
    await page.getByRole('button', { name: 'Turn left' }).focus()
    await page.keyboard.press('ArrowRight')
    const turned = await picture()
    expect(turned).not.toBe(first)
    expect(await alt()).toContain('45°')
    await page.keyboard.press('ArrowUp')
    expect(await alt()).toContain('30° above')
    await page.keyboard.press('c')
    expect(await alt()).toContain('cut open')
    expect(await picture()).not.toBe(turned)
    await page.getByRole('button', { name: 'Cut open' }).click()
    expect(await alt()).not.toContain('cut open')
    const { violations } = await new AxeBuilder({ page }).include('.solid').analyze()
    expect(violations.map((v) => v.id)).toEqual([])
    expect(ours(wrongs)).toEqual([])
    await context.close()
  })
})

describe('the booklet', () => {
  it('is made on the page, as one HTML file and as PDF', async () => {
    const { page, wrongs, context } = await desk()
    await page.getByRole('button', { name: 'Make', exact: true }).click()
    const file = async (name: string) => {
      const download = page.waitForEvent('download', { timeout: 120_000 })
      await page.getByRole('button', { name }).click()
      return readFileSync(String(await (await download).path()))
    }
    const html = (await file('Booklet, one HTML file')).toString()
    expect(html).toContain('For pupils')
    expect(html).toContain('font/woff2;base64,d09GMg')
    expect(html).not.toMatch(/(src|href)="(?!#|data:)/)
    expect((await file('Booklet, PDF')).subarray(0, 5).toString()).toBe('%PDF-')
    expect(ours(wrongs)).toEqual([])
    await context.close()
  })
})

describe('a sheet of the tower', () => {
  it('tells the scale at which it is shown, also where its column is too narrow for it', async () => {
    const shown = async (width: number) => {
      const own = await served()
      const school = join(import.meta.dirname, '../../examples/school.plan.json')
      writeFileSync(join(own.folder, 'school.plan.json'), readFileSync(school))
      const context = await browser.newContext({ viewport: { width, height: 900 } })
      const { page } = await watched(context)
      await opened(page, own.url)
      await page.waitForFunction(() => document.querySelector('#drawing')?.getAttribute('aria-busy') === 'false')
      await page.waitForTimeout(300)
      const result = await page.evaluate(() => {
        const figure = document.querySelector('figure.tower')!
        const sheet = figure.querySelector<SVGSVGElement>('svg.sheet')!
        const said = /1\s*:\s*([\d.]+)/.exec(figure.querySelector('figcaption')!.textContent ?? '')
        const shown_mm = (sheet.getBoundingClientRect().width * 25.4) / 96
        return { said: Number(said?.[1]), times: sheet.viewBox.baseVal.width / shown_mm }
      })
      await context.close()
      await own.close()
      return result
    }
    const [wide, narrow] = [await shown(1590), await shown(1440)]
    expect(narrow.times / wide.times).toBeGreaterThan(1.05)
    expect(narrow.said / wide.said / (narrow.times / wide.times)).toBeCloseTo(1, 1)
  })
})
