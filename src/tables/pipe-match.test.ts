import { describe, expect, it } from 'vitest'
import { drillsNear } from './drills.ts'
import { cementFor, cementJoint } from './joining-times.ts'
import { pipeNamed, pipesNear, pipesOfTradeName } from './pipe-match.ts'
import { type PipeId, pipes } from './pipes.ts'

const ids = Object.keys(pipes.rows) as PipeId[]

describe('a pipe by its circumference', () => {
  it('is found from 4 in Schedule 40 wrapped with a tape', () => {
    const { matches } = pipesNear({ outside_m: 0.3591 / Math.PI })
    expect(matches.map(({ id }) => id)).toContain('astm-d1785-4in-sch40')
  })
  it.each([
    [0.114, [0.114, 0.1143]],
    [0.1143, [0.114, 0.1143]],
    [0.1101, [0.11, 0.1102]],
  ])('of %s m leaves a choice that only the printing settles', (outside_m, outsides_m) => {
    expect(pipesNear({ outside_m })).toMatchObject({ ambiguous: true, outsides_m })
  })
  it('is narrowed by a measured wall', () => {
    const { matches } = pipesNear({ outside_m: 0.1071, wall_m: 0.0031 })
    expect(matches.map(({ id }) => id)).toEqual(['astm-d3034-4in-sdr35'])
  })
  it('fits at 0.6 mm and no further', () => {
    expect(pipesNear({ outside_m: 0.125 + 0.0006 }).matches.length).toBeGreaterThan(0)
    expect(pipesNear({ outside_m: 0.125 + 0.00061 }).matches).toEqual([])
  })
  it('that no standard has yields the nearest instead', () => {
    const { matches, nearest } = pipesNear({ outside_m: 0.12 })
    expect(matches).toEqual([])
    expect(pipes.rows[nearest[0]!.id].outside_m).toBe(0.125)
  })
  it('finds every row from its own numbers', () => {
    for (const id of ids) {
      const { outside_m, wall_m } = pipes.rows[id]
      expect(
        pipesNear({ outside_m, wall_m }).matches.map((row) => row.id),
        id,
      ).toContain(id)
    }
  })
  it('cannot be nothing', () => expect(() => pipesNear({ outside_m: 0 })).toThrow(RangeError))
})

describe('a pipe by its name', () => {
  it.each([
    ['ASTM D1785 4 in Sch 40', 'astm-d1785-4in-sch40'],
    ['4" ASTM D-1785 PVC 1120 SCH 40 220 PSI @ 73F NSF-pw', 'astm-d1785-4in-sch40'],
    ['astm d1785-15 4” schedule 80', 'astm-d1785-4in-sch80'],
    ['1 1/2 in sch 40', 'astm-d1785-1.5in-sch40'],
    ['1½ inch Sch. 80', 'astm-d1785-1.5in-sch80'],
    ['1.25" sch40', 'astm-d1785-1.25in-sch40'],
    ['4 in DWV', 'astm-d2665-4in'],
    ['D3034 SDR35 6 in', 'astm-d3034-6in-sdr35'],
    ['EN 1401 110 x 3.2', 'en-1401-110x3.2'],
    ['en1401-1 110×3,2 SN4', 'en-1401-110x3.2'],
    ['160x4,0 SN 4', 'en-1401-160x4.0'],
    ['BS EN 1329-1:2014 110 x 3.2 BD', 'en-1329-110x3.2-bd'],
    ['ISO 1452-2 110x4.2 PN10', 'iso-1452-110x4.2'],
    ['EN 1452 110 PN 16', 'iso-1452-110x6.6'],
    ['AS/NZS 1477 DN100 PN12', 'as-nzs-1477-dn100-pn12'],
    ['AS/NZS 1260 DN 100 SN6', 'as-nzs-1260-dn100-sn6'],
    ['JIS K 6741 VU 100', 'jis-k6741-vu100'],
    ['VP50', 'jis-k6741-vp50'],
    ['IS 4985:2000 110 mm class 5', 'is-4985-110x6.1'],
    ['astm-d1785-4in-sch40', 'astm-d1785-4in-sch40'],
  ])('%s', (text, id) => expect(pipeNamed(text).id).toBe(id))

  it('is found from every row as the table writes it', () => {
    for (const id of ids) {
      const { standard, nominal, series, outside_m, wall_m } = pipes.rows[id]
      const millimetres = `${outside_m * 1000} x ${wall_m * 1000}`
      const metric = nominal.endsWith('mm') ? millimetres : nominal
      expect(pipeNamed(`${standard} ${metric} ${series}`).fits, id).toContain(id)
    }
  })
  it.each(['4 in', '4 inch', '4"', 'DN 100', '100 mm'])('%s is six different outside diameters', (text) => {
    const { id, fits } = pipeNamed(text)
    expect(id).toBeNull()
    const outsides_mm = [...new Set(fits.map((fit) => pipes.rows[fit].outside_m * 1000))].sort((a, b) => a - b)
    expect(outsides_mm).toEqual([107.061, 110, 110.2, 114, 114.3])
    const groups = new Set(fits.map((fit) => `${pipes.rows[fit].standard.slice(0, 2)} ${pipes.rows[fit].outside_m}`))
    expect(groups.size).toBeGreaterThanOrEqual(6)
  })
  it('leaves the choice open where the text does', () => {
    expect(pipeNamed('110x3.2').fits).toEqual(['en-1401-110x3.2', 'en-1329-110x3.2-b', 'en-1329-110x3.2-bd'])
  })
  it('that does not exist yields the nearest', () => {
    expect(pipeNamed('ASTM D1785 7 in Sch 40')).toMatchObject({ id: null, fits: [] })
    expect(pipeNamed('ASTM D1785 7 in Sch 40').nearest[0]).toBe('astm-d1785-6in-sch40')
    expect(pipeNamed('EN 1401 110 x 9').nearest[0]).toBe('en-1401-110x3.2')
  })
  it.each(['', 'hello', '½', 'x', '3/0 in', '((((', '1e999 mm'])('%j crashes nothing and finds nothing', (text) => {
    expect(pipeNamed(text).id).toBeNull()
  })
  it('knows the cousins of a size', () => {
    const cousins = pipesOfTradeName({ inch: '3 in' })
    expect(cousins).toContain('jis-k6741-vu75')
    expect(cousins).toContain('en-1329-90x3.0-b')
  })
})

