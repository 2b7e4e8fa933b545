import { isKnown, type Known } from '../../plan/known.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, type Point } from '../drawing/primitives.ts'
import { table } from '../paper/table.ts'
import { type Block, subheading } from '../paper/words.ts'

/** Fields that a fact still waits for. */
export const needsOf = (fact: Known<unknown>): readonly string[] => (isKnown(fact) ? [] : fact.needs)

/** What stands over a drawing: its name, and its scale or state in italics. */
export function caption([x, y]: Point, text: string, beside = ''): Drawing {
  const wide = lettersWidth({ text, face: 'serif', size_mm: 3.5 })
  return [
    lettering([x, y], text, { face: 'serif', size_mm: 3.5 }),
    ...(beside === ''
      ? []
      : [lettering([x + wide + 2, y], beside, { face: 'italic', size_mm: 3.2, tone: 'quiet' as const })]),
  ]
}

/** A heading and under it names with their figures; rows without a figure are left out. */
export function numbers(given: {
  readonly at: Point
  readonly width_mm: number
  readonly heading: string
  readonly rows: readonly (readonly [name: string, figure: string | null])[]
}): Block {
  const rows = given.rows.flatMap(([name, figure]) => (figure === null ? [] : [[name, figure]]))
  if (rows.length === 0) return { drawing: [], height_mm: 0 }
  const head = subheading({ at: given.at, text: given.heading, width_mm: given.width_mm })
  const list = table({
    at: [given.at[0], given.at[1] - head.height_mm],
    columns: [
      { heading: '', align: 'words' },
      { heading: '', align: 'figures' },
    ],
    rows,
    width_mm: given.width_mm,
    size_mm: 3.3,
  })
  return { drawing: [...head.drawing, ...list.drawing], height_mm: head.height_mm + list.height_mm }
}
