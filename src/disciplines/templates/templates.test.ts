import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point } from '../../kernel/polyline.ts'
import * as equation from './equations.ts'
import { type Hole, holeCrossing, type Stub, stubCrossing } from './joint.ts'

const turns = (degrees: number) => (degrees * Math.PI) / 180

/** A repeatable stream of numbers from 0 to 1 (Lehmer, as in the C++ standard's minstd_rand0). */
function* stream(seed: number): Generator<number, never> {
  let state = seed
  while (true) {
    state = (state * 16807) % 2147483647
    yield state / 2147483647
  }
}

/** Joints of all sizes, every second one on the centre line. */
const joints: readonly Stub[] = (() => {
  const next = stream(20)
  const between = (low: number, high: number) => low + (high - low) * next.next().value
  return Array.from({ length: 40 }, (_, i) => {
    const columnRadius_m = between(0.04, 0.11)
    const columnWall_m = between(0.002, 0.08 * columnRadius_m + 0.002)
    const stubRadius_m = between(0.25, 0.75) * (columnRadius_m - columnWall_m)
    const room = columnRadius_m - columnWall_m - stubRadius_m
    const offset_m = i % 2 === 0 ? 0 : between(-0.9, 0.9) * room
    const stubWall_m = between(0.0015, 0.004)
    return { columnRadius_m, columnWall_m, stubRadius_m, stubWall_m, angle_rad: turns(between(30, 90)), offset_m }
  })
})()
const holeOf = (stub: Stub): Hole => ({ ...stub, holeRadius_m: stub.stubRadius_m })

/** Distance of a point in space from the stub's axis. */
function fromAxis({ angle_rad: th, offset_m: e }: Hole | Stub, [x, y, z]: readonly [number, number, number]) {
  const across = z * Math.sin(th) - x * Math.cos(th)
  return Math.hypot(across, y - e)
}

describe('an axis-cut outline', () => {
  for (const stub of joints) {
    const hole = holeOf(stub)
    const at = `R ${stub.columnRadius_m.toFixed(4)}, r ${stub.stubRadius_m.toFixed(4)}, e ${stub.offset_m.toFixed(4)}`
    const crossing = holeCrossing(hole, 'outside')
    it(`rolled back lies on both cylinders and between its points within 5 µm (${at})`, () => {
      const outline = equation.openingOutline({ ...crossing, paper_m: 0, tolerance_m: 5e-6 })
      const rolled = ({ x_m, y_m }: Point) => {
        const phi = x_m / crossing.pipeRadius_m
        return [crossing.pipeRadius_m * Math.cos(phi), crossing.pipeRadius_m * Math.sin(phi), y_m] as const
      }
      outline.forEach((point, i) => {
        const [x, y, z] = rolled(point)
        expect(Math.hypot(x, y)).toBeCloseTo(crossing.pipeRadius_m, 12)
        expect(Math.abs(fromAxis(hole, [x, y, z]) - hole.holeRadius_m)).toBeLessThan(1e-12)
        const next = outline[(i + 1) % outline.length]!
        const middle = { x_m: (point.x_m + next.x_m) / 2, y_m: (point.y_m + next.y_m) / 2 }
        // A chord's middle off the curve by 5 µm is off the tube by no more: the rolled map does not stretch.
        expect(Math.abs(fromAxis(hole, rolled(middle)) - hole.holeRadius_m)).toBeLessThan(5e-6)
      })
      expect(outline.length).toBeLessThan(600)
    })
  }
})

