import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bounds } from './bounds.ts'
import { clipped, clippedPolyline, clippedRing } from './clip.ts'
import { dashes } from './dash.ts'
import { angleDimension, dimension, readable, roundDimension } from './dimension.ts'
import { arcPoints, flattened } from './flatten.ts'
import { hatch } from './hatch.ts'
import {
  arc,
  circle,
  contour,
  corners,
  type Drawing,
  lettering,
  line,
  type Point,
  polyline,
  type Rect,
} from './primitives.ts'
import { mirrored, moved, scaled, stretched, turned } from './transform.ts'
import { length, minus } from './vector.ts'

const box: Rect = { left: 0, bottom: 0, right: 10, top: 8 }
const close = (a: number, b: number, tolerance = 1e-9) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(tolerance)
const total = (points: readonly Point[]) => points.slice(1).reduce((sum, p, i) => sum + length(minus(p, points[i]!)), 0)
const area = (ring: readonly Point[]) =>
  Math.abs(ring.reduce((s, [x, y], i) => s + ring.at(i - 1)![0] * y - x * ring.at(i - 1)![1], 0)) / 2
const seeded = { seed: 20261125, numRuns: 300 }
const coordinate = fc.double({ min: -20, max: 30, noNaN: true })
const points = fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 8 })

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

describe('transforms', () => {
  const shape: Drawing = [
    line([1, 2], [3, 4], 'cut'),
    arc([5, 5], 2, 0.2, 1.4, 'thin'),
    circle([1, 1], 3, 'cut'),
    polyline(
      [
        [0, 0],
        [4, 1],
        [2, 7],
      ],
      'cut',
    ),
    lettering([2, 3], 'up'),
  ]
  const same = (a: Drawing, b: Drawing) => {
    const flat = (d: Drawing) =>
      d.flatMap((p) =>
        p.kind === 'line'
          ? [p.from, p.to]
          : p.kind === 'path'
            ? p.points
            : p.kind === 'text'
              ? [p.at]
              : p.kind === 'arc'
                ? arcPoints(p)
                : [p.centre],
      )
    const [x, y] = [flat(a), flat(b)]
    expect(x.length).toBe(y.length)
    x.forEach((p, i) => {
      close(length(minus(p, y[i]!)), 0, 1e-9)
    })
  }
  it('undo themselves', () => {
    same(moved(moved(shape, [7, -3]), [-7, 3]), shape)
    same(turned(turned(shape, 0.7, [3, 1]), -0.7, [3, 1]), shape)
    same(scaled(scaled(shape, 1.25, [1, 1]), 0.8, [1, 1]), shape)
    same(mirrored(mirrored(shape, 4), 4), shape)
  })
  it('mirror an arc into the arc of the mirrored points, and leave text readable', () => {
    const [bow] = mirrored([arc([5, 5], 2, 0.2, 1.4, 'thin')], 4)
    const read = bow!.kind === 'arc' ? arcPoints(bow!) : []
    const wanted = [...arcPoints({ centre: [5, 5], radius_mm: 2, from_rad: 0.2, to_rad: 1.4 })]
      .reverse()
      .map(([x, y]): Point => [8 - x, y])
    read.forEach((p, i) => {
      close(length(minus(p, wanted[i]!)), 0)
    })
    expect(mirrored([lettering([1, 1], 'a', { anchor: 'start' })], 4)[0]).toMatchObject({
      at: [7, 1],
      anchor: 'end',
      turn_rad: -0,
    })
  })
  it('stretch a circle into an ellipse only where the ratios differ', () => {
    expect(stretched([circle([0, 0], 10, 'cut')], { x: 1.02, y: 1.02 }, [0, 0])[0]).toMatchObject({
      kind: 'circle',
      radius_mm: 10.2,
    })
    const b = bounds(stretched([circle([0, 0], 10, 'cut')], { x: 1.02, y: 0.99 }, [0, 0]))!
    close(b.right - b.left, 20.4, 0.002)
    close(b.top - b.bottom, 19.8, 0.002)
  })
  it('flatten a circle to chords within a thousandth of a millimetre', () => {
    const ring = flattened(circle([3, 4], 57.15, 'cut')).points
    ring.forEach((p, i) => {
      const q = ring.at(i - 1)!
      const middle = length(minus([(p[0] + q[0]) / 2, (p[1] + q[1]) / 2], [3, 4]))
      expect(57.15 - middle).toBeLessThanOrEqual(0.001)
    })
  })
})

