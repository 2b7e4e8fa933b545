import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { formedPocket, stubPocket } from '../src/disciplines/water/equations-trapped.ts'
import { halfOpenSun, wallSun } from '../src/disciplines/water/equations-wall-sun.ts'
import { evaluate, evaluateDocument } from '../src/evaluate.ts'
import { parsePlan } from '../src/plan/document.ts'
import type { Known } from '../src/plan/known.ts'
import { withoutValue, withValue } from '../src/plan/patch.ts'
import type { PlanDocument } from '../src/plan/plan.ts'
import { inches, metric, shownText } from '../src/render/display.ts'
import { english } from '../src/render/words/en/english.ts'
import { findingText } from '../src/render/words/sentences.ts'
import { safetyLengths } from '../src/tables/exposure.ts'

const example = (name: string): PlanDocument =>
  JSON.parse(readFileSync(join(import.meta.dirname, '..', `examples/${name}.plan.json`), 'utf8')) as PlanDocument

type Change = readonly [path: string, value: unknown]
const changed = (document: PlanDocument, ...changes: readonly Change[]): PlanDocument =>
  changes.reduce((d, [path, value]) => withValue(d, path, value), document)

function known<F>(facts: Known<F> | null): F {
  if (facts === null || !('known' in facts)) throw new Error(`not known: ${JSON.stringify(facts)}`)
  return facts.known
}

const evaluated = (document: PlanDocument) => {
  const { plan, issues } = parsePlan(document)
  expect(issues).toEqual([])
  return evaluate(plan)
}
const day = (document: PlanDocument) => known(evaluated(document).facts.day)
const finding = (document: PlanDocument, id: string) => evaluated(document).findings.find((f) => f.id === id)
const sum = (series: readonly number[]) => series.reduce((a, b) => a + b)
const balcony = example('balcony')

describe('the open side of a place', () => {
  const rays = { ground_W_m2: 600, heightSine: 0.7, diffuseShare: 0.2, albedo: 0.2, leastSine: 0.1 }
  const sky = (...changes: readonly Change[]) => evaluated(changed(balcony, ...changes)).facts.water.sky

  it('lets all of the beam in or none, and half of the sky and of the floor', () => {
    const whole = wallSun(rays)
    const even = wallSun({ ...rays, diffuseShare: 1 })
    const [shut, open] = [halfOpenSun({ ...rays, openShare: 0 }), halfOpenSun({ ...rays, openShare: 1 })]
    expect(shut.ground_W_m2).toBeCloseTo(60, 9)
    expect(open.ground_W_m2).toBeCloseTo(540, 9)
    // Even sky and floor: 0.2/2 and 0.2/2 of 600 on an open wall, half of that on this one.
    expect(shut.wall_W_m2).toBeCloseTo(60, 9)
    expect(open.wall_W_m2).toBeCloseTo(whole - 60, 9)
    expect(even).toBeGreaterThan(0)
  })

  it('facing west the sun comes after noon, facing east before it, and never brings more than the share stated', () => {
    const half = (faces: string) => {
      const { ground_W_m2 } = sky(['place/faces', faces])
      return [sum(ground_W_m2.slice(0, 12)), sum(ground_W_m2.slice(13))] as const
    }
    const [west, east] = [half('270 deg'), half('90 deg')]
    expect(west[1]).toBeGreaterThan(3 * west[0])
    expect(east[0]).toBeGreaterThan(3 * east[1])
    // As much by either side of noon, since the day is the same.
    expect(west[1] / east[0]).toBeCloseTo(1, 1)
    const full = sum(
      evaluated(changed(withoutValue(balcony, 'place/faces'), ['place/sun', '100 %'])).facts.water.sky.ground_W_m2,
    )
    for (const share of [20, 45, 80, 100])
      expect(sum(sky(['place/sun', `${share} %`]).ground_W_m2) / full).toBeCloseTo(share / 100, 9)
  })

  it('stands in for a share that nobody stated: about half of the day', () => {
    const bare = withoutValue(balcony, 'place/sun')
    const { reaches, assumed } = evaluated(bare).facts.water.sky
    expect(reaches).toBeGreaterThan(0.35)
    expect(reaches).toBeLessThan(0.75)
    expect(assumed).toEqual([])
    expect(evaluated(withoutValue(bare, 'place/faces')).facts.water.sky.assumed).toEqual(['place/sun'])
  })

  it('afternoon sun warms the tank more than as much sun in the morning', () => {
    const warmest = (faces: string) => day(changed(balcony, ['place/faces', faces])).hotLow.course.highest_C
    expect(warmest('270 deg')).toBeGreaterThan(warmest('90 deg'))
  })
})

