import { orNull } from '../../plan/known.ts'
import type { Display } from '../../render/display.ts'
import { distributorSketch } from '../../render/tower/distributor.ts'
import { jointSketch } from '../../render/tower/joint.ts'
import { type Sketch, scaleFor } from '../../render/tower/sketch.ts'
import { towerSketch } from '../../render/tower/tower.ts'
import type { PageWords } from '../../render/words/en/page.ts'
import type { PartId } from './model/parts.ts'
import { say } from './words.ts'
import type { Evaluated } from './workers/protocol.ts'

/** What a view is given beside the evaluation. */
export interface Given {
  readonly display: Display
  /** Height of a drawing of the tower, and width of a detail, in millimetres of the screen. */
  readonly room_mm: number
  readonly detail_mm: number
  readonly section_mm: number
  readonly part: PartId
  /** Views that are asked for: those of the tower are drawn together on one height scale. */
  readonly shown: (id: string) => boolean
}

/** A sheet of the desk: one or more views drawn together. */
export interface SheetOf {
  readonly id: string
  readonly titles: (given: Given) => readonly (keyof PageWords)[]
  readonly draw: (e: Evaluated, given: Given) => Sketch | null
}

const tower: SheetOf = {
  id: 'tower',
  titles: ({ shown }) => (['elevation', 'unrolled'] as const).filter(shown),
  draw: (e, { display, room_mm, shown }) => {
    const layout = orNull(e.facts.layout)
    if (layout === null || !(shown('elevation') || shown('unrolled'))) return null
    return towerSketch({
      plan: e.plan,
      layout,
      templates: orNull(e.facts.templates),
      tank: orNull(e.facts.tank),
      display,
      texts: { lid: say('on-lid'), fillLine: say('on-fill'), lowLine: say('on-low'), round: say('on-round') },
      scale: scaleFor(layout.columnLength_m, room_mm, 2),
      elevation: shown('elevation'),
      unrolled: shown('unrolled'),
    })
  },
}

/** Water over the holes at the flow that is wanted; null where it is not known. */
function waterOver(e: Evaluated): number | null {
  const { distributor } = e.facts.hydraulics
  return 'known' in distributor ? (distributor.known?.neededHead_m ?? null) : null
}

const distributor: SheetOf = {
  id: 'distributor',
  titles: () => ['distributor'],
  draw: (e, { display, detail_mm, part, shown }) =>
    part === 'distributor' && shown('section')
      ? distributorSketch({
          plan: e.plan,
          display,
          head_m: waterOver(e),
          room_mm: detail_mm * 0.95,
          texts: { on: say('on-circle') },
        })
      : null,
}

/** Share of the height that the section takes beside other details. */
const SECTION_high = 0.62

const section: SheetOf = {
  id: 'section',
  titles: () => ['section'],
  draw: (e, { display, room_mm, section_mm, part, shown }) => {
    const templates = orNull(e.facts.templates)
    if (templates === null || !shown('section')) return null
    // A detail or charts of the part in hand want their share of the height.
    const room = { wide_mm: section_mm, high_mm: room_mm * (part === 'stubs' ? 0.9 : SECTION_high) }
    return jointSketch({ plan: e.plan, templates, display, room, texts: { mark: say('on-mark') } })
  },
}

export const sheetsOfTower: readonly SheetOf[] = [tower]
export const sheetsOfDetail: readonly SheetOf[] = [distributor, section]
