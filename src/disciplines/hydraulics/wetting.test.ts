import { describe, expect, it } from 'vitest'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import { wettingRate } from './equations-film.ts'
import { water } from './equations-water.ts'
import { coveredShare, filmBearing, freeFallToWall, rivuletWidth } from './equations-wetting.ts'
import { wettingChanges } from './wetting-change.ts'
import { cloggedWetting, type WettingCase, wettingMap, worstRow } from './wetting-map.ts'

const LPM = 1 / 60_000
const w20 = water({ temperature_C: 20 })
const clean = wallWetting.rows.cleanPvc.contactAngle_rad
const runIn = wallWetting.rows.runIn.contactAngle_rad
const round = 2 * Math.PI

/** Three sites a ring, rings turned against each other by half a step, as a column is drilled. */
const sites = Array.from({ length: 24 }, (_, i) => {
  const ring = Math.floor(i / 3)
  const angle_rad = ((i % 3) * round) / 3 + (ring % 2 === 1 ? round / 6 : 0)
  return { id: `s${i}`, angle_rad, depth_m: 0.2 + 0.18 * ring, halfAngle_rad: 0.3, reach_m: 0, end_m: 0 }
})

const column: WettingCase = {
  flow_m3_s: 3 * LPM,
  water: w20,
  contactAngle_rad: clean,
  bore_m: 0.1036,
  lean_rad: 0,
  toward_rad: 0,
  holes: { count: 12, first_rad: 0, circle_m: 0.098, hole_m: 0.004, discharge: 0.61 },
  sites,
}

/** Flow at which an even ring of streams just closes the film. */
const closing_m3_s = (wettingRate({ contactAngle_rad: clean, ...w20 }) * Math.PI * column.bore_m) / w20.density_kg_m3

describe('film paths', () => {
  it('creep towards the low line, never past it, and stay put in a plumb column', () => {
    const at = (bearing_rad: number, run_m: number, lean_rad = Math.PI / 180) =>
      filmBearing({ bearing_rad, low_rad: 1, lean_rad, run_m, bore_m: 0.1 })
    expect(at(2.5, 1, 0)).toBeCloseTo(2.5, 12)
    expect(at(1, 2)).toBeCloseTo(1, 12)
    let last = 2.5
    for (const run of [0.1, 0.5, 1, 2, 5]) {
      const now = at(2.5, run)
      expect(now).toBeLessThan(last)
      expect(now).toBeGreaterThan(1)
      // Mirror image on the other side of the low line.
      expect(at(-0.5, run) - 1).toBeCloseTo(-(now - 1), 12)
      last = now
    }
  })

  it('follow the differential equation of steepest descent', () => {
    const [lean_rad, bore_m] = [0.03, 0.1]
    let φ = 2
    const step = 1e-4
    for (let s = 0; s < 1.5; s += step) {
      const slope = (x: number) => (-Math.tan(lean_rad) * Math.sin(x)) / (bore_m / 2)
      φ += step * slope(φ + (step / 2) * slope(φ))
    }
    expect(filmBearing({ bearing_rad: 2, low_rad: 0, lean_rad, run_m: 1.5, bore_m })).toBeCloseTo(φ, 3)
  })

  it('free streams meet the wall where the column leans under them', () => {
    const given = { radius_m: 0.02, low_rad: 0, lean_rad: 0.02, bore_m: 0.1 }
    expect(freeFallToWall({ ...given, bearing_rad: 0 })).toBeCloseTo(0.03 / Math.tan(0.02), 10)
    expect(freeFallToWall({ ...given, bearing_rad: Math.PI })).toBeCloseTo(0.07 / Math.tan(0.02), 10)
    expect(freeFallToWall({ ...given, bearing_rad: 0, lean_rad: 0 })).toBe(Number.POSITIVE_INFINITY)
  })

  it('arcs are counted once where they overlap, and across the seam', () => {
    expect(coveredShare({ arcs: [] })).toBe(0)
    expect(coveredShare({ arcs: [{ middle_rad: 0, width_rad: round / 4 }] })).toBeCloseTo(0.25, 12)
    const twice = [0.1, 0.1].map((middle_rad) => ({ middle_rad, width_rad: 1 }))
    expect(coveredShare({ arcs: twice })).toBeCloseTo(1 / round, 12)
    const ring = Array.from({ length: 8 }, (_, i) => ({ middle_rad: (i * round) / 8, width_rad: round / 8 + 1e-9 }))
    expect(coveredShare({ arcs: ring })).toBeCloseTo(1, 9)
  })
})

