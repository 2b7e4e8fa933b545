import { createResource } from 'solid-js'
import type { LanguageTag } from '../../../render/words/language.ts'
import { tongue } from '../language.ts'

/** What the comment over an equation says. */
export interface EquationDoc {
  readonly about: string
  readonly equation: string
  readonly symbols: string
  readonly valid?: string
  readonly source?: string
  readonly why?: string
}

/** An equation in the words of the page; `language` is the one its words are in. */
export interface ToldEquation extends EquationDoc {
  readonly language: LanguageTag
}

type Texts = Readonly<Record<string, Pick<EquationDoc, 'about' | 'symbols' | 'valid'>>>

/** English stands over the code itself; another language is fetched with the first why. */
const texts: Readonly<Record<LanguageTag, () => Promise<Texts>>> = {
  en: () => Promise.resolve({}),
  es: () => import('../../../render/words/es/equations.ts').then((m) => m.equationTexts),
}

/** The equations' own words, and the equations that gave the number of each finding, by its id. */
interface Equations {
  readonly docs: Readonly<Record<string, EquationDoc>>
  readonly relations: Readonly<Record<string, readonly string[]>>
}

/** Numbers on the drawings that no finding judges. */
export const ofFacts: Readonly<Record<string, readonly string[]>> = { 'hydraulics/head': ['orificeHead'] }

let asked: Promise<Equations> | null = null

const fetched = (): Promise<Equations> => {
  asked ??= fetch(new URL('assets/equations.json', document.baseURI)).then(
    (answer) => answer.json() as Promise<Equations>,
  )
  return asked
}

const NAMED = /`?\b([a-z]+[A-Z]\w*)\b`?/g

/** A line that points at another equation, with what that equation is in place of the name of its code. */
export const resolved = (line: string, about: (name: string) => string | undefined): string =>
  line.replace(NAMED, (whole, name: string) => {
    const words = about(name)
    return words === undefined ? whole : `“${words.split('\n')[0]!.replace(/\.$/, '')}”`
  })

/** The equations behind a finding or a fact; fetched when the first why is opened. */
export const equationsOf = (id: () => string) =>
  createResource(id, async (wanted): Promise<readonly ToldEquation[]> => {
    const [{ docs, relations }, own] = await Promise.all([fetched(), texts[tongue()]()])
    return (relations[wanted] ?? ofFacts[wanted] ?? []).flatMap((name): readonly ToldEquation[] => {
      const doc = docs[name]
      if (doc === undefined) return []
      const words = { ...doc, ...own[name] }
      const about = (other: string): string | undefined => (own[name] && own[other] ? own[other] : docs[other])?.about
      return [
        {
          ...words,
          symbols: resolved(words.symbols, about),
          ...(words.valid === undefined ? {} : { valid: resolved(words.valid, about) }),
          language: own[name] === undefined ? 'en' : tongue(),
        },
      ]
    })
  })[0]
