import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as equation from './equations.ts'
import { type Hole, holeCrossing, type Stub, stubCrossing } from './joint.ts'

/** Every number of the check set is printed to six digits; 1e-5 is twice the half of the last. */
const RELATIVE = 1e-5
const cases = JSON.parse(readFileSync(new URL('../../../test/data/geometry-cases.json', import.meta.url), 'utf8'))
const mm = 1e-3
const turns = (degrees: number) => (degrees * Math.PI) / 180

/** `got` in SI against a printed number in mm, mm², mm³ or mm⁴; zeros are held to 1e-9 of the scale of the case. */
function near(what: string, got: number | null, printed: number, power: number) {
  const scaled = (got ?? Number.NaN) / mm ** power
  it(`${what} = ${printed}`, () => {
    const limit = printed === 0 ? 1e-7 * 50 ** power : RELATIVE * Math.abs(printed)
    expect(Math.abs(scaled - printed), `got ${scaled}`).toBeLessThanOrEqual(limit)
  })
}

for (const { id, inputs, outputs: o } of cases.cases) {
  const stub: Stub = {
    columnRadius_m: inputs.R * mm,
    columnWall_m: inputs.T * mm,
    stubRadius_m: inputs.r * mm,
    stubWall_m: inputs.t * mm,
    angle_rad: turns(inputs.theta_deg),
    offset_m: inputs.e * mm,
  }
  const hole: Hole = { ...stub, holeRadius_m: stub.stubRadius_m }
  const { columnRadius_m: R, columnWall_m: T, stubRadius_m: r, angle_rad, offset_m } = stub
  const Ri = R - T
  const depth_m = equation.mitreDepth({ pipeRadius_m: Ri, stubRadius_m: r, offset_m })
  const mitre = { kind: 'mitre', depth_m } as const
  const saddle = { kind: 'saddle' } as const

  describe(`joint ${id}: holes`, () => {
    near('plug volume', equation.plugVolume(hole), o.plug_volume, 3)
    for (const [name, at] of [
      ['hole_outer', 'outside'],
      ['hole_inner', 'bore'],
    ] as const) {
      const crossing = holeCrossing(hole, at)
      const extent = equation.openingExtent(crossing)
      near(`${name} top`, extent.top_m, o[name].z_top, 1)
      near(`${name} bottom`, extent.bottom_m, o[name].z_bottom, 1)
      near(`${name} height`, extent.height_m, o[name].height, 1)
      near(`${name} arc`, extent.arc_m, o[name].width_arc, 1)
      near(`${name} right side`, extent.rightHeight_m, o[name].z_widest, 1)
      near(
        `${name} chord`,
        crossing.pipeRadius_m * (Math.sin(extent.right_rad) - Math.sin(extent.left_rad)),
        o[name].width_chord_y,
        1,
      )
      if (o[name].z_widest_minus_y) near(`${name} left side`, extent.leftHeight_m, o[name].z_widest_minus_y, 1)
    }
    if (o.area_hole_outer) {
      near('area of the hole outside', equation.openingArea(holeCrossing(hole, 'outside')), o.area_hole_outer, 2)
      near('saddle ring', equation.saddleArea(stub), o.area_saddle, 2)
      near('contact in the wall', equation.boreContactArea(hole), o.area_bore, 2)
    }
    near('hole saw depth', equation.holeSawDepth(hole), o.holesaw_depth_needed, 1)
  })

  if (o.radial_cut)
    describe(`joint ${id}: square cut`, () => {
      const square = equation.squareCutExtent(hole)
      const share = (part: number) => equation.squareCutHeights({ ...hole, turn_rad: part * square.right_rad })
      near('height', square.height_m, o.radial_cut.height, 1)
      near('half angle', square.right_rad, o.radial_cut.half_angle, 0)
      near('arc', square.arc_m, o.radial_cut.arc_width_outer, 1)
      near('wedge', equation.squareCutWedge(hole), o.radial_cut.extra_height, 1)
      near('top at half', share(0.5)!.high_m, o.radial_cut.env_top_at_half_of_max_angle, 1)
      near('top at 0.9', share(0.9)!.high_m, o.radial_cut.env_top_at_0p9, 1)
      near('bottom at half', share(0.5)!.low_m, o.radial_cut.env_bottom_at_half, 1)
    })

  describe(`joint ${id}: ends`, () => {
    const curves = {
      saddle_outside_OD: (around_rad: number) => equation.endStart({ stub, end: saddle, around_rad }),
      saddle_outside_ID: (around_rad: number) =>
        equation.crossingLength({ ...stubCrossing(stub, 'outside', 'bore'), around_rad }),
      flush_inside_OD: (around_rad: number) => equation.endStart({ stub, end: { kind: 'flush' }, around_rad }),
      mitre_OD: (around_rad: number) => equation.endStart({ stub, end: mitre, around_rad }),
    }
    for (const [name, curve] of Object.entries(curves)) {
      cases.template_psi_deg.forEach((psi: number, i: number) => {
        near(`${name} at ${psi}°`, curve(turns(psi)), o[`template_${name}`][i], 1)
      })
      o.template_psi_deg_225_270_315?.[name].forEach((printed: number, i: number) => {
        near(`${name} at ${225 + 45 * i}°`, curve(turns(225 + 45 * i)), printed, 1)
      })
    }
    near('mitre depth', depth_m, o.mitre_depth_d, 1)
    near('mitre rise', equation.mitreRise(stub), o.mitre_peak_to_peak, 1)
    near('reach into the bore', equation.mitreReach({ boreRadius_m: Ri, depth_m }), o.protrusion_centre, 1)
    near('gap of two', equation.boreGap({ stub, end: mitre, count: 2 }), o.gap_opposite, 1)
    if (o.gap_k3) near('gap of three', equation.boreGap({ stub, end: mitre, count: 3 }), o.gap_k3, 1)
    const axisLength_m = o.stub_volume_axis_length_Lx * mm
    near('volume, saddle', equation.stubVolume({ stub, end: saddle, axisLength_m }), o.stub_volume_saddle_outside, 3)
    near('volume, mitre', equation.stubVolume({ stub, end: mitre, axisLength_m }), o.stub_volume_mitre, 3)
    near('trace error', equation.traceErrorMost(stub), o.trace_error_sides, 1)
    if (o.trace_error_sides_minus_y)
      near('trace error left', equation.traceError({ ...stub, beside_m: r - offset_m }), o.trace_error_sides_minus_y, 1)
    near('trace drop', equation.traceDrop({ ...stub, depth_m }), o.trace_site_shift, 1)
  })

  describe(`joint ${id}: axis length 180`, () => {
    const f = o.for_axis_length_180
    const given = { stub, axisLength_m: 180 * mm, mouthTilt_rad: 0 }
    const centre = equation.mouthCentre({ ...given, angle_rad })
    const lengths = equation.stubLengths({ ...given, end: mitre })
    near('crown radius', centre.reach_m, f.crown_radius_C, 1)
    near('crown height', centre.height_m, f.crown_height_above_axis_crossing, 1)
    near(
      'lip',
      equation.lipHeight({ ...given, stubBoreRadius_m: r - stub.stubWall_m, angle_rad }),
      f.lip_low_point_z,
      1,
    )
    if (f.lip_freeboard_over_inner_hole_bottom !== null)
      near('freeboard', equation.freeboard(given), f.lip_freeboard_over_inner_hole_bottom, 1)
    near('centre', lengths.centre_m, f.mitre_length_centre, 1)
    near('heel', lengths.heel_m, f.mitre_long_side, 1)
    near('crown', lengths.crown_m, f.mitre_short_side, 1)
  })

  if (o.section_gross)
    describe(`joint ${id}: sections`, () => {
      const gross = equation.wholeSection(stub)
      near('whole area', gross.area_m2, o.section_gross.area, 2)
      near('whole inertia', gross.inertiaLeast_m4, o.section_gross.I, 4)
      near('whole modulus', gross.modulus_m3, o.section_gross.W, 3)
      const ring = (k: number) =>
        Array.from({ length: k }, (_, i) => ({ turn_rad: (2 * Math.PI * i) / k, height_m: 0 }))
      const h = o.section_k3_axiscut.h * mm
      const axis = equation.sectionAtLevel({ hole, cut: 'axis', sites: ring(3), level_m: h })
      near('axis cut, three: area', axis.area_m2, o.section_k3_axiscut.area, 2)
      for (const k of [1, 2, 3]) {
        const printed = o[`section_radial_k${k}`]
        const worst = equation.worstSection({ hole, cut: 'square', sites: ring(k) })
        near(`square cut, ${k}: area`, worst.area_m2, printed.area, 2)
        near(`square cut, ${k}: inertia`, worst.inertiaLeast_m4, printed.I_min, 4)
        near(`square cut, ${k}: modulus`, worst.modulus_m3, printed.W_min, 3)
        near(`square cut, ${k}: centroid`, worst.centroidX_m, printed.centroid_x, 1)
      }
    })
}