describe('both routes to the same number', () => {
  for (const stub of joints.slice(0, 12)) {
    const hole = holeOf(stub)
    const crossing = holeCrossing(hole, 'outside')
    it(`heights over ψ and over φ agree, and polygon area the closed form (θ ${stub.angle_rad.toFixed(3)})`, () => {
      for (const around_rad of [0.2, 1, 2, 3, 4, 5, 6]) {
        const { turn_rad, height_m } = equation.crossingPoint({ ...crossing, around_rad })
        const edges = equation.crossingHeights({ ...crossing, turn_rad })!
        const edge = Math.cos(around_rad) > 0 ? edges.high_m : edges.low_m
        expect(Math.abs(edge - height_m)).toBeLessThan(1e-12)
      }
      const ring = equation.openingOutline({ ...crossing, paper_m: 0, tolerance_m: 1e-8 })
      const area = ring.reduce((sum, p, i) => {
        const q = ring[(i + 1) % ring.length]!
        return sum + (q.x_m * p.y_m - p.x_m * q.y_m) / 2
      }, 0)
      expect(Math.abs(area / equation.openingArea(crossing) - 1)).toBeLessThan(1e-6)
    })
    it(`square-cut edges are the outermost of the crossing curves through the wall (θ ${stub.angle_rad.toFixed(3)})`, () => {
      const { left_rad, right_rad } = equation.squareCutExtent(hole)
      for (let i = 1; i < 20; i++) {
        const turn_rad = left_rad + ((right_rad - left_rad) * i) / 20
        const edges = equation.squareCutHeights({ ...hole, turn_rad })!
        let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
        for (let k = 0; k <= 4000; k++) {
          const pipeRadius_m = hole.columnRadius_m - (hole.columnWall_m * k) / 4000
          const found = equation.crossingHeights({ ...crossing, pipeRadius_m, turn_rad })
          if (found) [low, high] = [Math.min(low, found.low_m), Math.max(high, found.high_m)]
        }
        // The scan can only fall short, by the steepest edge over a step of the wall.
        expect(edges.low_m).toBeLessThanOrEqual(low + 1e-12)
        expect(edges.high_m).toBeGreaterThanOrEqual(high - 1e-12)
        expect(low - edges.low_m + (edges.high_m - high)).toBeLessThan(2e-5)
      }
    })
  }
  it('the elliptic integrals and the quadrature meet as the offset goes to nothing', () => {
    const crossing = stubCrossing(joints[0]!, 'outside', 'outside')
    const off = { ...crossing, offset_m: 1e-9 }
    expect(equation.coreVolume(off) / equation.coreVolume(crossing)).toBeCloseTo(1, 11)
    expect(equation.openingArea(off) / equation.openingArea(crossing)).toBeCloseTo(1, 11)
    const hole = holeOf(joints[0]!)
    expect(equation.boreContactArea({ ...hole, offset_m: 1e-9 }) / equation.boreContactArea(hole)).toBeCloseTo(1, 9)
    expect(equation.holeSawDepth({ ...hole, offset_m: 1e-9 }) / equation.holeSawDepth(hole)).toBeCloseTo(1, 6)
  })
  it('the square trim is the greatest of the curves through the wall of the stub', () => {
    for (const stub of joints)
      for (const around_rad of [0, 0.7, 1.5, 2.2, Math.PI, 4, 5.5]) {
        const crossing = { ...stubCrossing(stub, 'outside', 'outside'), around_rad }
        const trim = equation.squareTrimStart({ ...crossing, tubeWall_m: stub.stubWall_m })
        let most = Number.NEGATIVE_INFINITY
        for (let k = 0; k <= 400; k++) {
          const tubeRadius_m = stub.stubRadius_m - (stub.stubWall_m * k) / 400
          most = Math.max(most, equation.crossingLength({ ...crossing, tubeRadius_m }))
        }
        expect(trim).toBeGreaterThanOrEqual(most - 1e-12)
        expect(trim - most).toBeLessThan(1e-7)
      }
  })
})

