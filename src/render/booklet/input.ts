import { type Context, context, type SheetInput } from '../sheets/context.ts'
import type { BookletKey, BookletSentences } from '../words/en/booklet.ts'
import type { PupilSentences } from '../words/en/booklet-pupils.ts'
import { fill } from '../words/fill.ts'
import type { Block, Tick } from './model.ts'

/** What a booklet is made from: what sheets are made from, and its own sentences. */
export interface BookletInput extends SheetInput {
  readonly booklet: BookletSentences
  readonly pupils: PupilSentences
}

export interface Given extends BookletInput {
  readonly sheet: Context
  readonly tell: (key: BookletKey, slots?: Readonly<Record<string, string>>) => string
}

export const given = (input: BookletInput): Given => ({
  ...input,
  sheet: context(input),
  tell: (key, slots = {}) => fill(input.booklet[key], slots),
})

export const text = (said: string, tone: 'plain' | 'caution' | 'quiet' = 'plain'): Block => ({
  kind: 'text',
  text: said,
  tone,
})
export const heading = (said: string): Block => ({ kind: 'heading', text: said })

/** Lines to tick, numbered after what they belong to. */
export const ticks = (of: string, lines: readonly string[]): readonly Tick[] =>
  lines.map((said, i) => ({ id: `${of}-${i + 1}`, text: said }))
