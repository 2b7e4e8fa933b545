import { createSignal } from 'solid-js'
import { isLanguage, type LanguageTag } from '../../../render/words/language.ts'
import { firstViews } from '../view-list.ts'

/** What the page keeps for this person on this machine; no plan depends on it. */
export interface Settings {
  readonly desk: 'day' | 'night'
  readonly lengths: 'mm' | 'in'
  readonly language: LanguageTag
  readonly views: readonly string[]
  /** Plan that was open last. */
  readonly last: string | null
}

const KEY = 'rootfall'

/** The first language of the browser that the page speaks. */
const ofBrowser = (): LanguageTag => navigator.languages.map((l) => l.slice(0, 2)).find(isLanguage) ?? 'en'

function read(): Settings {
  const night = matchMedia('(prefers-color-scheme: dark)').matches
  const fresh: Settings = {
    desk: night ? 'night' : 'day',
    lengths: 'mm',
    language: ofBrowser(),
    views: firstViews,
    last: null,
  }
  try {
    const json = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Settings>
    return {
      desk: json.desk === 'day' || json.desk === 'night' ? json.desk : fresh.desk,
      lengths: json.lengths === 'in' ? 'in' : 'mm',
      language: isLanguage(String(json.language)) ? (json.language as LanguageTag) : fresh.language,
      views: Array.isArray(json.views) && json.views.length > 0 ? json.views.map(String) : fresh.views,
      last: typeof json.last === 'string' ? json.last : null,
    }
  } catch {
    return fresh
  }
}

export const keptLanguage = (): LanguageTag => read().language

/** Settings as a signal; every change is kept. */
export function kept(): readonly [() => Settings, (next: Settings) => void] {
  const [settings, setSettings] = createSignal<Settings>(read())
  return [
    settings,
    (next) => {
      setSettings(next)
      try {
        localStorage.setItem(KEY, JSON.stringify(next))
      } catch {
        // A browser that keeps nothing starts with the day desk again.
      }
    },
  ]
}
