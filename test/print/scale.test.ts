import { describe, expect, it } from 'vitest'
import { pdf } from '../../src/render/drawing/pdf.ts'
import { circle, contour, type Page } from '../../src/render/drawing/primitives.ts'
import { corrected } from '../../src/render/paper/correction.ts'
import { areas, type PaperName, papers } from '../../src/render/paper/size.ts'
import { demoSheet, fonts } from './demo-sheet.ts'
import { type Raster, raster, strokes } from './raster.ts'

const facts = { fonts, title: 'Hole', author: 'a grower', subject: 'templates', language: 'en' }
const printed = async (page: Page): Promise<Raster> => raster(await pdf({ pages: [page], ...facts }))

/** Half a pixel at each end is 0.05; the promise is 0.1. */
const PROMISE_mm = 0.1
const within = (a: number, b: number) => expect(Math.abs(a - b), `${a} against ${b}`).toBeLessThanOrEqual(PROMISE_mm)

/** Where the bars lie on the paper, measured from the upper left as a raster is. */
function whereBars(paper: PaperName) {
  const { foot, body, page } = areas(paper)
  const h = papers[paper].height_mm
  // Through the ticks of 10 mm, above those of 5 mm (2.4 high); of the inch bar above those of 1/2 in (2.3 high).
  return {
    mm: h - (foot.bottom + 4 + 11.4 + 3),
    inch: h - (foot.bottom + 4 + 1 + 2.65),
    up: page.right - 3,
    body,
    page,
  }
}

function measured(r: Raster, paper: PaperName, shift: (x: number, y: number) => readonly [number, number]) {
  const { mm, inch, up, page } = whereBars(paper)
  const right = page.left + 108
  const row = (y: number) => strokes(r, 'row', shift(0, y)[1]).filter((x) => x < shift(right, 0)[0])
  return { mm: row(mm), inch: row(inch), up: strokes(r, 'column', shift(up, 0)[0]) }
}

describe.each(['A4', 'Letter'] as const)('bars on %s', (paper) => {
  it('measure 100 mm both ways and 4 in, tick by tick', async () => {
    const r = await printed(demoSheet(paper))
    const bars = measured(r, paper, (x, y) => [x, y])
    expect(bars.mm).toHaveLength(11)
    bars.mm.forEach((x, i) => {
      within(x - bars.mm[0]!, 10 * i)
    })
    expect(bars.inch).toHaveLength(5)
    bars.inch.forEach((x, i) => {
      within(x - bars.inch[0]!, 25.4 * i)
    })
    // The title block and the heading's rule are met by the same column of pixels; the bar's ticks lie between.
    const ticks = bars.up.filter((y) => y > papers[paper].height_mm - 145 && y < papers[paper].height_mm - 40)
    expect(ticks).toHaveLength(11)
    ticks.forEach((y, i) => {
      within(y - ticks[0]!, 10 * i)
    })
  })

  it('come out by the factors typed in for the printer', async () => {
    const { width_mm: w, height_mm: h } = papers[paper]
    const { page, issues } = corrected({ page: demoSheet(paper), correction: { x: 1.02, y: 0.99 } })
    expect(issues).toEqual([])
    const r = await printed(page!)
    const bars = measured(r, paper, (x, y) => [w / 2 + (x - w / 2) * 1.02, h / 2 + (y - h / 2) * 0.99])
    within(bars.mm.at(-1)! - bars.mm[0]!, 102)
    within(bars.inch.at(-1)! - bars.inch[0]!, 4 * 25.4 * 1.02)
    const ticks = bars.up.filter((y) => y > h - 145 && y < h - 40)
    within(ticks.at(-1)! - ticks[0]!, 99)
  })
})

describe('shapes on paper', () => {
  it('a circle of 80 mm is 80 mm across in every direction, and a square stands where it was put', async () => {
    const drawing = [
      circle([100, 100], 40, 'visible'),
      contour(
        [
          [20, 20],
          [30, 20],
          [30, 30],
          [20, 30],
        ],
        'cut',
      ),
    ]
    const r = await printed({ width_mm: 210, height_mm: 297, drawing })
    const row = strokes(r, 'row', 197)
    const column = strokes(r, 'column', 100)
    within(row[1]! - row[0]!, 80)
    within(column[1]! - column[0]!, 80)
    // At 30 mm beside the centre a circle of radius 40 is 2 √(40² − 30²) across.
    const chord = strokes(r, 'row', 197 - 30)
    within(chord[1]! - chord[0]!, 2 * Math.sqrt(700))
    const square = strokes(r, 'row', 297 - 25)
    within(square[0]!, 20)
    within(square[1]!, 30)
    const upright = strokes(r, 'column', 25)
    within(upright[0]!, 267)
    within(upright[1]!, 277)
  })

  it('the hole of the sheet is 70.7 high and 51.9 across', async () => {
    const r = await printed(demoSheet('A4'))
    const { body, upper } = areas('A4')
    const centre = [body.left + 57.65, 297 - (upper.top - 57)] as const
    // A column of pixels 0.5 mm beside the centre line, the starter hole left out.
    const up = strokes(r, 'column', centre[0] + 0.6).filter(
      (y) => Math.abs(y - centre[1]) > 30 && Math.abs(y - centre[1]) < 37,
    )
    within(up.at(-1)! - up[0]!, 70.7)
    // Widest where the stub's side leaves the wall, 6.01 below the mark: R − √(R² − r²) with R 55, r 25.
    const across = strokes(r, 'row', centre[1] + 6.01).filter(
      (x) => Math.abs(x - centre[0]) > 25 && Math.abs(x - centre[0]) < 26.6,
    )
    expect(across).toHaveLength(2)
    within(across[1]! - across[0]!, 51.94)
  })
})
