import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { AxeBuilder } from '@axe-core/playwright'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bookletAsHtml } from '../../src/render/booklet/make.ts'
import { CROP_mm, PRINT_MARGIN_mm } from '../../src/render/booklet/style.ts'
import { areas, type PaperName, papers } from '../../src/render/paper/size.ts'
import { bookletSentences } from '../../src/render/words/en/booklet.ts'
import { pupilSentences } from '../../src/render/words/en/booklet-pupils.ts'
import { bookletFaces } from '../../src/shells/cli/fonts.ts'
import { pdfText, raster, strokes } from '../print/raster.ts'
import { example, inputOf } from '../print/set-of.ts'
import { launched } from './workbench.ts'

const folder = mkdtempSync(join(tmpdir(), 'rootfall-booklet-'))
const file = (paper: PaperName) => pathToFileURL(join(folder, `${paper}.html`)).href
let browser: Browser

beforeAll(async () => {
  for (const paper of ['A4', 'Letter'] as const) {
    const input = { ...inputOf(example('balcony'), paper), booklet: bookletSentences, pupils: pupilSentences }
    writeFileSync(join(folder, `${paper}.html`), bookletAsHtml(input, bookletFaces()!))
  }
  browser = await launched()
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Opened from disk with the network off; all that it must not do is written down. */
async function fromDisk(options: BrowserContextOptions = {}, storeless = false) {
  const context = await browser.newContext({ offline: true, ...options })
  const page = await context.newPage()
  const wrongs: string[] = []
  page.on('console', (m) => wrongs.push(m.text()))
  page.on('pageerror', (e) => wrongs.push(e.message))
  page.on('request', (r) => {
    if (!/^(file|data):/.test(r.url())) wrongs.push(`request: ${r.url()}`)
  })
  if (storeless)
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('no store for this page', 'SecurityError')
        },
      })
    })
  await page.goto(file('A4'))
  return { context, page, wrongs }
}

async function fillIn(page: Page): Promise<void> {
  await page.locator('[data-keep="cut-column-1"]').check()
  await page.getByText('Wrap the tape round the column pipe').click()
  await page.locator('#log input[type=text]').nth(2).fill('1.8')
  await page.locator('#log input[type=text]').nth(2).blur()
}

async function isFilledIn(page: Page): Promise<void> {
  expect(await page.locator('[data-keep="cut-column-1"]').isChecked()).toBe(true)
  expect(await page.locator('[data-keep="measure-pipe-1"]').isChecked()).toBe(true)
  expect(await page.locator('[data-keep="cut-column-2"]').isChecked()).toBe(false)
  expect(await page.locator('#log input[type=text]').nth(2).inputValue()).toBe('1.8')
}

describe('the booklet from disk, network off', () => {
  for (const storeless of [false, true])
    it(`keeps ticks over a reload${storeless ? ', where the browser has no store as well' : ''}`, async () => {
      const { context, page, wrongs } = await fromDisk({}, storeless)
      await fillIn(page)
      await page.locator('nav a[href="#pupils"]').click()
      await page.reload()
      await isFilledIn(page)
      expect(await page.locator('[data-hint="stored"]').isVisible()).toBe(!storeless)
      expect(wrongs).toEqual([])
      await context.close()
    })

  for (const [colorScheme, width] of [
    ['light', 320],
    ['dark', 1000],
  ] as const)
    it(`can be used by all, ${colorScheme}, ${width} wide`, async () => {
      const { context, page, wrongs } = await fromDisk({ viewport: { width, height: 800 }, colorScheme })
      // What is inside an image is no part of the page's tree; its thousands of lines would only take minutes to walk.
      await page.evaluate(() => {
        for (const line of document.querySelectorAll('svg[role="img"] > :not(title)')) line.remove()
      })
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze()
      expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.target.join(' ')}`)).toEqual([])
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0)
      expect(wrongs).toEqual([])
      await context.close()
    })

  it('carries its own letters', async () => {
    const { context, page } = await fromDisk()
    const loaded = await page.evaluate(async () => {
      await document.fonts.ready
      return [...document.fonts].filter((f) => f.status === 'loaded').map((f) => `${f.family} ${f.style} ${f.weight}`)
    })
    expect(loaded.length).toBeGreaterThanOrEqual(4)
    await context.close()
  })
})

describe.each(['A4', 'Letter'] as const)('printed from the browser on %s', (paper) => {
  it('templates come out at full size, each on its own page', async () => {
    const context = await browser.newContext({ offline: true })
    const page = await context.newPage()
    await page.goto(file(paper))
    const said = await page.locator('#templates figure.sheet title').allTextContents()
    const titles = said.map((t) => t.split(': a sheet')[0]!)
    const bytes = new Uint8Array(await page.pdf({ preferCSSPageSize: true, printBackground: true }))
    await context.close()
    const texts = pdfText(bytes).split('\f')
    const pagesOf = (title: string) =>
      texts.flatMap((t, i) =>
        t.includes(`${title}\n`) && !t.includes(bookletSentences['templates-bars']) ? [i + 1] : [],
      )
    const pages = [...new Set(titles)].flatMap(pagesOf)
    expect(pages).toHaveLength(titles.length)
    // All but the appendix and its list of bars.
    expect(texts.filter((t) => t.trim() !== '').length - titles.length - 1).toBeLessThanOrEqual(20)
    const { foot, page: area, body } = areas(paper)
    const h = papers[paper].height_mm
    const shift = PRINT_MARGIN_mm - CROP_mm
    for (const n of [pages[0]!, pages.at(-1)!]) {
      const r = raster(bytes, n)
      // Through the ticks of 10 mm, above those of 5 mm; the title block's lines lie further right.
      const lying = strokes(r, 'row', h - (foot.bottom + 4 + 11.4 + 3) + shift).filter(
        (x) => x < area.left + 108 + shift,
      )
      expect(lying, `page ${n}`).toHaveLength(11)
      lying.forEach((x, i) => {
        expect(Math.abs(x - lying[0]! - 10 * i)).toBeLessThanOrEqual(0.1)
      })
      const up = strokes(r, 'column', area.right - 3 + shift).filter(
        (y) => y > h - body.bottom - 101 + shift && y < h - body.bottom + 1 + shift,
      )
      expect(up, `page ${n}`).toHaveLength(11)
      up.forEach((y, i) => {
        expect(Math.abs(y - up[0]! - 10 * i)).toBeLessThanOrEqual(0.1)
      })
    }
  })
})
