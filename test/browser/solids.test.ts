import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { evaluate } from '../../src/evaluate.ts'
import { parsePlan } from '../../src/plan/document.ts'
import { boxOf, volumeOf } from '../../src/render/solids/measure.ts'
import { baked } from '../../src/render/solids/scene.ts'
import { solidSet } from '../../src/render/solids/solids.ts'
import { threeMf } from '../../src/render/solids/three-mf.ts'
import { example, withAll } from '../plans.ts'
import { launched } from './workbench.ts'

/** three reads 3MF with the XML parser of a browser; its modules are given to the page from the packages, no server. */
const three = join(import.meta.dirname, '../../node_modules/three')
const imports = { three: '/build/three.module.js', 'three/addons/': '/examples/jsm/' }
const PAGE = `<!doctype html><link rel="icon" href="data:,"><script type="importmap">${JSON.stringify({ imports })}</script>
<script type="module">
import { ThreeMFLoader } from 'three/addons/loaders/3MFLoader.js'
window.read = (numbers) => {
  const group = new ThreeMFLoader().parse(Uint8Array.from(numbers).buffer)
  group.updateMatrixWorld(true)
  let [six, count, low, high] = [0, 0, [1e9, 1e9, 1e9], [-1e9, -1e9, -1e9]]
  group.traverse((o) => {
    if (!o.isMesh) return
    const g = o.geometry.index ? o.geometry.toNonIndexed() : o.geometry
    const p = g.attributes.position.clone().applyMatrix4(o.matrixWorld)
    for (let i = 0; i < p.count; i += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => [p.getX(i + k), p.getY(i + k), p.getZ(i + k)])
      six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])
      for (const q of [a, b, c]) for (let k = 0; k < 3; k++) { low[k] = Math.min(low[k], q[k]); high[k] = Math.max(high[k], q[k]) }
    }
    count += p.count / 3
  })
  return { volume: six / 6, count, low, high }
}
window.ready = true
</script>`

interface Read {
  readonly volume: number
  readonly count: number
  readonly low: readonly number[]
  readonly high: readonly number[]
}

let browser: Browser
beforeAll(async () => {
  browser = await launched()
})
afterAll(() => browser?.close())

describe('3MF in a browser', () => {
  it('is read by three with the same triangles, volume and size', async () => {
    const page = await browser.newPage()
    const wrongs: string[] = []
    page.on('console', (m) => wrongs.push(m.text()))
    page.on('pageerror', (e) => wrongs.push(e.message))
    await page.route('**/*', (route) => {
      const { pathname } = new URL(route.request().url())
      if (pathname === '/') return route.fulfill({ contentType: 'text/html', body: PAGE })
      return route.fulfill({ contentType: 'text/javascript', body: readFileSync(join(three, pathname), 'utf8') })
    })
    await page.goto('http://localhost/')
    await page.waitForFunction('window.ready === true')
    const { plan } = parsePlan(withAll(example('balcony'), { 'tools/bed': '75 mm' }))
    const { parts } = solidSet({ plan, facts: evaluate(plan, { day: false }).facts })
    expect(parts.map((p) => p.name)).toEqual(expect.arrayContaining(['guide-1', 'guide-2', 'tower']))
    for (const part of parts) {
      const bytes = [...threeMf(part.scene, part.name)]
      const found = (await page.evaluate(`window.read(${JSON.stringify(bytes)})`)) as Read
      const mesh = baked(part.scene)
      const { low, high } = boxOf(mesh)
      expect(found.count, part.name).toBe(mesh.indices.length / 3)
      expect(Math.abs(found.volume / (volumeOf(mesh) * 1e9) - 1), part.name).toBeLessThan(1e-4)
      for (const k of [0, 1, 2]) {
        expect(found.low[k], part.name).toBeCloseTo(0, 3)
        expect(found.high[k], part.name).toBeCloseTo((high[k]! - low[k]!) * 1000, 3)
      }
    }
    expect(wrongs).toEqual([])
  }, 240_000)
})
