import { describe, expect, it } from 'vitest'
import * as equation from './equations.ts'

const INCH_m = 0.0254
const turns = (degrees: number) => (degrees * Math.PI) / 180

describe('places', () => {
  const rings = { rings: 8, perRing: 3, pitch_m: 0.18, first_m: 0.22, alternateTurn_rad: turns(60) }
  it('stand in rings, every other one turned into lines of its own', () => {
    const places = equation.ringPlaces(rings)
    expect(places).toHaveLength(24)
    expect(new Set(places.map((p) => p.line)).size).toBe(6)
    expect(places.at(-1)).toEqual({ ring: 7, line: 5, turn_rad: turns(240) + turns(60), height_m: 0.22 + 7 * 0.18 })
    expect(new Set(equation.ringPlaces({ ...rings, alternateTurn_rad: turns(120) }).map((p) => p.line)).size).toBe(3)
  })
  it('turned by half a step are the lattice: the same nearest mouths', () => {
    const reach_m = 0.12
    const nearest = equation.nearestMouths({ reach_m, places: equation.ringPlaces(rings) })
    const lattice = equation.latticeDistances({ reach_m, lines: 6, pitch_m: 0.36 })
    expect(nearest).toBeCloseTo(lattice.nearest_m, 12)
  })
  it('on a helix keep the distance that the helix has', () => {
    const helix = { reach_m: 0.15, rise_m: 0.0215, divergence_rad: turns(102.1) }
    const places = equation.helixPlaces({ ...helix, count: 66, first_m: 0.1 })
    const { distance_m, apart } = equation.helixNearest(helix)
    expect(equation.nearestMouths({ reach_m: 0.15, places })).toBeCloseTo(distance_m, 12)
    expect(equation.nearestMouths({ reach_m: 0.15, places: [places[0]!, places[apart]!] })).toBeCloseTo(distance_m, 12)
    expect(equation.nearestMouths({ reach_m: 0.15, places: places.slice(0, 1) })).toBeNull()
  })
  it('the best divergence is never worse than the golden angle or any other', () => {
    for (const rise_m of [0.01, 0.02, 0.035, 0.06, 0.1]) {
      const best = equation.bestDivergence({ reach_m: 0.14, rise_m }).distance_m
      for (let degrees = 0.37; degrees <= 180; degrees += 0.37) {
        const found = equation.helixNearest({ reach_m: 0.14, rise_m, divergence_rad: turns(degrees) })
        expect(best).toBeGreaterThanOrEqual(found.distance_m - 1e-9)
      }
    }
  })
})

describe('pitches', () => {
  it('the smallest holds the canopy exactly, and a hair less does not', () => {
    for (const lines of [4, 6, 8])
      for (const canopy_m of [0.15, 0.18, 0.21]) {
        const given = { reach_m: 0.16, lines }
        const pitch_m = equation.smallestPitch({ ...given, canopy_m })
        if (pitch_m === null) continue
        expect(equation.latticeDistances({ ...given, pitch_m }).nearest_m).toBeGreaterThanOrEqual(canopy_m * (1 - 1e-9))
        expect(equation.latticeDistances({ ...given, pitch_m: pitch_m * 0.999 }).nearest_m).toBeLessThan(canopy_m)
      }
  })
  it('a ring that just holds the canopy is taken, one that does not is refused', () => {
    const ring = 2 * 0.12 * Math.sin(turns(60))
    expect(equation.smallestPitch({ reach_m: 0.12, lines: 6, canopy_m: ring })).not.toBeNull()
    expect(equation.smallestPitch({ reach_m: 0.12, lines: 6, canopy_m: ring * 1.001 })).toBeNull()
  })
  it('counts sites on both sides of a full height', () => {
    const count = (usable_m: number) => equation.sitesThatFit({ usable_m, lines: 2, pitch_m: 0.2, raise: 0.5 })
    expect(count(0)).toBe(1)
    expect(count(0.1)).toBe(2)
    expect(count(0.0999)).toBe(1)
    expect(count(0.2)).toBe(3)
    expect(count(3 * 0.2)).toBe(7)
  })
  it('never passes the hexagonal bound by more than the edges allow', () => {
    for (const canopy_m of [0.15, 0.2]) {
      const given = { reach_m: 0.18, lines: 6 }
      const pitch_m = equation.smallestPitch({ ...given, canopy_m })!
      const sites = equation.sitesThatFit({ usable_m: 1.4, lines: 6, pitch_m, raise: 0.5 })
      const bound = equation.hexagonalBound({ reach_m: 0.18, usable_m: 1.4 + canopy_m, canopy_m })
      expect(sites).toBeLessThanOrEqual(bound)
    }
  })
  it('refuses odd lines and what is no number of things', () => {
    expect(() => equation.latticeDistances({ reach_m: 0.1, lines: 5, pitch_m: 0.2 })).toThrow('latticeDistances: k = 5')
    expect(() => equation.sitesThatFit({ usable_m: 1, lines: 2.5, pitch_m: 0.2, raise: 0 })).toThrow(RangeError)
    expect(() => equation.ringPlaces({ rings: 0, perRing: 3, pitch_m: 1, first_m: 0, alternateTurn_rad: 0 })).toThrow(
      RangeError,
    )
  })
})

