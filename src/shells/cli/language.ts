import { language as english } from '../../render/words/en/language.ts'
import { language as spanish } from '../../render/words/es/language.ts'
import type { Language, LanguageTag } from '../../render/words/language.ts'

const languages: Readonly<Record<LanguageTag, Language>> = { en: english, es: spanish }

let spoken: Language = english

/** The language of this run of the command. */
export const speak = (tag: LanguageTag): void => {
  spoken = languages[tag]
}

export const language = (): Language => spoken
