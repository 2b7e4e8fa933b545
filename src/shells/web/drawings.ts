import { tankFacts } from '../../disciplines/reservoir/index.ts'
import { orNull } from '../../plan/known.ts'
import { type Display, decimals } from '../../render/display.ts'
import { bounds } from '../../render/drawing/bounds.ts'
import { distributorSketch } from '../../render/tower/distributor.ts'
import { type FigureReason, SERIES, type Sketch, scaleFor } from '../../render/tower/sketch.ts'
import { figureOf, towerSketch } from '../../render/tower/tower.ts'
import { stubSection } from '../../render/views/section.ts'
import type { PageWords } from '../../render/words/en/page.ts'
import type { PartId } from './model/parts.ts'
import { say } from './words.ts'
import type { Evaluated } from './workers/protocol.ts'

/** What a view is given beside the evaluation. */
export interface Given {
  readonly display: Display
  readonly room_mm: number
  readonly part: PartId
  /** Views that are asked for: those of the tower are drawn together on one height scale. */
  readonly shown: (id: string) => boolean
}

/** A view of the tower. */
export interface ViewOf {
  readonly id: string
  readonly short: keyof PageWords
}

/** Views that the foot offers; a new view is entered here and in the sheet that draws it. */
export const viewList: readonly ViewOf[] = [
  { id: 'elevation', short: 'view-elevation' },
  { id: 'unrolled', short: 'view-unrolled' },
  { id: 'section', short: 'view-section' },
]

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
      tank: orNull(tankFacts(e.plan)),
      display,
      texts: { lid: say('on-lid'), fillLine: say('on-fill'), lowLine: say('on-low'), round: say('on-round') },
      scale: scaleFor(layout.columnLength_m, room_mm, 2),
      elevation: shown('elevation'),
      unrolled: shown('unrolled'),
    })
  },
}

const distributor: SheetOf = {
  id: 'distributor',
  titles: () => ['distributor'],
  draw: (e, { display, room_mm, part, shown }) =>
    part === 'distributor' && shown('section')
      ? distributorSketch({
          plan: e.plan,
          display,
          head_m: null,
          room_mm: room_mm * 0.42,
          texts: { on: say('on-circle') },
        })
      : null,
}

/** The fields that the figures of the section show, in the order in which they are drawn. */
const SECTION: readonly FigureReason[] = [
  { field: 'column/stub/lowerSide' },
  { field: 'column/stub/pipe' },
  { field: 'column/pipe' },
  { field: 'column/pipe' },
  { field: 'column/stub/angle' },
]

/** Room of a detail: as wide as its column, two thirds as high as the tower. */
const DETAIL_mm = 79

function sectionAt(e: Evaluated, { display }: Given, scale: number): Sketch | null {
  const templates = orNull(e.facts.templates)
  if (templates === null) return null
  const drawn = stubSection({
    plan: e.plan,
    templates,
    cup: orNull(templates.cup),
    ratio: 1000 / scale,
    texts: {
      figure: figureOf(display),
      angle: (angle_rad) => `${decimals((angle_rad * 180) / Math.PI, 0)}°`,
      mark: say('on-mark'),
    },
  })
  const box = bounds(drawn) ?? { left: 0, right: 1, bottom: 0, top: 1 }
  const marks = drawn.filter((p) => p.kind !== 'text')
  return {
    marks: marks.map((p) => ({ ...p, part: p.part === 'cup' ? 'cups' : (p.part ?? 'stubs') })),
    figures: drawn
      .filter((p) => p.kind === 'text')
      .map((text, i) => ({ text, why: SECTION[i] ?? { fact: 'templates/joint' } })),
    places: {},
    box: { left: box.left - 2, right: box.right + 2, bottom: box.bottom - 2, top: box.top + 2 },
    scale,
  }
}

const section: SheetOf = {
  id: 'section',
  titles: () => ['section'],
  draw: (e, given) => {
    if (!given.shown('section')) return null
    for (const scale of SERIES) {
      const sketch = sectionAt(e, given, scale)
      if (sketch === null) return null
      const { left, right, bottom, top } = sketch.box
      if (right - left <= DETAIL_mm && top - bottom <= given.room_mm * 0.68) return sketch
    }
    return null
  },
}

export const sheetsOfTower: readonly SheetOf[] = [tower]
export const sheetsOfDetail: readonly SheetOf[] = [distributor, section]
