/** Which numbers of a plan a computation looks at. What it never looks at cannot move what it gives. */

/** A thing that notes what is read of it, and the paths that were read, keys joined by `/`. */
export interface Watched<T> {
  readonly watched: T
  readonly seen: ReadonlySet<string>
}

export function watched<T extends object>(whole: T): Watched<T> {
  const seen = new Set<string>()
  const known = new WeakMap<object, object>()
  const wrap = <U extends object>(of: U, path: string): U => {
    const before = known.get(of)
    if (before) return before as U
    const made = new Proxy(of, {
      get: (target, key) => {
        const value: unknown = Reflect.get(target, key)
        if (typeof key === 'symbol' || !Object.hasOwn(target, key)) {
          if (typeof key === 'string') seen.add(path + key)
          return value
        }
        seen.add(path + key)
        return typeof value === 'object' && value !== null ? wrap(value, `${path}${key}/`) : value
      },
      has: (target, key) => {
        if (typeof key === 'string') seen.add(path + key)
        return Reflect.has(target, key)
      },
    })
    known.set(of, made)
    return made
  }
  return { watched: wrap(whole, ''), seen }
}
