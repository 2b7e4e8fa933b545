import { createSignal } from 'solid-js'

/** What the page keeps for this person on this machine; no plan depends on it. */
export interface Settings {
  readonly desk: 'day' | 'night'
  readonly lengths: 'mm' | 'in'
  readonly views: readonly string[]
  /** Plan that was open last. */
  readonly last: string | null
}

const KEY = 'rootfall'

function read(): Settings {
  const night = matchMedia('(prefers-color-scheme: dark)').matches
  const fresh: Settings = {
    desk: night ? 'night' : 'day',
    lengths: 'mm',
    views: ['elevation', 'unrolled', 'section', 'feed', 'water'],
    last: null,
  }
  try {
    const json = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Settings>
    return {
      desk: json.desk === 'day' || json.desk === 'night' ? json.desk : fresh.desk,
      lengths: json.lengths === 'in' ? 'in' : 'mm',
      views: Array.isArray(json.views) && json.views.length > 0 ? json.views.map(String) : fresh.views,
      last: typeof json.last === 'string' ? json.last : null,
    }
  } catch {
    return fresh
  }
}

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
