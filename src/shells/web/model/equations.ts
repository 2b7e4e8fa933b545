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

/** The equations' own words, and the equations that gave the number of each finding, by its id. */
interface Equations {
  readonly docs: Readonly<Record<string, EquationDoc>>
  readonly relations: Readonly<Record<string, readonly string[]>>
}

/** Numbers on the drawings that no finding judges. */
const ofFacts: Readonly<Record<string, readonly string[]>> = { 'hydraulics/head': ['orificeHead'] }

let asked: Promise<Equations> | null = null

const fetched = (): Promise<Equations> => {
  asked ??= fetch(new URL('assets/equations.json', document.baseURI)).then(
    (answer) => answer.json() as Promise<Equations>,
  )
  return asked
}

/** The equations behind a finding or a fact; fetched when the first why is opened. */
export const equationsOf = (id: () => string) =>
  createResource(id, async (wanted): Promise<readonly EquationDoc[]> => {
    const { docs, relations } = await fetched()
    return (relations[wanted] ?? ofFacts[wanted] ?? []).flatMap((name) => docs[name] ?? [])
  })[0]
