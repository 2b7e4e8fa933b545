import type { Drawing, Page } from '../drawing/primitives.ts'
import type { Column } from '../paper/table.ts'

/** A line with a box to tick; its id is the same from print to print, so that ticks are kept. */
export interface Tick {
  readonly id: string
  readonly text: string
}

/** A drawing about its own origin, with the words for those who do not see it. */
export interface Picture {
  readonly drawing: Drawing
  readonly alt: string
}

/** One step of the work: what to wait for and beware of, acts to tick, the test that must hold. */
export interface StepBlock {
  readonly kind: 'step'
  readonly id: string
  readonly title: string
  readonly aside: string
  readonly waits: readonly string[]
  readonly cautions: readonly string[]
  readonly acts: readonly Tick[]
  readonly test: Tick | null
  readonly picture: Picture | null
}

/** An example to be worked by hand; how it is done, and what the plan says to it, stand among the answers. */
export interface ExampleBlock {
  readonly kind: 'example'
  readonly id: string
  readonly question: string
  readonly given: string
  /** The rule in words, and a line on which the result is written. */
  readonly rule: string
  readonly answer: string
  /** The rule with numbers, ending at the result: told in the answers. */
  readonly work: string
  /** What the engine computed, and whether it is the same. */
  readonly plan: string
  readonly agrees: 'same' | 'rounding' | 'different'
}

export interface ContentsLine {
  readonly text: string
  readonly page: string
  /** A part of the line above. */
  readonly under: boolean
}

export type Block =
  | { readonly kind: 'text'; readonly text: string; readonly tone: 'plain' | 'caution' | 'quiet' }
  | { readonly kind: 'heading'; readonly text: string }
  | {
      readonly kind: 'ticks'
      readonly lines: readonly Tick[] /** Short lines, so many beside each other. */
      readonly across?: number
    }
  | {
      readonly kind: 'table'
      readonly id: string
      readonly columns: readonly Column[]
      readonly rows: readonly (readonly string[])[]
      /** A box to tick before each row. */
      readonly ticked: boolean
    }
  /** Rows to be filled in; a cell with text stands, an empty one is a blank. */
  | {
      readonly kind: 'form'
      readonly id: string
      readonly columns: readonly string[]
      readonly rows: readonly (readonly string[])[]
    }
  | { readonly kind: 'picture'; readonly picture: Picture }
  /** A sheet of paper at full size, to be printed so. */
  | { readonly kind: 'sheet'; readonly id: string; readonly page: Page; readonly title: string }
  /** Where each chapter begins; on a screen the links at the head tell it. */
  | { readonly kind: 'contents'; readonly title: string; readonly lines: readonly ContentsLine[] }
  | StepBlock
  | ExampleBlock

export interface Chapter {
  readonly id: string
  readonly title: string
  readonly blocks: readonly Block[]
  /** To be printed apart and cut out: counted by itself. */
  readonly appendix?: boolean
}

/** The booklet as it is, before any printer has seen it. */
export interface Booklet {
  readonly title: string
  readonly subtitle: string
  readonly language: string
  /** Under this name ticks are kept: the plan and its change. */
  readonly key: string
  readonly chapters: readonly Chapter[]
  readonly blanks: number
}
