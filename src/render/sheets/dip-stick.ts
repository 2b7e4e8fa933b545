import { isKnown } from '../../plan/known.ts'
import { bounds } from '../drawing/bounds.ts'
import { clipped } from '../drawing/clip.ts'
import { type Drawing, lettering, line } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { dipStick } from '../views/dip-stick.ts'
import { spread } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines } from './hole.ts'

/** As much of a stick as stands above the words on one sheet. */
const PIECE_mm = 150
const BESIDE_mm = 6

/** A stick too long for one sheet, in two pieces side by side; the upper one is glued on where they join. */
function pieces(c: Context, stick: Drawing): Drawing {
  const box = bounds(stick)
  if (box === null || box.top <= PIECE_mm || box.top > 2 * PIECE_mm) return stick
  const cut = (bottom: number, top: number) => clipped(stick, { left: box.left - 1, right: box.right + 1, bottom, top })
  const edge = (n: number): Drawing => [
    line([0, PIECE_mm], [20, PIECE_mm], 'hidden'),
    lettering([22, PIECE_mm - 1], c.say('joins-part', { n: String(n) }), { size_mm: 2.6 }),
  ]
  const lower: Drawing = [...cut(box.bottom - 1, PIECE_mm), ...edge(2)]
  const upper: Drawing = [...cut(PIECE_mm, box.top + 1), ...edge(1)]
  return [...lower, ...moved(upper, [box.right - box.left + BESIDE_mm, -PIECE_mm])]
}

/** The dip stick of the tank at full size, with the two lines. */
export function dipStickSheet(c: Context): Drafted {
  const { reservoir } = c.facts
  if (!isKnown(reservoir)) return { needs: reservoir.needs }
  const block = pieces(c, dipStick({ facts: reservoir.known, words: c.words.waterPath, display: c.display }))
  const lines = [...barLines(c), c.say('act-stick-glue'), c.say('act-stick-stand'), c.say('act-stick-lines')]
  const title = c.say('dip-stick-title')
  return {
    pages: spread(c, block, { lines }).map((drawing, i) => ({
      id: 'dip-stick' as const,
      title: i === 0 ? title : c.say('continued', { title }),
      subtitle: c.say('dip-stick-sub', { depth: c.length(reservoir.known.tank.depth_m) }),
      scale: c.say('full-size'),
      drawing,
    })),
  }
}
