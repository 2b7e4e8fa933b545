import { describe, expect, it } from 'vitest'
import { arc, circle, contour, lettering, line, type Page, type Point } from '../../src/render/drawing/primitives.ts'
import { svg } from '../../src/render/drawing/svg.ts'
import { demoSheet } from './demo-sheet.ts'

/** A reader of its own for the small part of XML that a drawing uses; throws where tags do not pair. */
interface Element {
  readonly name: string
  readonly attributes: Readonly<Record<string, string>>
  readonly text: string
}
const unescaped = (s: string) =>
  s
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')

function elements(source: string): readonly Element[] {
  const out: Element[] = []
  const open: string[] = []
  const tag = /<(\/?)([a-z]+)((?: [a-zA-Z][a-zA-Z0-9:-]*="[^"<]*")*)(\/?)>([^<]*)/g
  let at = 0
  for (const m of source.matchAll(tag)) {
    if (m.index !== at) throw new Error(`not a tag at ${at}: ${source.slice(at, at + 40)}`)
    at = m.index + m[0].length
    const [, closing, name, pairs, empty, text] = m
    if (/&(?!(lt|gt|quot|amp);)/.test(pairs! + text!)) throw new Error(`bare & in ${m[0]}`)
    if (closing) {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`)
      continue
    }
    const attributes = Object.fromEntries(
      [...pairs!.matchAll(/ ([a-zA-Z][a-zA-Z0-9:-]*)="([^"]*)"/g)].map((p) => [p[1]!, unescaped(p[2]!)]),
    )
    out.push({ name: name!, attributes, text: unescaped(text!) })
    if (!empty) open.push(name!)
  }
  if (at !== source.length || open.length > 0) throw new Error(`open at the end: ${open.join(' ')}`)
  return out
}

const near = (a: number, b: number) => expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(0.001)
const numbers = (s: string) => [...s.matchAll(/-?\d+(\.\d+)?/g)].map((m) => Number(m[0]))

describe('svg', () => {
  it('is as many millimetres as it says and nothing in it can run', () => {
    const source = svg({ page: demoSheet('Letter'), title: 'Hole' })
    const root = elements(source)[0]!
    expect(root.attributes).toMatchObject({
      width: '215.9mm',
      height: '279.4mm',
      viewBox: '0 0 215.9 279.4',
      version: '1.1',
    })
    expect(source).not.toMatch(/script|onload|href|url\(/)
  })

  it('holds the coordinates of the drawing within 0.001 mm, y turned over', () => {
    const height = 297
    const outline: readonly Point[] = Array.from({ length: 50 }, (_, i) => [
      100 + 30 * Math.cos(i),
      90 + 20 * Math.sin(i * i),
    ])
    const page: Page = {
      width_mm: 210,
      height_mm: height,
      drawing: [
        line([1 / 3, 2 / 3], [100.12345, 7], 'cut'),
        contour(outline, 'cut'),
        circle([Math.PI, Math.E], Math.SQRT2, 'visible'),
        arc([50, 60], 10, 0.3, 2.9, 'thin'),
        lettering([12.34567, 200], 'a < b & "c"', { turn_rad: Math.PI / 2 }),
      ],
    }
    const [, , l, path, c, curve, t] = elements(svg({ page, title: 'x' }))
    near(Number(l!.attributes.x1), 1 / 3)
    near(Number(l!.attributes.y1), height - 2 / 3)
    near(Number(l!.attributes.x2), 100.12345)
    near(Number(l!.attributes.y2), 290)
    const read = numbers(path!.attributes.d!)
    outline.forEach(([x, y], i) => {
      near(read[2 * i]!, x)
      near(read[2 * i + 1]!, height - y)
    })
    expect(path!.attributes.d).toMatch(/Z$/)
    near(Number(c!.attributes.cx), Math.PI)
    near(Number(c!.attributes.cy), height - Math.E)
    near(Number(c!.attributes.r), Math.SQRT2)
    const [x1, y1, rx, ry, rotation, large, sweep, x2, y2] = numbers(curve!.attributes.d!)
    near(x1!, 50 + 10 * Math.cos(0.3))
    near(y1!, height - 60 - 10 * Math.sin(0.3))
    near(x2!, 50 + 10 * Math.cos(2.9))
    near(y2!, height - 60 - 10 * Math.sin(2.9))
    expect([rx, ry, rotation, large, sweep]).toEqual([10, 10, 0, 0, 0])
    expect(t!.text).toBe('a < b & "c"')
    expect(t!.attributes.transform).toBe('rotate(-90 12.3457 97)')
  })

  it('leaves out what XML cannot hold', () => {
    const page: Page = { width_mm: 10, height_mm: 10, drawing: [lettering([1, 1], 'a\u0000b\u0007\ud800c\ufffe')] }
    expect(elements(svg({ page, title: '<\u0001>' })).at(-1)!.text).toBe('abc')
  })

  it('for a screen names roles and parts and no colours', () => {
    const page: Page = {
      width_mm: 10,
      height_mm: 10,
      drawing: [line([0, 0], [1, 1], 'hidden', { part: 'columns/0/stub' })],
    }
    const last = elements(svg({ page, title: 'x', paint: 'class' })).at(-1)!
    expect(last.attributes).toMatchObject({ class: 'pen-hidden fill-none', 'data-part': 'columns/0/stub' })
    expect(last.attributes.stroke).toBeUndefined()
  })

  it('reads back whole for a full sheet', () => {
    const page = demoSheet('A4')
    const read = elements(svg({ page, title: 'Hole' }))
    expect(read.length - 2).toBe(page.drawing.length)
  })
})
