import { describe, expect, it } from 'vitest'
import { close } from '../../../test/outlines.ts'
import { bounds } from './bounds.ts'
import { angleDimension, dimension, readable, roundDimension } from './dimension.ts'
import { arcPoints, flattened } from './flatten.ts'
import { hatch } from './hatch.ts'
import { arc, circle, corners, type Drawing, lettering, line, type Point, polyline } from './primitives.ts'
import { mirrored, moved, scaled, stretched, turned } from './transform.ts'
import { length, minus } from './vector.ts'

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
