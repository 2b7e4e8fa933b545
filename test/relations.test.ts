import { beforeAll, describe, expect, it } from 'vitest'
import { equationTable } from '../scripts/equation-docs.mjs'
import { equationRelations } from '../scripts/equation-relations.mjs'
import { english } from '../src/render/words/en/english.ts'
import { equationTexts } from '../src/render/words/es/equations.ts'
import { ofFacts } from '../src/shells/web/model/equations.ts'

const docs = equationTable()
let relations: Record<string, string[]>
beforeAll(async () => {
  relations = await equationRelations()
}, 120_000)

describe('equations behind the findings', () => {
  it.each([
    ['templates/ring-web', 'ringLigament'],
    ['structure/tips-full', 'rightingRatio'],
    ['structure/sway', 'topMovement'],
    ['water/oxygen', 'loopOxygen'],
    ['hydraulics/power-cut', 'timeToDry'],
    ['reservoir/days', 'daysBetweenTopUps'],
    ['nutrients/charge-balance', 'chargeBalance'],
  ])('%s comes out of %s', (id, name) => expect(relations[id]).toContain(name))

  it('are ours, of findings that exist, and stand in the written table', () => {
    expect(Object.keys(relations).filter((id) => english.findings[id] === undefined)).toEqual([])
    expect([...new Set(Object.values(relations).flat())].filter((name) => docs[name] === undefined)).toEqual([])
  })

  it('are told in Spanish, every one that a why shows, with the same letters, units and figures', () => {
    const shown = [...new Set([...Object.values(relations), ...Object.values(ofFacts)].flat())]
    expect(shown.filter((name) => equationTexts[name] === undefined)).toEqual([])
    const figures = (text: string) => (text.match(/\d+(?:[.,]\d+)*/g) ?? []).map((n) => n.replace(',', '.')).sort()
    const units = (text: string) =>
      [...text.matchAll(/\[([^\]]*)\]/g)].map((m) => m[1]).filter((u) => !/\p{L}{4}/u.test(u!))
    for (const [name, own] of Object.entries(equationTexts)) {
      const doc = docs[name]!
      expect(doc, name).toBeDefined()
      for (const key of ['about', 'symbols', 'valid'] as const) {
        const [en, es] = [doc[key] ?? '', own[key]]
        expect(es.length, `${name} ${key}`).toBeGreaterThan(en.length / 2)
        if (/\p{L}{4}/u.test(en)) expect(es, `${name} ${key}`).not.toBe(en)
        expect(figures(es), `${name} ${key}`).toEqual(figures(en))
        expect(units(es), `${name} ${key}`).toEqual(units(en))
      }
    }
  })

  it('tie at least forty of the judged numbers', () => expect(Object.keys(relations).length).toBeGreaterThanOrEqual(40))
})
