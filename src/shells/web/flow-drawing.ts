import { orNull } from '../../plan/known.ts'
import { flowSketch } from '../../render/tower/flow.ts'
import { scaleFor } from '../../render/tower/sketch.ts'
import type { SheetOf } from './drawings.ts'
import { language } from './language.ts'

/** The water's way round with its numbers, on the height scale of the tower. */
const flow: SheetOf = {
  id: 'flow',
  titles: () => ['flow'],
  draw: (e, { display, room_mm, shown }) => {
    const layout = orNull(e.facts.layout)
    if (layout === null || !shown('flow')) return null
    const { hydraulics, reservoir } = e.facts
    const scale = scaleFor(layout.columnLength_m, room_mm, 2)
    return flowSketch({ plan: e.plan, layout, hydraulics, reservoir, words: language().flow, display, scale })
  },
}

export const sheetsOfFlow: readonly SheetOf[] = [flow]
