// Boxes and lines of which drawings are tried.
import fc from 'fast-check'
import { expect } from 'vitest'
import type { Point, Rect } from '../src/render/drawing/primitives.ts'
import { length, minus } from '../src/render/drawing/vector.ts'

export const box: Rect = { left: 0, bottom: 0, right: 10, top: 8 }
export const close = (a: number, b: number, tolerance = 1e-9) =>
  expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(tolerance)
export const total = (points: readonly Point[]) =>
  points.slice(1).reduce((sum, p, i) => sum + length(minus(p, points[i]!)), 0)
export const area = (ring: readonly Point[]) =>
  Math.abs(ring.reduce((s, [x, y], i) => s + ring.at(i - 1)![0] * y - x * ring.at(i - 1)![1], 0)) / 2
export const seeded = { seed: 20261125, numRuns: 300 }
export const coordinate = fc.double({ min: -20, max: 30, noNaN: true })
export const points = fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 8 })
