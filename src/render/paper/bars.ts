import { type Drawing, lettering, line, type Point, type Primitive } from '../drawing/primitives.ts'
import { moved, turned } from '../drawing/transform.ts'

export const BAR_mm = 100
export const INCH_BAR_mm = 4 * 25.4
const FIGURE_mm = 2.8

/** A bar of 100 mm on the x axis from the origin: heavy line, a tick each millimetre, figures below. */
function millimetreBar(unit: string): Drawing {
  const ticks = Array.from({ length: BAR_mm + 1 }, (_, i): Primitive => {
    const long = i % 10 === 0
    return line([i, 0], [i, long ? 3.6 : i % 5 === 0 ? 2.4 : 1.4], long ? 'visible' : 'thin')
  })
  const figures = [0, 50, 100].map((n) =>
    lettering([n, -4], n === BAR_mm ? `${n} ${unit}` : String(n), {
      size_mm: FIGURE_mm,
      anchor: n === 0 ? 'start' : n === BAR_mm ? 'end' : 'middle',
    }),
  )
  // The half width of the end ticks lets the heavy line close the corner.
  return [line([-0.125, 0], [BAR_mm + 0.125, 0], 'cut'), ...ticks, ...figures]
}

/** A bar of 4 in with sixteenths, figure at its end. */
function inchBar(unit: string): Drawing {
  const ticks = Array.from({ length: 65 }, (_, i): Primitive => {
    const height = i % 16 === 0 ? 3 : i % 8 === 0 ? 2.3 : i % 4 === 0 ? 1.7 : i % 2 === 0 ? 1.2 : 0.8
    const x = (i * 25.4) / 16
    return line([x, 0], [x, height], i % 16 === 0 ? 'visible' : 'thin')
  })
  return [
    line([-0.125, 0], [INCH_BAR_mm + 0.125, 0], 'visible'),
    ...ticks,
    lettering([INCH_BAR_mm + 2, 0], `4 ${unit}`, { size_mm: FIGURE_mm }),
  ]
}

/** The two bars that lie: 100 mm above, 4 in below; `at` is the lower left corner, 15 mm are taken upwards. */
export const lyingBars = ({ at, mm, inch }: { at: Point; mm: string; inch: string }): Drawing => [
  ...moved(millimetreBar(mm), [at[0], at[1] + 11.4]),
  ...moved(inchBar(inch), [at[0], at[1] + 1]),
]

/** The bar that stands: its foot at `at`, ticks to the left, figures to be read from the right. */
export const standingBar = ({ at, mm }: { at: Point; mm: string }): Drawing =>
  moved(turned(millimetreBar(mm), Math.PI / 2), at)
