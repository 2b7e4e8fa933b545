import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json' with { type: 'json' }
import { isKnown } from '../../plan/known.ts'
import { withValue } from '../../plan/patch.ts'
import { metric } from '../../render/display.ts'
import { sheetsOfDetail, sheetsOfTower } from './drawings.ts'
import type { First } from './first.ts'
import { type AskedViews, ghosts, pictures } from './picture.ts'
import { speak } from './words.ts'
import { evaluated } from './workers/evaluated.ts'
import { firstAnswer } from './workers/first-answer.ts'
import { firstWordsOf } from './workers/first-words.ts'

speak(firstWordsOf('en'))

const sheets = [...sheetsOfTower, ...sheetsOfDetail]
const asked: AskedViews = {
  display: metric,
  room_mm: 190,
  detail_mm: 84,
  part: 'distributor',
  views: ['elevation', 'unrolled', 'section'],
}
const whole = evaluated(balcony)

/** Every element of a picture by its kind, class and part; places differ by the seventh figure, and so may ties of order. */
const elements = (inside: string): readonly string[] =>
  [...inside.matchAll(/<(\w+)[^>]*?( class="[^"]*")?( data-part="[^"]*")?\/?>/g)].map((m) => m.slice(1).join('')).sort()

describe('the first answer', () => {
  const first = (JSON.parse(firstAnswer(balcony)) as First).evaluated

  it('draws the sheets of the first screen as the engine does', () => {
    const [a, b] = [first, whole].map((e) => pictures(e, asked, sheets))
    expect(a!.map((p) => p.id)).toEqual(['tower', 'distributor', 'section'])
    expect(a!.map((p) => p.figures.map((f) => f.text.text))).toEqual(b!.map((p) => p.figures.map((f) => f.text.text)))
    const [one, two] = [a, b].map((all) => all!.map((p) => elements(p.inside)))
    expect(one).toEqual(two)
  })

  it('judges as the engine does', () =>
    expect(first.findings.map((f) => [f.id, f.at, f.verdict, f.measured])).toEqual(
      whole.findings.map((f) => [f.id, f.at, f.verdict, f.measured]),
    ))

  it('leaves the facts of later screens out', () => {
    expect(first.whole).toBe(false)
    expect(Object.keys(first.facts).sort()).toEqual(['hydraulics', 'layout', 'pocket', 'room', 'tank', 'templates'])
    expect(isKnown(first.facts.layout)).toBe(true)
  })
})

describe('a ghost', () => {
  const over = (path: string, value: unknown, note: string) =>
    ghosts([whole, evaluated(withValue(balcony, path, value))], asked, sheets, { part: 'drain', note })

  it('draws what a change draws otherwise', () => {
    const { distributor, tower } = over('distributor/hole', '5 mm', 'hole')
    expect(distributor).toContain('<circle')
    expect(tower).not.toContain('hole')
  })

  it('names a change that moves no line, at its place', () => {
    const { tower, section } = over('column/base/strapped', true, 'strapped → yes')
    expect(tower).toContain('strapped → yes')
    expect(section?.trim()).toBe('')
  })

  it('draws nothing where nothing changes but its name', () => {
    expect(over('note', 'x', 'note')['tower']?.match(/<text/g)?.length).toBe(1)
  })
})