describe('classics', () => {
  const square = { pipeRadius_m: 0.05, tubeRadius_m: 0.05, offset_m: 0 }
  const { classics } = cases
  near(
    'Steinmetz solid',
    2 * equation.coreVolume({ ...square, angle_rad: turns(90) }),
    classics.steinmetz_r50.closed,
    3,
  )
  near(
    'equal pipes at 45°',
    2 * equation.coreVolume({ ...square, angle_rad: turns(45) }),
    classics.equal_diameter_45deg_r50.closed,
    3,
  )
  const s = (around: number) => equation.crossingLength({ ...square, angle_rad: turns(90), around_rad: turns(around) })
  near('cope of equal pipes', s(0) - s(90), classics.equal_diameter_90deg_cope_depth_r50.closed, 1)
  const ratio = equation.mitreRise({ stubRadius_m: 0.5, angle_rad: turns(35) })
  near('ellipse of a mitre at 35°', Math.hypot(1, ratio), classics.ellipse_ratio_vertical_mitre_35deg.closed, 0)
  const level = equation.mitreRise({ stubRadius_m: 0.5, angle_rad: turns(45) })
  near('ellipse of a level cut at 45°', Math.hypot(1, level), classics.ellipse_ratio_horizontal_section_45deg.closed, 0)
})

