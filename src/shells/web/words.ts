import type { Field } from '../../plan/field.ts'
import { labels } from '../../render/words/en/labels.ts'
import { type PageWords, page } from '../../render/words/en/page.ts'
import { fill } from '../../render/words/fill.ts'

/** A phrase of the page, its slots filled. */
export const say = (key: keyof PageWords, slots: Readonly<Record<string, string | number>> = {}): string =>
  fill(page[key], Object.fromEntries(Object.entries(slots).map(([k, v]) => [k, String(v)])))

/** Whether the page has a phrase of this name. */
export const sayable = (key: string): key is keyof PageWords => Object.hasOwn(page, key)

/** The short name of a field beside its value; entries of maps are named by their key. */
export function label(path: string, field: Field | null = null): string {
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