describe('wetting map', () => {
  it('wets the share of the perimeter that the flow can hold open, and all of it above the closing flow', () => {
    for (const share of [0.1, 0.5, 0.99, 1.01, 2]) {
      const map = wettingMap({ ...column, flow_m3_s: share * closing_m3_s })
      for (const at of map.wetShares) expect(at.share).toBeCloseTo(Math.min(1, share), 6)
    }
    expect(wettingMap({ ...column, flow_m3_s: 1.01 * closing_m3_s }).sites.every((s) => s.reached)).toBe(true)
  })

  it('conserves water: the strips are as wide as the whole flow would be', () => {
    const whole = rivuletWidth({ ...column, flow_m3_s: 3 * LPM })
    const each = rivuletWidth({ ...column, flow_m3_s: (3 * LPM) / 12 })
    expect(12 * each).toBeCloseTo(whole, 12)
  })

  it('is the same column when all of it is turned', () => {
    const turn = 0.7
    const leaning = { ...column, flow_m3_s: 1 * LPM, lean_rad: 0.01 }
    const other = {
      ...leaning,
      toward_rad: turn,
      holes: { ...column.holes, first_rad: turn },
      sites: sites.map((s) => ({ ...s, angle_rad: s.angle_rad + turn })),
    }
    const [a, b] = [wettingMap(leaning).sites, wettingMap(other).sites]
    a.forEach((site, i) => {
      expect(b[i]!.margin_rad).toBeCloseTo(site.margin_rad, 9)
    })
  })

  it('dries the high side of a leaning column, more so lower down', () => {
    const leaning = wettingMap({ ...column, flow_m3_s: 2.5 * LPM, lean_rad: 0.03 })
    expect(leaning.wetShares.at(-1)!.share).toBeLessThan(leaning.wetShares[0]!.share)
    const margin = (angle: number) =>
      wettingMap({
        ...column,
        flow_m3_s: 0.8 * LPM,
        lean_rad: 0.03,
        sites: [{ id: 'x', angle_rad: angle, depth_m: 1.5, halfAngle_rad: 0.1, reach_m: 0, end_m: 0 }],
      }).sites[0]!.reached
    expect(margin(0)).toBe(true)
    // A hole right on the high line keeps its strip there: an unstable place, so a site beside it is asked.
    expect(margin(Math.PI - 0.4)).toBe(false)
  })

  it('one stream from a tee wets one side only', () => {
    const tee = { ...column, flow_m3_s: 1 * LPM, holes: { ...column.holes, count: 1, circle_m: column.bore_m } }
    const reached = wettingMap(tee).sites.map((s) => s.reached)
    expect(reached).toContain(true)
    // The strip is a quarter of the perimeter wide here: only sites that face the tee can have it.
    sites.forEach((site, i) => {
      expect(reached[i]).toBe(Math.cos(site.angle_rad) > 0.4)
    })
  })

  it('a stream away from the wall falls past sites whose cups do not reach in', () => {
    const inner = { ...column, holes: { ...column.holes, circle_m: 0.06 } }
    expect(wettingMap(inner).sites.some((s) => s.reached)).toBe(false)
    const reaching = { ...inner, sites: sites.map((s) => ({ ...s, reach_m: 0.025 })) }
    expect(wettingMap(reaching).sites.every((s) => s.reached)).toBe(true)
  })

  it('no flow or no open hole leaves all dry', () => {
    expect(wettingMap({ ...column, flow_m3_s: 0 }).sites.some((s) => s.reached)).toBe(false)
    const all = new Set(Array.from({ length: 12 }, (_, i) => i))
    expect(wettingMap(column, all).sites.some((s) => s.reached)).toBe(false)
  })

  it('clogging never wets a site that was dry, and takes some at low flow', () => {
    for (const flow of [0.3, 0.8, 2]) {
      const open = wettingMap({ ...column, flow_m3_s: flow * LPM }).sites
      const clogged = cloggedWetting({ ...column, flow_m3_s: flow * LPM }, 0.3)
      clogged.forEach((site, i) => {
        if (!open[i]!.reached) expect(site.reached).toBe(false)
      })
    }
    const thin = { ...column, flow_m3_s: 0.5 * LPM }
    expect(wettingMap(thin).sites.every((s) => s.reached)).toBe(true)
    expect(cloggedWetting(thin, 0.3).every((s) => s.reached)).toBe(false)
  })

  it('a wall between clean and run in leaves doubt, in the right order', () => {
    const { contactAngle_rad: _, ...bare } = { ...column, flow_m3_s: 1.2 * LPM }
    const band = worstRow(bare, { hard_rad: clean, easy_rad: runIn }, 0.3)
    for (const site of band) expect(site.easyMargin_rad).toBeGreaterThanOrEqual(site.hardMargin_rad)
    expect(new Set(band.map((s) => s.water)).size).toBeGreaterThan(0)
  })
})

describe('smallest changes that wet all', () => {
  const limits = { cloggedShare: 0, mostFlow_m3_s: 8 * LPM, mostHoles: 30 }
  const few: WettingCase = {
    ...column,
    flow_m3_s: 0.6 * LPM,
    holes: { ...column.holes, count: 6, first_rad: round / 12 },
    sites: sites.map((s) => ({ ...s, halfAngle_rad: 0.2 })),
  }

  it('are proved by the map, and the smallest comes first', () => {
    expect(wettingMap(few).sites.every((s) => s.reached)).toBe(false)
    const changes = wettingChanges(few, limits)
    expect(changes.map((c) => c.what)).toContain('first_rad')
    expect(changes.map((c) => c.what)).toContain('flow_m3_s')
    changes.forEach((change, i) => {
      const inHoles = change.what === 'first_rad' || change.what === 'count'
      const changed = inHoles
        ? { ...few, holes: { ...few.holes, [change.what]: change.to } }
        : { ...few, [change.what]: change.to }
      expect(
        wettingMap(changed).sites.every((s) => s.reached),
        change.what,
      ).toBe(true)
      if (i > 0) expect(change.size).toBeGreaterThanOrEqual(changes[i - 1]!.size)
    })
  })

  it('the flow is the least that does it', () => {
    const flow = wettingChanges(few, limits).find((c) => c.what === 'flow_m3_s')!
    expect(wettingMap({ ...few, flow_m3_s: flow.to * 0.999 }).sites.every((s) => s.reached)).toBe(false)
  })

  it('are none where all is wet, or where nothing helps', () => {
    expect(wettingChanges({ ...column, flow_m3_s: 6 * LPM }, limits)).toEqual([])
    const hopeless = { ...few, holes: { ...few.holes, circle_m: 0.03 } }
    expect(wettingChanges(hopeless, limits)).toEqual([])
  })
})