describe('times of a cemented joint', () => {
  const at = (outside_m: number, temperature_C: number, relativeHumidity = 0.5) =>
    cementJoint({ outside_m, temperature_C, relativeHumidity })
  it('are those of the printed cells', () => {
    expect(at(0.1143, 20)?.cure_s.high).toBe(6 * 3600)
    expect(at(0.0603, 10)?.initialSet_s).toEqual({ low: 600, high: 7200 })
    expect(at(0.1143, 0)?.cure_s).toEqual({ low: 48 * 3600, high: 72 * 3600 })
  })
  it('take the longer row on the border of two', () => expect(at(0.1143, 16)?.row).toBe('large-cool'))
  it('are half as long again in air damper than 60 %', () => {
    expect(at(0.1143, 20, 0.6)?.cure_s.high).toBe(6 * 3600)
    expect(at(0.1143, 20, 0.61)?.cure_s.high).toBe(9 * 3600)
  })
  it('never shrink with size or cold', () => {
    for (const temperature_C of [20, 10, 0])
      for (const [thin, thick] of [
        [0.033, 0.06],
        [0.06, 0.089],
        [0.089, 0.114],
      ] as const)
        expect(at(thick, temperature_C)!.cure_s.high).toBeGreaterThanOrEqual(at(thin, temperature_C)!.cure_s.high)
  })
  it('are not known outside the tables', () => {
    expect(at(0.1143, 39)).toBeNull()
    expect(at(0.1143, -19)).toBeNull()
    expect(at(0.3, 20)).toBeNull()
  })
  it('PP is cemented by nothing, in either order', () => {
    expect(cementFor('PVC-U', 'PP').holds).toBe(false)
    expect(cementFor('PP', 'PVC-U')).toBe(cementFor('PVC-U', 'PP'))
  })
})

describe('drills', () => {
  it('are offered at and under a size', () => {
    expect(drillsNear({ diameter_m: 0.0032, system: 'mm', kind: 'twist drill' })).toEqual({
      nearest: 'twist-3.2mm',
      under: 'twist-3.2mm',
    })
    expect(drillsNear({ diameter_m: 0.0032, system: 'in', kind: 'twist drill' }).under).toBe('twist-1.8in')
    expect(drillsNear({ diameter_m: 0.0005, system: 'mm', kind: 'twist drill' }).under).toBeNull()
  })
})