describe('words and numbers fit the place', () => {
  const under = (setting: string) => withoutValue(changed(balcony, ['place/setting', setting]), 'place/gust')

  it('knows four kinds, and glass keeps the wind out and the sun in', () => {
    const kind = (d: PlanDocument) => evaluated(d).facts.water.sky
    expect(kind(balcony).kind).toBe('balcony')
    expect(kind(example('school')).kind).toBe('outdoors')
    expect(kind(example('hall'))).toMatchObject({ kind: 'indoors', outdoors: false, sunny: false })
    expect(kind(under('greenhouse'))).toMatchObject({ kind: 'greenhouse', outdoors: false, sunny: true })
    expect(day(under('greenhouse')).hotLow.course.heat.sky_J).toBeCloseTo(0, 9)
    expect(day(under('greenhouse')).hotLow.course.heat.sun_J).toBeGreaterThan(0)
  })

  it('offers a room no shade, foil or paint against a sun that is not there, but a pump that rests', () => {
    const ids = (d: PlanDocument) => day(d).cooling.map((c) => c.id)
    expect(ids(example('hall')).filter((id) => ['foil', 'white', 'shade'].includes(id))).toEqual([])
    const rest = day(example('hall')).cooling.find((c) => c.id === 'rest')!
    expect(rest.cooler_K).toBeGreaterThan(0)
    expect(ids(balcony)).toContain('shade')
  })

  it('tells a difference in °F and a force in pounds where inches are meant', () => {
    expect(shownText({ unit: 'K', value: 5 }, inches)).toBe('9.0 °F')
    expect(shownText({ unit: 'K', value: 5 }, metric)).toBe('5.0 K')
    expect(shownText({ unit: 'N', value: 100 }, inches)).toBe('22 lbf')
  })

  it('judges the pump’s hum and tells its warmth in a room only', () => {
    const hall = example('hall')
    expect(finding(hall, 'water/room-noise')).toMatchObject({ verdict: 'unknown', needs: ['pump/noise'] })
    const loud = (level: string, setting = 'community kitchen') =>
      finding(changed(hall, ['pump/noise', level], ['place/setting', setting]), 'water/room-noise')?.verdict
    expect(loud('35 dB')).toBe('pass')
    expect(loud('36 dB')).toBe('watch')
    expect(loud('35 dB', 'care home')).toBe('watch')
    expect(finding(balcony, 'water/room-noise')).toBeUndefined()
    // Two pumps of 40 W day and night, six lamps of 96 W for 16 of 24 hours.
    const { warmth } = finding(hall, 'water/room-air')!.slots as unknown as { warmth: { value: number } }
    expect(warmth.value).toBeCloseTo(2 * 40 + (6 * 96 * 16) / 24, 9)
  })

  it('asks for the widest gap, and takes a mesh over it', () => {
    const mesh = (...changes: readonly Change[]) => finding(changed(balcony, ...changes), 'water/mesh')
    const bare = withoutValue(balcony, 'reservoir/gap')
    expect(finding(bare, 'water/mesh')).toMatchObject({ verdict: 'unknown', needs: ['reservoir/gap'] })
    // The notch of its cord, as drawn.
    expect(mesh()).toMatchObject({ verdict: 'watch', measured: { value: 0.006 } })
    expect(mesh(['reservoir/gap', '6 mm'])?.verdict).toBe('watch')
    expect(mesh(['reservoir/gap', '1.6 mm'])?.verdict).toBe('pass')
    expect(mesh(['reservoir/gap', '6 mm'], ['reservoir/mesh', '1 mm'])?.verdict).toBe('pass')
  })

  it('names one mesh in finding, remedy, parts list and step', () => {
    const sixteenth = safetyLengths.rows['insect-mesh'].limit_m
    const { findings, facts } = evaluateDocument(balcony)
    const { remedies, want, source } = findings.find((f) => f.id === 'water/mesh')!
    expect(want.max).toBe(sixteenth)
    expect(source).toBe('Mosquito.mesh')
    expect(remedies.map((r) => r.to)).toEqual(['1.6 mm'])
    const [parts, build] = [known(facts.parts), known(facts.build)]
    expect(parts.parts.find((p) => p.id === 'mesh')?.sizes).toEqual({ mesh: { value: sixteenth, unit: 'm' } })
    const inInches = withValue(withValue(example('hall'), 'reservoir/gap', '1/4 in'), 'tools/tape', '1/16 in')
    const told = evaluateDocument(inInches).findings.find((f) => f.id === 'water/mesh')
    expect(told?.remedies.map((r) => r.to)).toEqual(['1/16 in'])
    expect(build.slots['mesh']).toEqual({ drilled: { value: sixteenth, unit: 'm' } })
  })
})

describe('a cold day', () => {
  it('is reckoned with the tank full and low, and judged over both', () => {
    const d = day(balcony)
    const ends = [d.coldFull, d.coldLow].map((c) => c.course.lowest_C).sort((a, b) => a - b)
    expect(ends[0]).toBeLessThan(ends[1]!)
    const measured = finding(balcony, 'water/cold')!.measured as { low: number; high: number }
    expect([measured.low, measured.high]).toEqual(ends)
  })
})

