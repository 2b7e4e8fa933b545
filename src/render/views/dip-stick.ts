import { type ReservoirFacts, stickMarks } from '../../disciplines/reservoir/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { type Display, show, shownText } from '../display.ts'
import { circle, type Drawing, lettering, line, rectangle } from '../drawing/primitives.ts'
import type { WaterPathWords } from '../words/en/water-path.ts'
import { fill } from '../words/fill.ts'

const WIDTH_mm = 20
const HEAD_mm = 14
const FIGURE_mm = 3
/** Marks nearer than this would run into one another. */
const CLOSE_mm = 3.4

/** Least distance of what is told of two lines. */
const APART_mm = 4.5

/** A dip stick at full size, its foot at the origin: marks at round volumes, the two lines across. To be cut out. */
export function dipStick(given: {
  readonly facts: ReservoirFacts
  readonly words: WaterPathWords
  readonly display: Display
}): Drawing {
  const { facts, words, display } = given
  const { tank } = facts
  const top = tank.depth_m * 1000
  const marks = stickMarks(facts)
  const gap = marks.length < 2 ? top : Math.min(...marks.slice(1).map((m, i) => (m.level_m - marks[i]!.level_m) * 1000))
  const every = Math.max(1, [1, 2, 5, 10].find((n) => n * gap >= CLOSE_mm) ?? 10)
  const set = [
    ...(isKnown(tank.fill) ? [{ text: words.stickFill, line: tank.fill.known }] : []),
    ...(isKnown(tank.low) ? [{ text: words.stickLow, line: tank.low.known }] : []),
  ]
  const unit = show(quantity(Math.max(facts.markStep_m3, 0.001), 'm3'), display).unit
  return [
    rectangle({ left: 0, right: WIDTH_mm, bottom: 0, top: top + HEAD_mm }, 'cut'),
    circle([WIDTH_mm / 2, top + HEAD_mm - 5], 2, 'visible'),
    line([0, top], [WIDTH_mm, top], 'thin'),
    ...marks.flatMap((m, i): Drawing => {
      const y = m.level_m * 1000
      const long = (i + 1) % (5 * every) === 0
      // A figure under one of the two lines would be struck through; the line says the volume itself.
      const struck = set.some((l) => Math.abs(l.line.level_m * 1000 - y) < FIGURE_mm / 2)
      const named = (i + 1) % every === 0 && !struck
      const figure = Number(show(quantity(m.volume_m3, 'm3'), display).figure.replace(',', '.'))
      return [
        line([0, y], [long ? 8 : 5, y], long ? 'visible' : 'thin'),
        ...(named
          ? [lettering([9, y - 1], Number.isFinite(figure) ? String(figure) : '', { size_mm: FIGURE_mm })]
          : []),
      ]
    }),
    ...set.flatMap(({ text, line: l }, i): Drawing => {
      const y = l.level_m * 1000
      // The lower of two lines that nearly meet is told below the other.
      const above = i === 0 ? null : set[0]!.line.level_m * 1000
      const told = above !== null && Math.abs(above - y) < APART_mm ? above - APART_mm : y
      return [
        line([0, y], [WIDTH_mm + 10, y], 'cut'),
        lettering(
          [WIDTH_mm + 11, told - 1.1],
          `${text}  ${shownText(quantity(l.level_m, 'm'), display)}  ${shownText(quantity(l.volume_m3, 'm3'), display)}`,
          { size_mm: FIGURE_mm },
        ),
      ]
    }),
    lettering([9, top + 1.2], unit, { size_mm: FIGURE_mm }),
    lettering([WIDTH_mm + 2, 0.6], words.stickFoot, { size_mm: 2.6, tone: 'quiet' }),
    lettering(
      [WIDTH_mm + 2, top + 1],
      fill(words.stickUnit, { step: shownText(quantity(facts.markStep_m3, 'm3'), display) }),
      { size_mm: 2.6, tone: 'quiet' },
    ),
  ]
}
