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

/** Every screen: how to come to it from the one before. */
const screens: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ['drawing', async () => undefined],
  ['a finding open', (page) => page.locator('.f .head').first().click()],
  ['a why', (page) => page.locator('.stop.left .fig, .fd .lb').last().click()],
  [
    'reservoir',
    async (page) => {
      await page.keyboard.press('Escape')
      await page.locator('.loop a[data-part="reservoir"]').click()
      await page.locator('.fields .adder .link').first().click()
    },
  ],
  ['plans', (page) => page.getByRole('button', { name: 'Plans', exact: true }).click()],
  ['new plan', (page) => page.getByRole('button', { name: 'New plan, in five questions' }).click()],
  ['changes', (page) => page.getByRole('button', { name: 'Changes' }).click()],
  ['compare', (page) => page.getByRole('button', { name: 'Compare' }).click()],
  ['make', (page) => page.getByRole('button', { name: 'Make', exact: true }).click()],
  ['tend', (page) => page.getByRole('button', { name: 'Tend', exact: true }).click()],
]

/** Text with a figure in it that stands outside of every reason. */
const unexplained = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    const found: string[] = []
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent ?? ''
      const within = node.parentElement
      if (!within || !/\d/.test(text) || within.closest('[data-why], script, style, title, option, h1, .asks')) continue
      found.push(`${within.tagName}.${within.className}: ${text.slice(0, 60)}`)
    }
    return found
  })

describe('every screen', () => {
  for (const desk of ['light', 'dark'] as const)
    for (const width of [320, 768, 1920])
      it(`can be used by all, ${desk}, ${width} wide`, async () => {
        const context = await browser.newContext({
          viewport: { width, height: width === 320 ? 568 : 900 },
          colorScheme: desk,
        })
        const { page, wrongs } = await watched(context)
        await opened(page, server.url)
        for (const [name, come] of screens) {
          await come(page)
          await page.waitForTimeout(250)
          const { violations } = await new AxeBuilder({ page })
            .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
            .analyze()
          const told = violations.map(
            (v) =>
              `${v.id}: ${v.nodes
                .slice(0, 3)
                .map((n) => n.target.join(' '))
                .join('; ')}`,
          )
          expect(told, name).toEqual([])
          expect(await unexplained(page), name).toEqual([])
          const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
          expect(wide, `${name} scrolls sideways`).toBeLessThanOrEqual(0)
        }
        expect(wrongs).toEqual([])
        await context.close()
      })
})

describe('the first screen', () => {
  it('stays within its bytes and is ready in time', async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
    const { page } = await watched(context)
    const sizes: number[] = []
    page.on('response', async (r) => {
      const { responseBodySize } = await r
        .request()
        .sizes()
        .catch(() => ({ responseBodySize: 0 }))
      if (!new URL(r.url()).pathname.startsWith('/api')) sizes.push(responseBodySize)
    })
    const before = performance.now()
    await page.goto(server.url)
    await page.waitForSelector('.loop .stop')
    const ready_ms = performance.now() - before
    await page.waitForSelector('.sheet .live')
    await page.waitForTimeout(500)
    const total = sizes.reduce((a, b) => a + b, 0)
    console.info(`first screen: ${Math.round(total / 1000)} kB, page ready after ${Math.round(ready_ms)} ms`)
    expect(ready_ms).toBeLessThan(3000)
    await context.close()
  })
})
