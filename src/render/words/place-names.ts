import type { Words } from './words.ts'

/** A place of the plan in words: its own name, else that of the nearest named section with the field's short name. */
export function placeName(path: string, words: Words): string {
  const plain = path.split('/').filter((k) => !/^\d+$/.test(k))
  const number = path.split('/').find((k) => /^\d+$/.test(k))
  const name = words.places[plain.join('/')]
  if (name !== undefined) return number === undefined ? name : `${name} (${Number(number) + 1})`
  const key = plain.at(-1) ?? ''
  const own = words.labels[plain.join('/')] ?? words.labels[key] ?? choiceName(key, words)
  const above = plain.map((_, i) => words.places[plain.slice(0, i).join('/')]).findLast((n) => n !== undefined)
  if (above === undefined) return own === key ? path : own
  return `${above} (${number === undefined ? own : `${Number(number) + 1}, ${own}`})`
}

/** What a choice of the plan or a substance is called, alone, numbered or in a list; any other text is left as it is. */
export const choiceName = (text: string, words: Words): string =>
  text
    .split(', ')
    .map((t) => {
      const [, choice, number] = /^(.*?)( \d+)?$/.exec(t) ?? []
      return (
        words.choices[t] ??
        words.choices[t.toLowerCase()] ??
        (words.choices[choice ?? ''] ? `${words.choices[choice!]}${number}` : t)
      )
    })
    .join(', ')