for (const g of cases.ligaments)
  describe(`ligaments R ${g.R}, r ${g.r}, ${g.k} lines, pitch ${g.p}`, () => {
    const hole: Hole = {
      columnRadius_m: g.R * mm,
      columnWall_m: g.T * mm,
      holeRadius_m: g.r * mm,
      angle_rad: turns(g.th),
      offset_m: 0,
    }
    const diagonal = { turn_rad: (2 * Math.PI) / g.k, rise_m: (g.p / 2) * mm }
    near('diagonal outside', equation.outsideLigament({ hole, cut: 'axis', ...diagonal }), g.diag_outer_unrolled, 1)
    near('diagonal through the wall', equation.wallLigament({ hole, ...diagonal }), g.diag_3d_closed, 1)
    const pitch_m = g.p * mm
    near('same line, axis cut', equation.lineLigament({ hole, cut: 'axis', pitch_m }), g.same_line_axis, 1)
    near('same line, square cut', equation.lineLigament({ hole, cut: 'square', pitch_m }), g.same_line_radial, 1)
    const turn = (count: number) => ({ hole, cut: 'axis', turn_rad: (2 * Math.PI) / count }) as const
    near('same ring', equation.ringLigament(turn(g.k / 2)), g.same_ring_arc, 1)
    near('all in one ring', equation.ringLigament(turn(g.k)), g.ring_of_k_arc, 1)
    const sites = Array.from({ length: g.k }, (_, line) => ({
      turn_rad: (2 * Math.PI * line) / g.k,
      height_m: ((line % 2) * pitch_m) / 2,
    })).flatMap((site) => [-1, 0, 1].map((n) => ({ ...site, height_m: site.height_m + n * pitch_m })))
    const worst = equation.worstSection({ hole, cut: 'square', sites })
    near('worst area', worst.area_m2, g.worst_section.area, 2)
    near('worst inertia', worst.inertiaLeast_m4, g.worst_section.I, 4)
    near('worst modulus', worst.modulus_m3, g.worst_section.W, 3)
    it('counts the holes at the worst level', () => expect(worst.count).toBe(g.worst_section.n))
    const whole = equation.wholeSection(hole)
    near('share of area', worst.area_m2 / whole.area_m2, g.ratio_A, 0)
    near('share of modulus', worst.modulus_m3 / whole.modulus_m3, g.ratio_W, 0)
  })

describe('traced edges', () => {
  const { trace_error_over_R: error, trace_true_gap_over_R: gap } = cases
  error.r_over_R.forEach((r: number, i: number) => {
    error.theta_deg.forEach((theta: number, j: number) => {
      const given = { columnRadius_m: 1, stubRadius_m: r, angle_rad: turns(theta), offset_m: 0 }
      near(`error at r/R ${r}, ${theta}°`, equation.traceErrorMost(given), error.rows[i][j], 0)
    })
  })
  gap.r_over_R.forEach((r: number, i: number) => {
    gap.theta_deg.forEach((theta: number, j: number) => {
      const given = { columnRadius_m: 1, stubRadius_m: r, angle_rad: turns(theta), offset_m: 0 }
      it(`gap at r/R ${r}, ${theta}° = ${gap.rows[i][j]} (four decimals)`, () => {
        const found = equation.traceGap(given)
        expect(Math.abs(found.gap_m - gap.rows[i][j])).toBeLessThanOrEqual(0.5e-4 + 1e-6)
        expect(found.around_rad).toBeGreaterThan(turns(120))
        expect(found.around_rad).toBeLessThan(turns(140))
      })
    })
  })
})
