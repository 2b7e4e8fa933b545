import type { BookletSentences } from './en/booklet.ts'
import type { PupilSentences } from './en/booklet-pupils.ts'
import type { FlowWords } from './en/flow.ts'
import type { FactWords } from './en/page-facts.ts'
import type { SheetSentences } from './en/sheets.ts'
import type { SolidViewWords } from './en/solid-view.ts'
import type { SolidSentences } from './en/solids.ts'
import type { TendWords } from './en/tend.ts'
import type { Words } from './words.ts'

/** Everything that is said in one language, but for the page's first screen (`page.ts` and `labels.ts` beside it). */
export interface Language {
  readonly words: Words
  readonly sheets: SheetSentences
  readonly solids: SolidSentences
  readonly booklet: BookletSentences
  readonly pupils: PupilSentences
  readonly flow: FlowWords
  readonly solidView: SolidViewWords
  readonly facts: FactWords
  readonly tend: TendWords
}

/** Tags of the languages, each with its own name. */
export const languageNames = { en: 'English', es: 'Español' } as const

export type LanguageTag = keyof typeof languageNames

export const isLanguage = (tag: string): tag is LanguageTag => Object.hasOwn(languageNames, tag)