describe('bounds', () => {
  it('of an arc hold its outermost points', () => {
    const b = bounds([arc([0, 0], 2, Math.PI / 4, (5 * Math.PI) / 4, 'cut')])!
    close(b.left, -2)
    close(b.top, 2)
    close(b.right, Math.SQRT2)
    close(b.bottom, -Math.SQRT2)
    expect(bounds([])).toBeNull()
  })
})

describe('hatching', () => {
  it('fills a square with lines that end on its sides and leaves a hole clear', () => {
    const outer = corners({ left: 0, right: 20, bottom: 0, top: 20 })
    const inner = corners({ left: 5, right: 15, bottom: 5, top: 15 })
    const out = hatch({ rings: [outer, inner], pitch_mm: 1 })
    const drawn = out.reduce((s, p) => s + (p.kind === 'line' ? length(minus(p.to, p.from)) : 0), 0)
    // Length of hatch times pitch is the area, to the fineness of the pitch.
    close(drawn, 300, 6)
    for (const p of out) {
      if (p.kind !== 'line') continue
      const [x, y] = [(p.from[0] + p.to[0]) / 2, (p.from[1] + p.to[1]) / 2]
      expect(x > 5 + 1e-6 && x < 15 - 1e-6 && y > 5 + 1e-6 && y < 15 - 1e-6).toBe(false)
    }
  })
})

describe('dimensions', () => {
  const heads = (d: Drawing) => d.filter((p) => p.kind === 'path' && p.fill === 'solid')
  const tips = (d: Drawing) => heads(d).map((p) => (p.kind === 'path' ? p.points[0]! : null))
  it('stand off by the offset, with tips on the extension lines', () => {
    expect(tips(dimension({ from: [0, 0], to: [30, 0], offset_mm: 8, figure: '30' }))).toEqual([
      [0, 8],
      [30, 8],
    ])
    expect(tips(dimension({ from: [0, 0], to: [30, 40], offset_mm: -6, along: 'across', figure: '30' }))).toEqual([
      [0, -6],
      [30, -6],
    ])
    expect(tips(dimension({ from: [0, 0], to: [30, 40], offset_mm: 6, along: 'up', figure: '40' }))).toEqual([
      [-6, 0],
      [-6, 40],
    ])
  })
  it('put arrows outside where there is no room between', () => {
    const inside = dimension({ from: [0, 0], to: [7, 0], offset_mm: 5, figure: '7' })
    const outside = dimension({ from: [0, 0], to: [6, 0], offset_mm: 5, figure: '6' })
    const backs = (d: Drawing) => heads(d).map((p) => (p.kind === 'path' ? p.points[1]![0] : 0))
    expect(backs(inside)[0]).toBeGreaterThan(0)
    expect(backs(outside)[0]).toBeLessThan(0)
  })
  it('are read from below or from the right', () => {
    for (const [direction, turn] of [
      [[1, 0], 0],
      [[-1, 0], 0],
      [[0, 1], Math.PI / 2],
      [[0, -1], Math.PI / 2],
      [[-1, -1], Math.PI / 4],
      [[1, -1], -Math.PI / 4],
    ] as const)
      close(readable(direction), turn)
  })
  it('keep the figure of each kind', () => {
    const figures = (d: Drawing) => d.flatMap((p) => (p.kind === 'text' ? [p.text] : []))
    expect(figures(roundDimension({ centre: [0, 0], radius_mm: 20, at_rad: 1, figure: 'Ø 40', across: true }))).toEqual(
      ['Ø 40'],
    )
    expect(figures(angleDimension({ centre: [0, 0], radius_mm: 20, from_rad: 0, to_rad: 0.1, figure: '6°' }))).toEqual([
      '6°',
    ])
  })
})