describe('marks', () => {
  const heights_m = Array.from({ length: 8 }, (_, i) => 0.22 + 0.18 * i)
  it('are each rounded from the datum, so no error adds up', () => {
    for (const step_m of [0.001, INCH_m / 16, INCH_m / 32, INCH_m / 64])
      for (const datum of ['bottom', 'top'] as const)
        for (const mark of equation.runningMarks({ heights_m, length_m: 1.85, datum, step_m })) {
          expect(Math.abs(mark.error_m)).toBeLessThanOrEqual(step_m / 2 + 1e-12)
          expect(mark.marked_m - mark.exact_m).toBe(mark.error_m)
          expect(Math.abs(mark.marked_m / step_m - Math.round(mark.marked_m / step_m))).toBeLessThan(1e-9)
        }
  })
  it('from the top are the same places as from the bottom', () => {
    const given = { heights_m, length_m: 1.85, step_m: 0.001 }
    const bottom = equation.runningMarks({ ...given, datum: 'bottom' }).map((m) => m.exact_m)
    const top = equation.runningMarks({ ...given, datum: 'top' }).map((m) => 1.85 - m.exact_m)
    top.reverse().forEach((z, i) => {
      expect(z).toBeCloseTo(bottom[i]!, 14)
    })
  })
  it('of lines close on the circumference', () => {
    const marks = equation.lineMarks({ radius_m: 0.055, lines: 6, step_m: 0.001 })
    expect(marks).toHaveLength(7)
    expect(marks.at(-1)!.exact_m).toBeCloseTo(2 * Math.PI * 0.055, 15)
  })
  it('write inches in lowest terms', () => {
    const at = (inches: number, parts: number) => {
      const { negative, whole, numerator, denominator } = equation.inchFraction({ length_m: inches * INCH_m, parts })
      return `${negative ? '-' : ''}${whole} ${numerator}/${denominator}`
    }
    expect(at(7.5, 16)).toBe('7 1/2')
    expect(at(7, 16)).toBe('7 0/1')
    expect(at(3 + 31.6 / 32, 32)).toBe('4 0/1')
    expect(at(-1.25, 16)).toBe('-1 1/4')
    expect(at(-0.001, 16)).toBe('0 0/1')
    expect(() => at(1, 10)).toThrow('d = 10')
  })
})

describe('floor', () => {
  it('grows by the walk on all sides', () => {
    const { footprint_m2, walkRound_m2 } = equation.standArea({ reach_m: 0.13, canopy_m: 0.24, walk_m: 0.6 })
    expect(Math.sqrt(footprint_m2)).toBeCloseTo(0.5, 14)
    expect(Math.sqrt(walkRound_m2)).toBeCloseTo(1.7, 14)
    expect(equation.plantsPerArea({ plants: 24, floor_m2: walkRound_m2 })).toBeCloseTo(24 / 2.89, 12)
    expect(equation.usableHeight({ length_m: 1.85, topMargin_m: 0.1, bottomMargin_m: 0.35 })).toBeCloseTo(1.4, 14)
  })
})
