import { describe, expect, it } from 'vitest'
import { planFields } from '../../plan/plan.ts'
import { labels as englishLabels } from './en/labels.ts'
import { language as english } from './en/language.ts'
import { page as englishPage } from './en/page.ts'
import { labels as spanishLabels } from './es/labels.ts'
import { language as spanish } from './es/language.ts'
import { page as spanishPage } from './es/page.ts'

type Said = ReadonlyMap<string, string>

/** Every sentence by its path. */
function sentences(value: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]]
  return Object.entries(value as object).flatMap(([key, inner]) => sentences(inner, `${path}/${key}`))
}

const said = (value: unknown): Said => new Map(sentences(value))

/** Of English a map of choices and units is empty: the plan's own names are English. */
const own = ({ words, ...rest }: typeof english) => {
  const { choices: _, units: __, abouts: ___, ...others } = words
  return { ...rest, words: others }
}

const en = said({ ...own(english), page: englishPage, labels: englishLabels })
const es = said({ ...own(spanish), page: spanishPage, labels: spanishLabels })

const slots = (text: string): readonly string[] => [...text.matchAll(/\{\w+\}/g)].map((m) => m[0]).sort()

/** Words that both languages write alike, and sentences that are symbols, names or slots only. */
const alike = new Set([...['plan', 'material', 'Material', 'rootfall'], ...['Isopropanol', 'HCO₃', 'ion', 'EC mS/cm']])

/** Without a word of three letters or more outside its slots a sentence has nothing to translate. */
const wordless = (text: string): boolean => !/\p{L}{3}/u.test(text.replace(/\{\w+\}/g, ''))

describe('Spanish', () => {
  it('says all that English says, and nothing else', () => {
    expect([...es.keys()].sort()).toEqual([...en.keys()].sort())
  })

  it('fills the same slots', () => {
    const other = [...en].filter(([key, text]) => slots(text).join() !== slots(es.get(key) ?? '').join())
    expect(other.map(([key]) => key)).toEqual([])
  })

  it('leaves no sentence in English', () => {
    const same = [...en].filter(([key, text]) => es.get(key) === text && !alike.has(text) && !wordless(text))
    expect(same).toEqual([])
  })

  it('leaves no sentence empty that English says', () => {
    expect([...en].filter(([key, text]) => text !== '' && es.get(key) === '').map(([key]) => key)).toEqual([])
  })

  it('keeps the names of findings to 27 characters', () => {
    const long = [...es].filter(([key, text]) => /\/findings\/.*\/short$/.test(key) && text.length > 27)
    expect(long).toEqual([])
  })

  it('tells what every field of the plan holds', () => {
    const abouts = (field: unknown): readonly string[] => {
      if (typeof field !== 'object' || field === null) return []
      const { kind, about, ...rest } = field as { kind?: unknown; about?: unknown }
      const own = typeof kind === 'string' && kind !== 'section' && typeof about === 'string' ? [about] : []
      const inner = kind === 'named' ? (field as { section: { fields: object } }).section.fields : rest
      return [...own, ...Object.values(inner).flatMap(abouts)]
    }
    const all = [...new Set(abouts(planFields))]
    expect(all.length).toBeGreaterThan(200)
    expect(all.filter((text) => spanish.words.abouts[text] === undefined)).toEqual([])
  })

  it('names every choice that the plan offers', () => {
    const choices = (field: unknown): readonly string[] => {
      if (typeof field !== 'object' || field === null) return []
      const { kind, of } = field as { kind?: unknown; of?: unknown }
      if (kind === 'choice' && Array.isArray(of)) return of as string[]
      return Object.values(field).flatMap(choices)
    }
    const words = [...new Set(choices(planFields))].filter((c) => /[a-z]{3}/.test(c) && !/^ppm \d|^Letter$/.test(c))
    expect(words.length).toBeGreaterThan(60)
    expect(words.filter((c) => spanish.words.choices[c] === undefined)).toEqual([])
  })
})
