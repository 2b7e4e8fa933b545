import type { Words } from './words.ts'

/** A place of the plan in words: its own name, else the nearest named section with the key. */
export function placeName(path: string, words: Words): string {
  const plain = path.split('/').filter((k) => !/^\d+$/.test(k))
  const number = path.split('/').find((k) => /^\d+$/.test(k))
  const name = words.places[plain.join('/')]
  if (name !== undefined) return number === undefined ? name : `${name} (${Number(number) + 1})`
  const section = words.places[plain.slice(0, -1).join('/')]
  return section === undefined ? path : `${section} (${plain.at(-1)})`
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
