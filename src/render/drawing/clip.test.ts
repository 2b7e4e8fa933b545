import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { area, box, close, coordinate, points, seeded, total } from '../../../test/outlines.ts'
import { clipped, clippedPolyline, clippedRing } from './clip.ts'
import { dashes } from './dash.ts'
import { arc, circle, contour, corners, lettering, type Rect } from './primitives.ts'
import { length, minus } from './vector.ts'

describe('clipping', () => {
  it('keeps of a line what lies inside', () => {
    expect(
      clippedPolyline(
        [
          [-5, 4],
          [15, 4],
        ],
        box,
      ),
    ).toEqual([
      [
        [0, 4],
        [10, 4],
      ],
    ])
    expect(
      clippedPolyline(
        [
          [-5, 9],
          [15, 9],
        ],
        box,
      ),
    ).toEqual([])
    expect(
      clippedPolyline(
        [
          [0, 8],
          [10, 8],
        ],
        box,
      ),
    ).toEqual([
      [
        [0, 8],
        [10, 8],
      ],
    ])
  })

  it('cuts a polyline that leaves and comes back into two pieces', () => {
    const out = clippedPolyline(
      [
        [5, 5],
        [15, 5],
        [15, 2],
        [5, 2],
      ],
      box,
    )
    expect(out).toEqual([
      [
        [5, 5],
        [10, 5],
      ],
      [
        [10, 2],
        [5, 2],
      ],
    ])
  })

  it('never puts a point outside, and splits the length between the two halves of a window', () => {
    fc.assert(
      fc.property(points, (walk) => {
        const wide: Rect = { left: -20, bottom: -20, right: 30, top: 30 }
        const left = clippedPolyline(walk, { ...wide, right: 3 })
        const right = clippedPolyline(walk, { ...wide, left: 3 })
        for (const [x] of left.flat()) expect(x).toBeLessThanOrEqual(3 + 1e-9)
        for (const [x] of right.flat()) expect(x).toBeGreaterThanOrEqual(3 - 1e-9)
        const upright = walk
          .slice(1)
          .reduce((s, p, i) => s + (p[0] === 3 && walk[i]![0] === 3 ? length(minus(p, walk[i]!)) : 0), 0)
        const parts = [...left, ...right].reduce((s, piece) => s + total(piece), 0)
        close(parts - upright, total(walk), 1e-6)
      }),
      seeded,
    )
  })

  it('cuts a filled ring to the area that both share', () => {
    const ring = corners({ left: -4, bottom: -4, right: 5, top: 3 })
    close(area(clippedRing(ring, box)), 15)
    expect(clippedRing(corners({ left: 20, bottom: 0, right: 25, top: 3 }), box)).toEqual([])
  })

  it('keeps the rest of a cut circle as true arcs', () => {
    const out = clipped([circle([0, 4], 3, 'cut')], box)
    expect(out).toHaveLength(1)
    expect(out[0]).toMatchObject({ kind: 'arc', radius_mm: 3 })
    close(out[0]?.kind === 'arc' ? out[0].to_rad - out[0].from_rad : 0, Math.PI)
    expect(clipped([circle([5, 4], 3, 'cut')], box)).toEqual([circle([5, 4], 3, 'cut')])
    expect(clipped([circle([50, 4], 3, 'cut')], box)).toEqual([])
    // A circle round the whole window shows nothing in it.
    expect(clipped([circle([5, 4], 100, 'cut')], box)).toEqual([])
  })

  it('divides an arc between two windows without loss', () => {
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        fc.double({ min: 0.5, max: 15, noNaN: true }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        fc.double({ min: 0.1, max: 6.2, noNaN: true }),
        (x, y, r, from, sweep) => {
          const bow = arc([x, y], r, from, from + sweep, 'cut')
          const wide: Rect = { left: -99, bottom: -99, right: 99, top: 99 }
          const parts = [...clipped([bow], { ...wide, right: 4 }), ...clipped([bow], { ...wide, left: 4 })]
          close(
            parts.reduce((s, p) => s + (p.kind === 'arc' ? p.to_rad - p.from_rad : 0), 0),
            sweep,
            1e-6,
          )
        },
      ),
      seeded,
    )
  })

  it('keeps or drops a text whole', () => {
    const inside = lettering([9, 4], 'wide text that reaches out', { anchor: 'middle' })
    expect(clipped([inside], box)).toEqual([inside])
    expect(clipped([lettering([12, 4], 'x', { anchor: 'middle' })], box)).toEqual([])
  })

  it('closes a contour that starts inside and leaves once into one piece', () => {
    const out = clipped(
      [
        contour(
          [
            [5, 4],
            [15, 4],
            [15, 6],
            [5, 6],
          ],
          'cut',
        ),
      ],
      box,
    )
    expect(out).toHaveLength(1)
    expect(out[0]).toMatchObject({
      closed: false,
      points: [
        [10, 6],
        [5, 6],
        [5, 4],
        [10, 4],
      ],
    })
  })
})

describe('dashes', () => {
  it('draws and leaves out by the pattern, round corners', () => {
    const out = dashes(
      [
        [0, 0],
        [3, 0],
        [3, 3],
      ],
      [2, 1],
    )
    expect(out).toEqual([
      [
        [0, 0],
        [2, 0],
      ],
      [
        [3, 0],
        [3, 2],
      ],
    ])
  })

  it('draws as much as the pattern says, on any way', () => {
    fc.assert(
      fc.property(points, (walk) => {
        const whole = total(walk)
        const drawn = dashes(walk, [2, 1, 0.5, 1]).reduce((s, d) => s + total(d), 0)
        const [rounds, rest] = [Math.floor(whole / 4.5), whole % 4.5]
        close(drawn, rounds * 2.5 + Math.min(rest, 2) + Math.min(Math.max(0, rest - 3), 0.5), 1e-6)
      }),
      seeded,
    )
  })

  it('refuses a pattern that never ends', () => {
    expect(() =>
      dashes(
        [
          [0, 0],
          [1, 0],
        ],
        [0, 1],
      ),
    ).toThrow(/dashes: pattern_mm/)
  })
})