describe('symmetry, limits and monotony', () => {
  const base = { pipeRadius_m: 0.055, tubeRadius_m: 0.025, angle_rad: turns(45), offset_m: 0 }
  it('is its own mirror image without an offset, and the mirror of the other offset with one', () => {
    for (const offset_m of [0, 0.01])
      for (const around_rad of [0.3, 1.2, 2.5]) {
        const one = equation.crossingPoint({ ...base, offset_m, around_rad })
        const other = equation.crossingPoint({ ...base, offset_m: -offset_m, around_rad: -around_rad })
        expect(other.height_m).toBeCloseTo(one.height_m, 14)
        expect(other.turn_rad).toBeCloseTo(-one.turn_rad, 14)
      }
  })
  it('becomes a circle for a level tube that is small beside the pipe', () => {
    const small = { ...base, tubeRadius_m: 1e-4, angle_rad: turns(90) }
    for (const around_rad of [0, 1, 2, 3]) {
      const { turn_rad, height_m } = equation.crossingPoint({ ...small, around_rad })
      expect(Math.hypot(0.055 * turn_rad, height_m) / 1e-4).toBeCloseTo(1, 6)
    }
    expect(equation.openingArea(small) / (Math.PI * 1e-8)).toBeCloseTo(1, 5)
  })
  it('a mitre stands square at 90° and a square cut needs no wedge there', () => {
    expect(equation.mitreRise({ stubRadius_m: 0.025, angle_rad: turns(90) })).toBeCloseTo(0, 15)
    expect(equation.mitreSawAngle({ angle_rad: turns(90) })).toBe(0)
    expect(equation.squareCutWedge({ columnWall_m: 0.003, angle_rad: turns(90) })).toBeCloseTo(0, 15)
  })
  it('grows with the tube and with the slant', () => {
    for (let i = 1; i < 10; i++) {
      const wider = { ...base, tubeRadius_m: 0.025 + 0.002 * i }
      expect(equation.openingArea(wider)).toBeGreaterThan(equation.openingArea({ ...wider, tubeRadius_m: 0.0249 }))
      const flatter = { ...base, angle_rad: turns(45 + 4 * i) }
      expect(equation.openingExtent(flatter).height_m).toBeLessThan(equation.openingExtent(base).height_m)
    }
  })
  it('gives the same in inches and millimetres, since it only knows ratios', () => {
    const inch = 0.0254
    const inches = equation.coreVolume({ ...base, pipeRadius_m: 2.25 * inch, tubeRadius_m: 1.1875 * inch })
    const mm = equation.coreVolume({ ...base, pipeRadius_m: 57.15 / 1000, tubeRadius_m: 30.1625 / 1000 })
    expect(inches / mm).toBeCloseTo(1, 13)
    const double = equation.coreVolume({ ...base, pipeRadius_m: 0.11, tubeRadius_m: 0.05 })
    expect(double / equation.coreVolume(base)).toBeCloseTo(8, 12)
  })
  it('has more to cut along the heel than along the crown, by the rise of the mitre, for every end', () => {
    const stub = { ...joints[0]!, offset_m: 0 }
    const rise = equation.mitreRise(stub)
    for (const end of [{ kind: 'saddle' }, { kind: 'flush' }, { kind: 'mitre', depth_m: 0.01 }] as const) {
      const { heel_m, crown_m, blank_m } = equation.stubLengths({ stub, end, axisLength_m: 0.3, mouthTilt_rad: 0 })
      expect(heel_m - crown_m).toBeCloseTo(rise, 13)
      expect(blank_m).toBeCloseTo(heel_m, 13)
    }
  })
})

describe('both sides of each bound', () => {
  const stub: Stub = {
    columnRadius_m: 0.055,
    columnWall_m: 0.003,
    stubRadius_m: 0.025,
    stubWall_m: 0.003,
    angle_rad: turns(45),
    offset_m: 0,
  }
  it('takes a tube that just enters and refuses one that does not', () => {
    const just = { ...holeOf(stub), holeRadius_m: 0.03, offset_m: 0.022 }
    expect(equation.plugVolume(just)).toBeGreaterThan(0)
    expect(() => equation.plugVolume({ ...just, offset_m: 0.02201 })).toThrow(/plugVolume: \|e\| \+ q/)
    expect(equation.entryRoom({ boreRadius_m: 0.052, holeRadius_m: 0.03, offset_m: -0.022 })).toBeCloseTo(0, 15)
  })
  it('takes angles up to a right angle', () => {
    const at = (angle_rad: number) =>
      equation.crossingLength({ ...stubCrossing(stub, 'outside', 'outside'), angle_rad, around_rad: 0 })
    expect(at(turns(90))).toBeGreaterThan(0)
    expect(at(turns(0.01))).toBeGreaterThan(0)
    for (const angle of [0, -0.1, turns(90.01), Number.NaN]) expect(() => at(angle)).toThrow(RangeError)
  })
  it('names function, symbol and value', () => {
    expect(() => equation.pocketSlit({ former_m: -1, stretch: 0 })).toThrow('pocketSlit: D = -1 is not positive')
    expect(() => equation.pocketSlit({ former_m: 1, stretch: -0.1 })).toThrow('pocketSlit: ε = -0.1 is negative')
  })
  it('knows the room of a ring on both sides of touching', () => {
    const hole = holeOf(stub)
    const touch = 2 * Math.asin(0.025 / 0.055)
    expect(equation.ringLigament({ hole, cut: 'axis', turn_rad: touch + 1e-6 })).toBeGreaterThan(0)
    expect(equation.ringLigament({ hole, cut: 'axis', turn_rad: touch - 1e-6 })).toBeLessThan(0)
    expect(equation.outsideLigament({ hole, cut: 'axis', turn_rad: touch - 0.05, rise_m: 0 })).toBeLessThan(1e-6)
    expect(equation.outsideLigament({ hole, cut: 'axis', turn_rad: touch + 0.05, rise_m: 0 })).toBeCloseTo(
      0.055 * 0.05,
      8,
    )
  })
  it('lets ends meet in the bore where d < r cot(π / k)', () => {
    const meet = 0.025 / Math.tan(Math.PI / 3)
    const gap = (depth_m: number) => equation.boreGap({ stub, end: { kind: 'mitre', depth_m }, count: 3 })!
    expect(gap(meet + 1e-6)).toBeGreaterThan(0)
    expect(gap(meet - 1e-6)).toBeLessThan(0)
  })
})

