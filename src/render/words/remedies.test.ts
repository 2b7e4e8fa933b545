import { describe, expect, it } from 'vitest'
import type { Change, Finding, Remedy } from '../../findings/finding.ts'
import { judge } from '../../findings/judge.ts'
import { quantity, type Unit } from '../../kernel/units.ts'
import { metric, shownText } from '../display.ts'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'
import { remedyText } from './remedies.ts'
import type { Words } from './words.ts'

const finding = (id: Finding['id'], value: number, unit: Unit) =>
  judge(id, quantity(value, unit), { at: 'column', must: { min: 1 }, source: 'common-practice' })

const remedy = (changes: readonly [Change, ...Change[]], more: Partial<Remedy>): Remedy => {
  const [first, ...rest] = changes
  const own = { leaves: 'pass', gives: null, within: {}, alsoCures: [], reveals: [] } as const
  return { ...own, ...first, to: first.to ?? '', with: rest, ...more }
}

const said = (f: Finding, r: Remedy, words: Words): string =>
  remedyText(f, r, words, (q) => shownText(q, { ...metric, decimal: words.decimal }))

describe('a remedy in words', () => {
  const tips = finding('structure/tips-full', 0.64, '1')
  const tie = { set: 'column/base/anchored', from: null, to: true }

  it('is an act, and names what comes of it with its limit', () => {
    const r = remedy([tie], { gives: quantity(3.03, '1'), within: { min: 1 } })
    expect(said(tips, r, english)).toBe(
      'Tie the column: then it withstands 3.03 times the strongest gust’s push (1.00 at least).',
    )
    expect(said(tips, r, spanish)).toBe(
      'Sujete la columna: entonces resiste 3,03 veces el empuje de la racha más fuerte (1,00 como mínimo).',
    )
  })

  it('tells another pump as one act, and what goes with the old one', () => {
    const pump = [
      { set: 'pump/maxHead', from: '2.2 m', to: '3.5 m' },
      { set: 'pump/maxFlow', from: '1800 L/h', to: '650 L/h' },
      { set: 'pump/tests', from: 2, to: null },
    ] as const
    const share = finding('hydraulics/static-share', 0.81, 'share')
    const r = remedy(pump, { gives: quantity(0.59, 'share'), within: { max: 0.6 } })
    expect(said(share, r, english)).toBe(
      'Take a pump of at least 3.5 m of head (650 L/h is enough) and remove the old pump’s bucket tests (2): then the lift takes 59 % of the pump’s largest head (60 % at most).',
    )
    expect(said(share, r, spanish)).toContain('al menos 3,5 m de altura')
  })

  it('removes a line of a list by its number', () => {
    const r = remedy([tie, { set: 'pump/tests/1', from: 6, to: null }], {})
    expect(said(tips, r, english)).toBe(
      'Tie the column and remove the bucket test of line 2: then the question no longer arises.',
    )
  })

  it.each([
    [{ set: 'column/topMargin', from: null, to: '50 mm' }, 'Add the margin at the top: 50 mm'],
    [{ set: 'column/sites/perRing', from: 6, to: 4 }, 'Change the sites on a ring from 6 to 4'],
  ] as const)('says %j', (change, act) => {
    expect(said(tips, remedy([change], {}), english)).toBe(`${act}: then the question no longer arises.`)
  })
})
