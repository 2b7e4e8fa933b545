import { labels as englishLabels } from '../../../render/words/en/labels.ts'
import { language as english } from '../../../render/words/en/language.ts'
import { page as englishPage } from '../../../render/words/en/page.ts'
import { labels as spanishLabels } from '../../../render/words/es/labels.ts'
import { language as spanish } from '../../../render/words/es/language.ts'
import { page as spanishPage } from '../../../render/words/es/page.ts'
import type { LanguageTag } from '../../../render/words/language.ts'
import type { FirstWords } from '../words.ts'

const parts = {
  en: { ...english, page: englishPage, labels: englishLabels },
  es: { ...spanish, page: spanishPage, labels: spanishLabels },
} as const

/** What the first screen says in a language, as it lies beside the page. */
export function firstWordsOf(tag: LanguageTag): FirstWords {
  const { words, page, labels } = parts[tag]
  const { decimal, units, choices, findings } = words
  const shorts = Object.fromEntries(Object.entries(findings).map(([id, w]) => [id, w.short]))
  return { decimal, units, choices, page, labels, shorts }
}
