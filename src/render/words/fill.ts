/** Fills the slots of a sentence. A slot without a value stays as it is, so that a test can see it. */
export const fill = (sentence: string, slots: Readonly<Record<string, string>>): string =>
  sentence.replace(/\{(\w+)\}/g, (whole, name: string) => (Object.hasOwn(slots, name) ? slots[name]! : whole))

/** A list in words: a, b or c. */
export function oneOf(items: readonly string[], or: string): string {
  if (items.length < 2) return items[0] ?? ''
  return `${items.slice(0, -1).join(', ')} ${or} ${items.at(-1)}`
}
