import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core'
import { chromium as found } from '../../scripts/prepare.mjs'
import { listen } from '../../src/shells/server/listen.ts'
import { staticTable } from '../../src/shells/server/static.ts'
import { planFolder } from '../../src/shells/store/plan-folder.ts'

const FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** A server of its own with an empty folder of plans. */
export async function served(): Promise<{
  readonly url: string
  readonly folder: string
  readonly close: () => Promise<void>
}> {
  const folder = mkdtempSync(join(tmpdir(), 'rootfall-workbench-'))
  const files = staticTable(join(import.meta.dirname, '../../dist/web'))
  const { port, close } = await listen({ folder: planFolder(folder), files, say: () => undefined }, 0)
  return { url: `http://localhost:${port}/`, folder, close }
}

export const launched = (): Promise<Browser> =>
  chromium.launch({
    executablePath: String(found()),
    args: process.getuid?.() === 0 ? ['--no-sandbox', ...FLAGS] : FLAGS,
  })

/** What a page must never do: an error on the console, a request beyond this machine, a breach of its policy. */
export interface Watched {
  readonly page: Page
  readonly wrongs: string[]
}

export async function watched(context: BrowserContext): Promise<Watched> {
  const page = await context.newPage()
  const wrongs: string[] = []
  page.on('console', (m) => {
    if (m.type() === 'error' || m.type() === 'warning') wrongs.push(`${m.type()}: ${m.text()}`)
  })
  page.on('pageerror', (e) => wrongs.push(`error: ${e.message}`))
  page.on('request', (r) => {
    const { protocol, hostname } = new URL(r.url())
    if (!['blob:', 'data:'].includes(protocol) && hostname !== 'localhost') wrongs.push(`request: ${r.url()}`)
  })
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (e) => console.error(`policy: ${e.violatedDirective}`))
  })
  return { page, wrongs }
}

/** Opened, evaluated and drawn. */
export async function opened(page: Page, url: string): Promise<void> {
  await page.goto(url)
  await page.waitForSelector('.sheet .live')
  await page.waitForSelector('.fs .f')
}

export const savedState = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => /^saved/.test(document.querySelector('.saved')?.textContent ?? ''))
