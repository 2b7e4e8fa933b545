import type { Display } from '../../render/display.ts'
import type { Drawing, Rect } from '../../render/drawing/primitives.ts'
import type { PageWords } from '../../render/words/en/page.ts'
import type { Evaluated } from './workers/protocol.ts'

/** A view as drawn: primitives in millimetres of the screen at the stated scale, and the box that holds them. */
export interface Sketch {
  readonly drawing: Drawing
  readonly box: Rect
  /** Height of the floor line in the drawing, on which views that share a scale are aligned; null where they do not. */
  readonly datum_mm: number | null
  readonly scale: { readonly key: 'scale' | 'scale-up'; readonly n: number }
}

/** A view of the tower; the list below is the only place where one is entered. */
export interface ViewOf {
  readonly id: string
  readonly title: keyof PageWords
  readonly short: keyof PageWords
  /** Views of one group stand side by side on one height scale. */
  readonly group: 'tower' | 'detail'
  readonly draw: (e: Evaluated, given: { readonly display: Display; readonly room_mm: number }) => Sketch | null
}

export const viewList: readonly ViewOf[] = []
