import { describe, expect, it } from 'vitest'
import { wallWetting } from '../../tables/hydraulic-walls.ts'
import { streamDrift } from './equations-splash.ts'
import { water } from './equations-water.ts'
import { type WettingCase, worstRow } from './wetting-map.ts'

const LPM = 1 / 60_000
const wall = { hard_rad: wallWetting.rows.cleanPvc.contactAngle_rad, easy_rad: wallWetting.rows.runIn.contactAngle_rad }
const round = 2 * Math.PI

/** Eight rings of three sites, every second ring turned; ends of stubs stand 6 mm into a bore of 104 mm. */
const sites = Array.from({ length: 24 }, (_, i) => {
  const ring = Math.floor(i / 3)
  const angle_rad = ((i % 3) * round) / 3 + (ring % 2 === 1 ? round / 6 : 0)
  return { id: `${i + 1}`, angle_rad, depth_m: 0.15 + 0.18 * ring, halfAngle_rad: 0.5, reach_m: 0, end_m: 0.006 }
})

const column: Omit<WettingCase, 'contactAngle_rad'> = {
  flow_m3_s: 3 * LPM,
  water: water({ temperature_C: 20 }),
  bore_m: 0.104,
  lean_rad: 0,
  toward_rad: 0,
  holes: { count: 12, first_rad: 0, circle_m: 0.09, hole_m: 0.003, discharge: 0.61 },
  sites,
}
const at = (circle_m: number, change: Partial<typeof column> = {}) => ({
  ...column,
  ...change,
  holes: { ...column.holes, circle_m, ...change.holes },
})
const bare = sites.map((s) => ({ ...s, end_m: 0 }))

describe('falling drops', () => {
  it('strike the ends that stand in their way: such a site is not dry', () => {
    for (const s of worstRow(at(0.09), wall, 0)) expect(s).toMatchObject({ water: 'drops', drops: 'sure' })
  })

  it('pass by what stands back, but for drills askew: that is likely lower down, and never sure', () => {
    const map = worstRow(at(0.09, { sites: bare }), wall, 0)
    expect(map.some((s) => s.drops === 'sure')).toBe(false)
    expect(map.some((s) => s.drops === 'likely')).toBe(true)
    // Once a stream has struck and splashed, all rings below are splashed.
    const first = map.findIndex((s) => s.drops === 'likely')
    expect(map.slice(first).every((s) => s.drops === 'likely')).toBe(true)
  })

  it('of one mouth in the middle of a wide bore reach nothing: every site is dry', () => {
    const holes = { ...column.holes, count: 1, hole_m: 0.013 }
    const map = worstRow(at(0, { bore_m: 0.3, sites: bare, holes: { ...holes, circle_m: 0 } }), wall, 0)
    expect(map.every((s) => s.water === 'dry')).toBe(true)
  })

  it('are no question where streams cling to the wall', () => {
    const map = worstRow(at(0.1005), wall, 0)
    expect(map.every((s) => s.drops === null)).toBe(true)
    expect(map.some((s) => s.water === 'wet' || s.water === 'doubtful')).toBe(true)
  })

  it('of blocked holes strike nothing, and without flow nothing falls', () => {
    const all = worstRow(at(0.09), wall, 1)
    expect(all.every((s) => s.water === 'dry')).toBe(true)
    expect(worstRow(at(0.09, { flow_m3_s: 0 }), wall, 0).every((s) => s.water === 'dry')).toBe(true)
    const reached = (share: number) => worstRow(at(0.09), wall, share).filter((s) => s.drops === 'sure').length
    expect(reached(0.5)).toBeLessThanOrEqual(reached(0.25))
    expect(reached(0.25)).toBeLessThanOrEqual(reached(0))
  })

  it('strike a longer cup or end wherever they strike a shorter one', () => {
    for (const circle of [0.03, 0.06, 0.08, 0.09]) {
      const short = worstRow(at(circle, { sites: bare }), wall, 0)
      const long = worstRow(at(circle), wall, 0)
      short.forEach((s, i) => {
        if (s.drops !== null) expect(long[i]!.drops).not.toBeNull()
      })
    }
  })
})

describe('a stream from a hole that stands askew', () => {
  it('has come aside by what a stepwise fall finds', () => {
    const given = { head_m: 0.05, speedShare: 0.97, askew_rad: 0.035, fall_m: 1.2 }
    const v = 0.97 * Math.sqrt(2 * 9.80665 * 0.05)
    let [y, x, down, t] = [0, 0, v, 1e-6]
    for (t = 1e-6; y < 1.2; ) {
      y += down * t
      down += 9.80665 * t
      x += v * Math.sin(0.035) * t
    }
    expect(streamDrift(given) / x).toBeCloseTo(1, 4)
    expect(streamDrift({ ...given, askew_rad: 0 })).toBe(0)
    expect(() => streamDrift({ ...given, head_m: -1 })).toThrow('h = -1')
  })
})
