import { describe, expect, it } from 'vitest'
import { equationTable } from '../scripts/equation-docs.mjs'
import { equationTexts } from '../src/render/words/es/equations.ts'
import { resolved } from '../src/shells/web/model/equations.ts'

type Doc = { readonly about: string; readonly symbols: string; readonly valid?: string }
const docs = equationTable() as Readonly<Record<string, Doc>>

/** The name of an equation in the code, or anything marked as code. */
const names = new Set(Object.keys(docs).filter((n) => /[A-Z]/.test(n)))
const codeIn = (text: string): readonly string[] => (text.match(/\w+/g) ?? []).filter((w) => names.has(w))

describe('an equation that points at another', () => {
  const pointing = Object.entries(docs).filter(([, d]) => codeIn(`${d.symbols} ${d.valid ?? ''}`).length > 0)

  it('is shown with the words of that equation, not with the name of its code', () => {
    expect(pointing.length).toBeGreaterThan(5)
    for (const [, d] of pointing)
      for (const line of [d.symbols, d.valid ?? '']) {
        const shown = resolved(line, (name) => docs[name]?.about)
        expect(codeIn(shown)).toEqual([])
        expect(shown).not.toContain('undefined')
      }
    expect(resolved('level plate; as `orificeFlow`', (name) => docs[name]?.about)).toBe(
      'level plate; as “Flow through equal round holes under a head”',
    )
  })

  it('does so in Spanish', () => {
    const about = (name: string) => (equationTexts[name] ?? docs[name])?.about
    for (const { symbols, valid } of Object.values(equationTexts))
      expect(codeIn(resolved(`${symbols} ${valid}`, about))).toEqual([])
  })
})