describe('a worked joint: 110 x 3.2 column, 50 x 1.8 stub at 45°, 90 mm along the lower line', () => {
  const stub: Stub = {
    columnRadius_m: 0.055,
    columnWall_m: 0.0032,
    stubRadius_m: 0.025,
    stubWall_m: 0.0018,
    angle_rad: turns(45),
    offset_m: 0,
  }
  const axisLength_m = equation.axisLength({ stub, heelOutside_m: 0.09, mouthTilt_rad: 0 })
  it('is 40 mm along the upper line and lifts the lip 64 mm over the low edge of the hole', () => {
    const { heel_m, crown_m } = equation.stubLengths({ stub, end: { kind: 'saddle' }, axisLength_m, mouthTilt_rad: 0 })
    expect(heel_m).toBeCloseTo(0.09, 14)
    expect(crown_m).toBeCloseTo(0.09 - 0.05, 14)
    expect(equation.heelRise({ heelOutside_m: 0.09, angle_rad: turns(45) })).toBeCloseTo(0.0636, 4)
  })
  it('a mouth tilted by the angle of the stub is level: its lip is as high as its centre', () => {
    const level = { axisLength_m, angle_rad: turns(45), stubBoreRadius_m: 0.0232, mouthTilt_rad: turns(45) }
    expect(equation.lipHeight(level)).toBeCloseTo(axisLength_m * Math.cos(turns(45)), 14)
    expect(equation.lipHeight({ ...level, mouthTilt_rad: 0 })).toBeLessThan(equation.lipHeight(level))
  })
  it('wraps the stub once round, wider on paper', () => {
    const given = { stub, end: { kind: 'saddle' }, axisLength_m, mouthTilt_rad: 0, tolerance_m: 5e-6 } as const
    const wrap = equation.stubWrap({ ...given, paper_m: 1e-4 })
    expect(wrap.width_m - 2 * Math.PI * 0.025).toBeCloseTo(Math.PI * 1e-4, 12)
    expect(wrap.end.at(-1)!.x_m).toBeCloseTo(wrap.width_m, 12)
    expect(wrap.mouth.every(({ y_m }) => Math.abs(y_m - axisLength_m) < 1e-12)).toBe(true)
  })
  it('seats cups by their rim, slits wide ones and measures their reach', () => {
    const seat = equation.cupSeat({ rim_m: 0.052, body_m: 0.048, stubBore_m: 0.0464, stubOutside_m: 0.05 })
    expect(seat.ledge_m).toBeCloseTo(0.0028, 12)
    expect(seat.play_m).toBeCloseTo(-0.0008, 12)
    const slit = equation.cupSlit({ body_m: 0.048, foot_m: 0.032, depth_m: 0.05, stubBore_m: 0.0464 })
    expect(slit.overlap_m).toBeCloseTo(Math.PI * 0.0016, 12)
    expect(slit.slit_m).toBeCloseTo(0.005 * Math.hypot(1, 0.16), 12)
    expect(equation.cupSlit({ body_m: 0.046, foot_m: 0.03, depth_m: 0.05, stubBore_m: 0.0464 }).slit_m).toBe(0)
    const reach = equation.cupReach({ stub, axisLength_m, cupDepth_m: 0.1, footRadius_m: 0.016 })
    expect(reach.crown_m - reach.heel_m).toBeCloseTo(2 * 0.016, 12)
    expect(reach.axis_m).toBeCloseTo(0.1 - axisLength_m + 0.0518 / Math.sin(turns(45)), 12)
    const foot = equation.cupFootNearest({ axisLength_m, cupDepth_m: 0.1, footRadius_m: 0.016, angle_rad: turns(45) })
    // The upper edge of the foot stands past the wall by its reach, seen along the axis.
    expect(foot).toBeCloseTo(0.0518 - reach.crown_m * Math.sin(turns(45)), 12)
  })
})

