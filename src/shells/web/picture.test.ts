import { describe, expect, it } from 'vitest'
import balcony from '../../../examples/balcony.plan.json' with { type: 'json' }
import { isKnown } from '../../plan/known.ts'
import { withValue } from '../../plan/patch.ts'
import { metric } from '../../render/display.ts'
import { arc, circle, contour, line } from '../../render/drawing/primitives.ts'
import { sheetsOfDetail, sheetsOfTower } from './drawings.ts'
import type { Drawn } from './first.ts'
import { type AskedViews, ghosts, pictures } from './picture.ts'
import { strokes } from './strokes.ts'
import { speak } from './words.ts'
import { evaluated } from './workers/evaluated.ts'
import { firstAnswer, firstDrawn } from './workers/first-answer.ts'
import { firstWordsOf } from './workers/first-words.ts'
import type { Told } from './workers/protocol.ts'

speak(firstWordsOf('en'))

const sheets = [...sheetsOfTower, ...sheetsOfDetail]
const asked: AskedViews = {
  display: metric,
  room_mm: 190,
  detail_mm: 84,
  section_mm: 84,
  part: 'distributor',
  views: ['elevation', 'unrolled', 'section'],
}
const whole = evaluated(balcony)

describe('the first answer', () => {
  const first = JSON.parse(firstAnswer(balcony)) as Told

  it('is drawn as the engine draws it, for every usual window', () => {
    for (const json of firstDrawn(balcony)) {
      const { asked, pictures: drawn } = JSON.parse(json) as Drawn
      const own = pictures(whole, asked, sheets)
      expect(drawn.map((p) => p.id)).toEqual(['tower', 'distributor', 'section'])
      expect(drawn.map((p) => p.figures.map((f) => f.text.text))).toEqual(
        own.map((p) => p.figures.map((f) => f.text.text)),
      )
      expect(drawn.map((p) => [p.strokes, p.letters])).toEqual(own.map((p) => [p.strokes, p.letters]))
    }
  })

  it('judges as the engine does', () =>
    expect(first.findings.map((f) => [f.id, f.at, f.verdict])).toEqual(
      whole.findings.map((f) => [f.id, f.at, f.verdict]),
    ))

  it('leaves the facts of later screens out', () => {
    expect(first.whole).toBe(false)
    expect(Object.keys(first.facts).sort()).toEqual(['alkalinity_eq_m3', 'conductivity_S_m', 'layout', 'mouthReach_m'])
    expect(isKnown(first.facts.layout)).toBe(true)
  })
})

describe('strokes', () => {
  const at = { left: 0, bottom: 0, right: 100, top: 100 }

  it('join marks of one look that follow one another, and keep those apart that knock out what lies below', () => {
    const lines = [line([0, 0], [1, 1], 'hatch'), line([2, 0], [3, 1], 'hatch'), line([0, 0], [9, 0], 'cut')]
    expect(strokes(lines, at).map((s) => s.d)).toEqual(['M0 100L1 99M2 100L3 99', 'M0 100L9 100'])
    const paper = contour(
      [
        [0, 0],
        [1, 0],
        [1, 1],
      ],
      'visible',
      { fill: 'paper' },
    )
    expect(strokes([paper, paper], at)).toHaveLength(2)
  })

  it('draw a circle as two half turns, and an arc the way round that it was given', () => {
    expect(strokes([circle([10, 10], 2, 'thin')], at)[0]!.d).toBe('M8 90A2 2 0 0 0 12 90A2 2 0 0 0 8 90Z')
    expect(strokes([arc([10, 10], 2, 0, Math.PI / 2, 'thin')], at)[0]!.d).toBe('M12 90A2 2 0 0 0 10 88')
  })
})

describe('a ghost', () => {
  const over = (path: string, value: unknown, note: string) =>
    ghosts([whole, evaluated(withValue(balcony, path, value))], asked, sheets, { part: 'drain', note })

  it('draws what a change draws otherwise', () => {
    const { distributor, tower } = over('distributor/hole', '5 mm', 'hole')
    expect(distributor!.strokes.some((s) => s.d.includes('A'))).toBe(true)
    expect(tower!.letters).not.toContain('hole')
  })

  it('names a change that moves no line, at its place', () => {
    const { tower, section } = over('pump/timerOff', '7 min', 'timer → 7 min')
    expect(tower!.letters).toContain('timer → 7 min')
    expect(section!.strokes).toEqual([])
  })

  it.each([
    ['column/base/anchored', true, 'drain'],
    ['column/base/ballast', '20 kg', 'drain'],
    ['drain/holes', 20, 'drain'],
    ['riser/bore', '19 mm', 'riser'],
    ['reservoir/colour', 'foil', 'reservoir'],
    ['reservoir/shaded', true, 'reservoir'],
    ['reservoir/insulation', '30 mm', 'reservoir'],
    ['reservoir/airStone', '2 L/min', 'reservoir'],
    ['reservoir/ice', { mass: '2 kg' }, 'reservoir'],
    ['column/length', '1.9 m', 'column'],
  ])('draws %s over the tower where it is to be', (path, value, part) => {
    const { tower } = over(path, value, 'only named')
    expect(tower!.strokes.filter((s) => s.part.split(' ').includes(part))).not.toEqual([])
    expect(tower!.letters).not.toContain('only named')
  })

  it('draws nothing where nothing changes but its name', () => {
    expect(over('note', 'x', 'note')['tower']?.letters.match(/<text/g)?.length).toBe(1)
  })
})
