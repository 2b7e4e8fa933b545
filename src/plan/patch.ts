import type { PlanDocument } from './plan.ts'

type Json = { [key: string]: unknown }

/** The value at a path such as `column/sites/pitch`, or undefined. */
export function valueAt(document: PlanDocument, path: string): unknown {
  let here: unknown = document
  for (const key of path.split('/')) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined
    here = (here as Json)[key]
  }
  return here
}

/**
 * The document with one value set, sections on the way made where they are missing. The given document is not
 * changed. Throws RangeError where the path runs through a value that is no section: that is our bug.
 */
export function withValue(document: PlanDocument, path: string, value: unknown): PlanDocument {
  const [key, ...rest] = path.split('/') as [string, ...string[]]
  if (key === '__proto__') throw new RangeError(`withValue: ${path} is no path of a plan`)
  if (rest.length === 0) return { ...document, [key]: value }
  // The first entry of a list that is not there yet begins it.
  const inner = Object.hasOwn(document, key) ? document[key] : rest[0] === '0' ? [] : {}
  if (typeof inner !== 'object' || inner === null) throw new RangeError(`withValue: ${path} runs through a value`)
  if (Array.isArray(inner)) {
    const at = Number(rest[0])
    if (!Number.isInteger(at) || at < 0 || at > inner.length)
      throw new RangeError(`withValue: ${path} is not in the list`)
    const copy = [...inner]
    copy[at] = rest.length === 1 ? value : withValue((inner[at] ?? {}) as PlanDocument, rest.slice(1).join('/'), value)
    return { ...document, [key]: copy }
  }
  return { ...document, [key]: withValue(inner as PlanDocument, rest.join('/'), value) }
}

/** The document without a value; nothing happens where there is none. */
export function withoutValue(document: PlanDocument, path: string): PlanDocument {
  const [key, ...rest] = path.split('/') as [string, ...string[]]
  if (!Object.hasOwn(document, key)) return document
  const inner = document[key]
  if (rest.length === 0) return Object.fromEntries(Object.entries(document).filter(([k]) => k !== key))
  if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return document
  return { ...document, [key]: withoutValue(inner as PlanDocument, rest.join('/')) }
}
