import type { Language, LanguageTag } from '../../render/words/language.ts'
import { isLanguage } from '../../render/words/language.ts'
import type { Words } from '../../render/words/words.ts'

const sources: Readonly<Record<LanguageTag, () => Promise<{ readonly language: Language }>>> = {
  en: () => import('../../render/words/en/language.ts'),
  es: () => import('../../render/words/es/language.ts'),
}

/** Language of the page, which its root names; a worker is named after it. */
export function tongue(): LanguageTag {
  const tag = typeof document === 'undefined' ? self.name : document.documentElement.lang
  return isLanguage(tag) ? tag : 'en'
}

let whole: Language | null = null

/** Everything that is said in a language; what the first screen says comes beforehand, by `words.ts`. */
export async function fetchLanguage(tag: LanguageTag): Promise<void> {
  whole = (await sources[tag]()).language
}

export function language(): Language {
  if (whole === null) throw new Error('language: not fetched yet')
  return whole
}

export const words = (): Words => language().words
