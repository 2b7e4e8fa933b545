import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { pdfText, raster } from '../print/raster.ts'
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

/** Buttons and links of the page that mean nothing on paper. */
const BUTTONS = /\b(?:Undo|Redo|New plan|Sheets, PDF|Booklet, PDF|more fields|more findings)\b/

describe('the page on paper', () => {
  it('is black on white from a dark desk, lists every finding, and shows no button', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, colorScheme: 'dark' })
    const { page, wrongs } = await watched(context)
    await opened(page, server.url)
    await page.waitForFunction(() => document.querySelector('#drawing')?.getAttribute('aria-busy') === 'false')
    const sum = await page.locator('.sum').innerText()
    const open = [...sum.matchAll(/\d+/g)].reduce((n, [count]) => n + Number(count), 0)
    const onScreen = await page.locator('.fs .f').count()
    expect(onScreen).toBeLessThan(open)
    const bytes = new Uint8Array(await page.pdf({ format: 'A4' }))
    expect(await page.locator('.fs .f').count()).toBe(onScreen)
    const text = pdfText(bytes)
    const plain = text.replaceAll(/\s+/g, '')
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')))
    const names = await page.locator('.fs .f .t').evaluateAll((all) => all.map((t) => t.firstChild?.textContent ?? ''))
    await page.evaluate(() => dispatchEvent(new Event('afterprint')))
    expect(names.length).toBe(open)
    expect(names.filter((name) => !plain.includes(name.replaceAll(/\s+/g, '')))).toEqual([])
    expect(text).not.toMatch(BUTTONS)
    expect(text.split('\f').filter((t) => t.trim() !== '').length).toBeLessThanOrEqual(4)
    const { width, height, ink } = raster(bytes)
    let inked = 0
    for (let x = 0; x < width; x += 10) for (let y = 0; y < height; y += 10) if (ink(x, y)) inked++
    expect(inked / ((width * height) / 100)).toBeLessThan(0.1)
    for (const act of ['Make', 'Tend']) {
      await page.getByRole('button', { name: act, exact: true }).click()
      await page.waitForSelector('.make')
      expect(pdfText(new Uint8Array(await page.pdf({ format: 'A4' })))).not.toMatch(BUTTONS)
    }
    expect(wrongs).toEqual([])
    await context.close()
  })
})
