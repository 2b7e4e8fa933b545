import { createResource } from 'solid-js'

/** What the comment over an equation says. */
export interface EquationDoc {
  readonly about: string
  readonly equation: string
  readonly symbols: string
  readonly valid?: string
  readonly source?: string
  readonly why?: string
}

/** The equations' own words, fetched when the first why is opened. */
export const equationDocs = (wanted: () => boolean) =>
  createResource(
    () => (wanted() ? true : null),
    async (): Promise<Readonly<Record<string, EquationDoc>>> => {
      const answer = await fetch(new URL('assets/equations.json', document.baseURI))
      return answer.ok ? ((await answer.json()) as Readonly<Record<string, EquationDoc>>) : {}
    },
  )[0]
