/**
 * Facts that can be computed, or the fields of the plan that are missing for them. Nothing missing is ever replaced
 * by a silent default.
 */
export type Known<F> = { readonly known: F } | { readonly needs: readonly string[] }

type Given = Readonly<Record<string, readonly [path: string, value: unknown]>>

type Values<G extends Given> = { readonly [K in keyof G]: NonNullable<G[K][1]> }

/**
 * Collects what a computation needs: all values, or the paths of those that are missing.
 *
 * `const need = needed({ pipe: ['column/pipe', plan.column?.pipe] })`
 */
export function needed<const G extends Given>(given: G): Known<Values<G>> {
  const missing = Object.values(given).filter(([, value]) => value === undefined || value === null)
  if (missing.length > 0) return { needs: missing.map(([path]) => path) }
  const entries = Object.entries(given).map(([key, [, value]]) => [key, value] as const)
  return { known: Object.fromEntries(entries) as Values<G> }
}

/** Whether facts are known; narrows the type. */
export const isKnown = <F>(facts: Known<F>): facts is { readonly known: F } => 'known' in facts

/** The facts, or null where something is missing. */
export const orNull = <F>(facts: Known<F>): F | null => ('known' in facts ? facts.known : null)