describe('sections', () => {
  const hole: Hole = {
    columnRadius_m: 0.055,
    columnWall_m: 0.0032,
    holeRadius_m: 0.025,
    angle_rad: turns(45),
    offset_m: 0.004,
  }
  it('are whole above and below all holes and do not turn with the column', () => {
    const whole = equation.wholeSection(hole)
    for (const level_m of [-0.2, 0.3])
      expect(
        equation.sectionAtLevel({ hole, cut: 'square', sites: [{ turn_rad: 1, height_m: 0 }], level_m }).area_m2,
      ).toBe(whole.area_m2)
    const sites = (turn: number) => [0, 2].map((t) => ({ turn_rad: t + turn, height_m: 0 }))
    const one = equation.worstSection({ hole, cut: 'square', sites: sites(0) })
    const other = equation.worstSection({ hole, cut: 'square', sites: sites(2.5) })
    expect(other.modulus_m3 / one.modulus_m3).toBeCloseTo(1, 7)
  })
  it('are looked at wherever rings stand unlike: no level of any ring leaves less than the worst', () => {
    const bore = equation.squareCutExtent(hole)
    const rise = fc.integer({ min: 5, max: 60 }).map((n) => n / 500)
    const ring = fc.record({ rise, turn_rad: fc.integer({ min: 0, max: 5 }), each: fc.integer({ min: 1, max: 2 }) })
    fc.assert(
      fc.property(fc.array(ring, { minLength: 1, maxLength: 7 }), (rings) => {
        let height_m = 0
        const sites = rings.flatMap((r) => {
          height_m += r.rise
          const at_m = height_m
          return Array.from({ length: r.each }, (_, i) => ({ turn_rad: r.turn_rad + i * Math.PI, height_m: at_m }))
        })
        const worst = equation.worstSection({ hole, cut: 'square', sites })
        for (const site of sites)
          for (let i = 0; i < 24; i++) {
            const level_m = site.height_m + bore.bottom_m + ((i + 0.5) * bore.height_m) / 24
            const there = equation.sectionAtLevel({ hole, cut: 'square', sites, level_m })
            expect(there.modulus_m3).toBeGreaterThanOrEqual(worst.modulus_m3 * (1 - 1e-7))
          }
      }),
      { numRuns: 40 },
    )
  })
  it('cut square to the wall are never stronger than those cut along the axis', () => {
    const sites = [0, (2 * Math.PI) / 3, (4 * Math.PI) / 3].map((turn_rad) => ({ turn_rad, height_m: 0 }))
    for (let level_m = 0.012; level_m < 0.095; level_m += 0.005) {
      const square = equation.sectionAtLevel({ hole, cut: 'square', sites, level_m })
      const axis = equation.sectionAtLevel({ hole, cut: 'axis', sites, level_m })
      expect(square.area_m2).toBeLessThanOrEqual(axis.area_m2 * (1 + 1e-9))
    }
  })
  it('with the holes of a level that meet leave nothing, as zeros', () => {
    const openings = [
      { from_rad: -2, to_rad: 2 },
      { from_rad: 1, to_rad: 5 },
    ]
    expect(equation.remainingSection({ ...hole, openings }).modulus_m3).toBe(0)
  })
  it('sum to the volume of the plug over all levels', () => {
    const whole = equation.wholeSection(hole)
    const { top_m, bottom_m, height_m } = equation.squareCutExtent(hole)
    const steps = 400
    let volume = 0
    for (let i = 0; i < steps; i++) {
      const level_m = bottom_m + (height_m * (i + 0.5)) / steps
      const at = equation.sectionAtLevel({ hole, cut: 'axis', sites: [{ turn_rad: 0, height_m: 0 }], level_m })
      volume += ((whole.area_m2 - at.area_m2) * (top_m - bottom_m)) / steps
    }
    // Midpoint sums of an edge that starts like a root: an error of about steps^-1.5.
    expect(Math.abs(volume / equation.plugVolume(hole) - 1)).toBeLessThan(5e-4)
  })
})
