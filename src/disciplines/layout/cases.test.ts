import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as equation from './equations.ts'

/** Printed to six digits; 1e-5 is twice the half of the last. */
const RELATIVE = 1e-5
const cases = JSON.parse(readFileSync(new URL('../../../test/data/geometry-cases.json', import.meta.url), 'utf8'))
const USABLE_m = 1.4
const mm = 1e-3
const turns = (degrees: number) => (degrees * Math.PI) / 180
const near = (got_m: number | null, printed_mm: number) =>
  expect(Math.abs((got_m ?? Number.NaN) / mm - printed_mm), `got ${got_m}`).toBeLessThanOrEqual(RELATIVE * printed_mm)
const count = (lines: number, pitch_m: number) =>
  equation.sitesThatFit({ usable_m: USABLE_m, lines, pitch_m, raise: 0.5 })

describe('lattices of the check set', () => {
  for (const { C, k, p, diag, line, ring, nearest, sites } of cases.layout_nearest)
    it(`C ${C}, ${k} lines, pitch ${p}: nearest ${nearest}, ${sites} sites`, () => {
      const found = equation.latticeDistances({ reach_m: C * mm, lines: k, pitch_m: p * mm })
      near(found.diagonal_m, diag)
      near(found.line_m, line)
      near(found.ring_m, ring)
      near(found.nearest_m, nearest)
      expect(count(k, p * mm)).toBe(sites)
    })
  for (const { C, k, Dc, p, sites } of cases.layout_min_pitch)
    it(`C ${C}, ${k} lines, canopy ${Dc}: pitch ${p ?? 'none'}, ${sites ?? 'no'} sites`, () => {
      const found = equation.smallestPitch({ reach_m: C * mm, lines: k, canopy_m: Dc * mm })
      if (p === null) expect(found).toBeNull()
      else {
        near(found, p)
        expect(count(k, found!)).toBe(sites)
      }
    })
})

describe('helices of the check set', () => {
  for (const row of cases.helix) {
    const given = { reach_m: row.C * mm, rise_m: row.h * mm }
    for (const key of ['90', '120', '135', '144', '150', 'golden137.508'])
      it(`C ${row.C}, h ${row.h}, ${key}: ${row[key]}`, () => {
        const degrees = key.startsWith('golden') ? 180 * (3 - Math.sqrt(5)) : Number(key)
        const found = equation.helixNearest({ ...given, divergence_rad: turns(degrees) })
        near(found.distance_m, row[key][0])
        expect(found.apart).toBe(row[key][1])
      })
    it(`C ${row.C}, h ${row.h}: best ${row.best}`, () => {
      const [degrees, distance] = row.best
      near(equation.helixNearest({ ...given, divergence_rad: turns(degrees) }).distance_m, distance)
      const best = equation.bestDivergence(given)
      expect(best.distance_m / mm).toBeGreaterThanOrEqual(distance * (1 - RELATIVE))
      // The table's grid is 0.05° wide; half of it moves the neighbours of the peak by this much at most.
      const slope = 2 * row.C * turns(0.025) * 6
      expect(best.distance_m / mm).toBeLessThanOrEqual(distance + slope)
    })
  }
})
