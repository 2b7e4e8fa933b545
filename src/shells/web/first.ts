import type { Evaluated } from './workers/protocol.ts'

/**
 * What the first screen needs of the engine, computed when the page is built: the evaluation of the example, without
 * the facts of later screens.
 */
export interface First {
  readonly evaluated: Evaluated
}

export async function fetchFirst(): Promise<First> {
  const answer = await fetch(new URL('assets/first.json', document.baseURI))
  return (await answer.json()) as First
}
