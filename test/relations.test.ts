import { beforeAll, describe, expect, it } from 'vitest'
import { equationTable } from '../scripts/equation-docs.mjs'
import { equationRelations } from '../scripts/equation-relations.mjs'
import { english } from '../src/render/words/en/english.ts'

const docs = equationTable()
let relations: Record<string, string[]>
beforeAll(async () => {
  relations = await equationRelations()
})

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

  it('tie at least forty of the judged numbers', () => expect(Object.keys(relations).length).toBeGreaterThanOrEqual(40))
})
