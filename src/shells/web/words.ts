import type { Field } from '../../plan/field.ts'
import type { PageWords } from '../../render/words/en/page.ts'
import { fill } from '../../render/words/fill.ts'
import type { LanguageTag } from '../../render/words/language.ts'
import type { Words } from '../../render/words/words.ts'

/** What the first screen says, in one language; it lies beside the page as `words-en.json`. */
export interface FirstWords extends Pick<Words, 'decimal' | 'units' | 'choices'> {
  readonly page: PageWords
  readonly labels: Readonly<Record<string, string>>
  /** Names of findings in a list, at most 27 characters. */
  readonly shorts: Readonly<Record<string, string>>
}

let said: FirstWords | null = null

export const speak = (words: FirstWords): void => {
  said = words
}

export async function fetchWords(tag: LanguageTag): Promise<void> {
  const base = typeof document === 'undefined' ? new URL('..', self.location.href) : document.baseURI
  const answer = await fetch(new URL(`assets/words-${tag}.json`, base))
  speak((await answer.json()) as FirstWords)
}

/** Decimal sign, units and the like for the display. */
export function firstWords(): FirstWords {
  if (said === null) throw new Error('words: not fetched yet')
  return said
}

/** A phrase of the page, its slots filled. */
export const say = (key: keyof PageWords, slots: Readonly<Record<string, string | number>> = {}): string =>
  fill(firstWords().page[key], Object.fromEntries(Object.entries(slots).map(([k, v]) => [k, text(v)])))

const text = (slot: string | number): string =>
  typeof slot === 'string' ? slot : String(slot).replace('.', firstWords().decimal)

/** Whether the page has a phrase of this name. */
export const sayable = (key: string): key is keyof PageWords => Object.hasOwn(firstWords().page, key)

/** The name of a finding in a list. */
export const short = (id: string): string => firstWords().shorts[id] ?? id

/** What a choice of the plan is called. */
export const choiceName = (choice: string): string => firstWords().choices[choice] ?? choice

/** The short name of a field beside its value; entries of maps are named by their key. */
export function label(path: string, field: Field | null = null): string {
  const { labels } = firstWords()
  const keys = path.split('/')
  const plain = keys.filter((k) => !/^\d+$/.test(k)).join('/')
  const last = keys.findLast((k) => !/^\d+$/.test(k)) ?? path
  const own = labels[plain]
  if (own !== undefined) return own
  const above = keys.at(-2)
  const mapped =
    field !== null && above !== undefined && ['ions', 'asElement', 'targets', 'limits', 'label'].includes(above)
  return mapped ? last : (labels[last] ?? last)
}
