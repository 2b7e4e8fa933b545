import type { CutsFacts, MaterialCuts } from '../../disciplines/cuts/index.ts'
import { choiceName } from '../words/place-names.ts'
import type { Words } from '../words/words.ts'
import { type Cell, csv } from './csv.ts'
import { figure, mm } from './figures.ts'

const DEGREE_rad = Math.PI / 180

function rowsOf(m: MaterialCuts, words: Words): Cell[][] {
  const sticks = m.plan?.sticks ?? []
  return sticks.flatMap((stick, i) =>
    stick.pieces.map((piece): Cell[] => {
      const own = m.pieces.find((p) => p.id === piece.id)
      return [
        choiceName(m.of, words),
        m.label ?? '',
        i + 1,
        mm(stick.length_m),
        words.tables[stick.from] ?? stick.from,
        choiceName(piece.id, words),
        own === undefined ? null : mm(own.length_m),
        mm(piece.from_m),
        mm(piece.to_m),
        words.tables[piece.turned ? 'yes' : 'no'] ?? piece.turned,
        own === undefined ? null : (words.csv.ends[own.cut.kind] ?? own.cut.kind),
        own?.cut.kind === 'mitre' ? figure(90 - own.cut.angle_rad / DEGREE_rad, 3) : null,
        mm(stick.leftover_m),
      ]
    }),
  )
}

/** The cutting plan: one line a piece, in the order in which the sticks are cut. */
export const cutsCsv = (facts: CutsFacts, words: Words): string =>
  csv(
    words.csv.cuts,
    facts.materials.flatMap((m) => rowsOf(m, words)),
    words.decimal,
  )