describe('ice', () => {
  const iced = (mass: string, ...more: readonly Change[]) => changed(balcony, ['reservoir/ice/mass', mass], ...more)

  it('of 2 kg cools the hot day, at noon and in two shares', () => {
    const base = day(balcony).hotLow.course.highest_C
    const once = day(iced('2 kg')).hotLow.course.highest_C
    const twice = day(iced('2 kg', ['reservoir/ice/at', ['11 h', '14 h']])).hotLow.course.highest_C
    expect(once).toBeLessThan(base)
    // The low tank has warmed again by the time it is hottest, unless some goes in later.
    expect(twice).toBeLessThan(once)
    expect(day(iced('2 kg')).coldLow).toEqual(day(balcony).coldLow)
  })

  it('that is as much as roots like chills the tank to 18 °C at the hours at which it is put in', () => {
    for (const at of [['11 h'], ['15 h'], ['11 h', '15 h']]) {
      const hours: Change = ['reservoir/ice/at', at]
      const { wanted_kg } = day(iced('2 kg', hours)).ice!
      const { temperature_C, step_s } = day(iced(`${wanted_kg} kg`, hours)).hotLow.course
      const after = at.map((h) => temperature_C[Math.floor((Number.parseInt(h, 10) * 3600) / step_s) + 1]!)
      expect(Math.abs(Math.min(...after) - 18)).toBeLessThan(0.2)
    }
  })

  it('is as much as roots like at one hour and too much at another: the hours decide', () => {
    const wanted = (at: string) => day(iced('2 kg', ['reservoir/ice/at', [at]])).ice!.wanted_kg
    const [early, late] = [wanted('6 h'), wanted('17 h')]
    expect(late).toBeGreaterThan(early)
    const mass = `${(early + late) / 2} kg`
    expect(finding(iced(mass, ['reservoir/ice/at', ['17 h']]), 'water/ice')?.verdict).toBe('pass')
    expect(finding(iced(mass, ['reservoir/ice/at', ['6 h']]), 'water/ice')?.verdict).not.toBe('pass')
    expect(day(iced('2 kg')).ice!.without_C).toBeCloseTo(day(balcony).hotLow.course.highest_C, 6)
  })

  it('of 50 kg in a tank of 36 L is more ice than water, and the sentence says place, value, limit and deed', () => {
    const document = iced('50 kg', ['reservoir/lowVolume', '35.9 L'])
    const f = finding(document, 'water/ice')!
    expect(f).toMatchObject({ verdict: 'fail', at: 'reservoir/ice/mass', measured: { value: 50 } })
    const { sentence } = findingText(f, english, metric)
    expect(sentence).toMatch(
      /50\.0 kg of ice a day, put in at 11:00, go into 35\.9 L of water .* That is more ice than the water/,
    )
    expect(sentence).toMatch(/roots like no more than \d\.\d kg/)
    expect(day(document).hotLow.course.lowest_C).toBeGreaterThanOrEqual(0)
  })

  it('is no question without any', () => expect(finding(balcony, 'water/ice')).toBeUndefined())
})

describe('water that freezes where it stands', () => {
  it('in a slanted stub is what a count of small cubes finds', () => {
    const given = { radius_m: 0.0232, angle_rad: Math.PI / 4, lowerSide_m: 0.0882 }
    const { radius_m: r, angle_rad: θ, lowerSide_m: l } = given
    const z = (l - r / Math.tan(θ)) * Math.cos(θ) - r * Math.sin(θ)
    const [n, reach] = [160, 0.13]
    const cell = reach / n
    let cells = 0
    // Along the stub, across it in its plane, and sideways; inside the bore, outside of the wall, under the lip.
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        for (let k = 0; k < n; k++) {
          const [s, u, v] = [(i + 0.5) * cell - 0.03, (j + 0.5) * cell - reach / 2, (k + 0.5) * cell - reach / 2]
          const [x, y] = [s * Math.sin(θ) - u * Math.cos(θ), s * Math.cos(θ) + u * Math.sin(θ)]
          if (u * u + v * v < r * r && x > 0 && y < z) cells++
        }
    expect(stubPocket(given) / (cells * cell ** 3)).toBeCloseTo(1, 1)
  })

  it('is more in a longer stub, none in a level one', () => {
    const at = (lowerSide_m: number, angle_rad = Math.PI / 4) => stubPocket({ radius_m: 0.02, angle_rad, lowerSide_m })
    expect(at(0.12)).toBeGreaterThan(at(0.09))
    expect(at(0.09, Math.PI / 2)).toBe(0)
    expect(() => at(0)).toThrow('l = 0')
    expect(() => formedPocket({ former_m: 0 })).toThrow('D = 0')
  })

  it('is told with the frost, by site and in all', () => {
    const f = finding(changed(balcony, ['place/airLow', '-3 °C']), 'water/frost')!
    expect(f.verdict).toBe('fail')
    const trapped = known(evaluated(balcony).facts.water.trapped)
    expect(trapped.sites_m3).toBeCloseTo(24 * trapped.site_m3, 12)
    expect(findingText(f, english, metric).sentence).toMatch(/a site holds \d+ mL up to its lip, all of them \d/)
    const valve = known(evaluated(changed(balcony, ['riser/checkValve', true])).facts.water.trapped)
    expect(valve.riser_m3).toBeCloseTo((Math.PI / 4) * 0.013 ** 2 * 2.1, 12)
  })
})
