import { AxeBuilder } from '@axe-core/playwright'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { launched, opened, served, watched } from './workbench.ts'

let browser: Browser
let server: Awaited<ReturnType<typeof served>>
beforeAll(async () => {
  server = await served()
  browser = await launched()
})
afterAll(async () => {
  await browser?.close()
  await server?.close()
})

describe.each([320, 1440])('in Spanish at %i px', (width) => {
  it('speaks Spanish, with a decimal comma, without a violation and without the words of another language', async () => {
    const context = await browser.newContext({ locale: 'es-ES', viewport: { width, height: 900 } })
    const { page, wrongs } = await watched(context)
    const files: string[] = []
    page.on('request', (r) => files.push(new URL(r.url()).pathname))
    await opened(page, server.url)
    await page.waitForSelector('.fs .f')
    expect(await page.getAttribute('html', 'lang')).toBe('es')
    expect(await page.textContent('#part-name')).toContain('distribuidor')
    expect(files).toContain('/assets/words-es.json')
    expect(files).not.toContain('/assets/words-en.json')
    await page.waitForFunction(() => /\d,\d/.test(document.querySelector('.fs')?.textContent ?? ''))
    const axe = await new AxeBuilder({ page }).analyze()
    expect(axe.violations.map((v) => v.id)).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
    if (process.env['LOOK']) await page.screenshot({ path: `${process.env['LOOK']}/es-${width}.png`, fullPage: true })
    expect(wrongs).toEqual([])
    await context.close()
  })
})

it('changes the language and keeps it', async () => {
  const context = await browser.newContext({ locale: 'en-GB' })
  const { page, wrongs } = await watched(context)
  await opened(page, server.url)
  await page.getByRole('button', { name: 'Language' }).click()
  await page.waitForFunction(() => document.documentElement.lang === 'es')
  await page.getByRole('button', { name: 'Idioma' }).waitFor()
  await page.reload()
  await page.getByRole('button', { name: 'Idioma' }).click()
  await page.getByRole('button', { name: 'Language' }).waitFor()
  expect(wrongs).toEqual([])
  await context.close()
})
