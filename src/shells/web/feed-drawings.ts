import { orNull } from '../../plan/known.ts'
import { bounds } from '../../render/drawing/bounds.ts'
import type { Sketch } from '../../render/tower/sketch.ts'
import { chargeBalance } from '../../render/views/charge-balance.ts'
import { ionBands } from '../../render/views/ions.ts'
import { phLadder } from '../../render/views/ph-ladder.ts'
import { choiceName } from '../../render/words/sentences.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import type { Given, SheetOf } from './drawings.ts'
import { words } from './language.ts'
import type { Evaluated } from './workers/protocol.ts'

type Batch = NonNullable<ReturnType<typeof batchOf>>

const batchOf = (e: Evaluated) => orNull(e.facts.nutrients.batch)

const CHART_mm = 58
const ROW_mm = 6

/** A chart has no scale, and no place that a sentence points at. */
function chart({ marks, figures }: Pick<Sketch, 'marks' | 'figures'>, width_mm: number): Sketch {
  const box = bounds([...marks, ...figures.map((f) => f.text)]) ?? { left: 0, right: 1, bottom: 0, top: 1 }
  return {
    ...{ marks, figures, places: {}, scale: 0 },
    box: {
      left: Math.min(0, box.left) - 0.5,
      right: Math.max(width_mm, box.right) + 0.5,
      bottom: box.bottom - 0.5,
      top: box.top + 1,
    },
  }
}

/** Charts of the feed stand with the parts of the feed. */
const beside = (part: Given['part']): boolean => part === 'water' || part === 'shelf' || part === 'batch'

const sheetOf = (
  id: 'feed-ions' | 'feed-charge' | 'feed-ladder',
  draw: (batch: Batch, e: Evaluated, given: Given, width_mm: number) => Pick<Sketch, 'marks' | 'figures'>,
): SheetOf => ({
  id,
  titles: () => [id],
  draw: (e, given) => {
    const batch = batchOf(e)
    if (batch === null || !beside(given.part) || !given.shown('feed')) return null
    const width_mm = given.detail_mm * 0.95
    return chart(draw(batch, e, given, width_mm), width_mm)
  },
})

/** Each element against its target, charges that must balance, and the ladder of pH. */
export const sheetsOfFeed: readonly SheetOf[] = [
  sheetOf('feed-ions', (batch, _, { display }, width_mm) =>
    ionBands({ batch, words: words().feedViews, display, width_mm, row_mm: ROW_mm }),
  ),
  sheetOf('feed-charge', (batch, _, { display }, width_mm) =>
    chargeBalance({ batch, words: words().feedViews, display, width_mm, height_mm: CHART_mm }),
  ),
  sheetOf('feed-ladder', (batch, { plan }, { display }, width_mm) => {
    const pH = plan.feed?.pH
    const wanted = pH === undefined ? null : { pH, half: feedPractice.rows.phBand.high }
    return phLadder({
      batch,
      wanted,
      nameOf: (id) => choiceName(id, words()),
      words: words().feedViews,
      display,
      width_mm,
      height_mm: CHART_mm,
    })
  }),
]
