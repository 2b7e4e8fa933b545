import type { Evaluated } from './workers/protocol.ts'

/**
 * What the first screen needs of the engine, computed when the page is built: the evaluation of the example, without
 * the facts of later screens, and the short names of the findings.
 */
export interface First {
  readonly evaluated: Evaluated
  readonly shorts: Readonly<Record<string, string>>
}

let shorts: Readonly<Record<string, string>> = {}

/** The name of a finding in a list, at most 27 characters. */
export const short = (id: string): string => shorts[id] ?? id

export async function fetchFirst(): Promise<First> {
  const answer = await fetch(new URL('assets/first.json', document.baseURI))
  const first = (await answer.json()) as First
  shorts = first.shorts
  return first
}
