import { describe, expect, it } from 'vitest'
import { parsePlan } from '../plan/document.ts'
import { inches, metric } from './display.ts'
import { exampleText } from './example.ts'
import { english } from './words/en/english.ts'
import { spanish } from './words/es/spanish.ts'
import { issueText } from './words/sentences.ts'

describe('an example of a field', () => {
  it.each([
    ['3 mm', '1/8 in'],
    ['350 mm', '14 in'],
    ['2.5 m', '8 ft'],
    ['1800 L/h', '476 US gph'],
    ['8 °C', '46 °F'],
    ['35 W', '35 W'],
    ['4 in', '4 in'],
  ])('%s is %s in the measures of an inch tape', (example, told) => {
    expect(exampleText(example, inches)).toBe(told)
    expect(exampleText(example, metric)).toBe(example)
  })
})

describe('a unit that cannot be read', () => {
  const [issue] = parsePlan({ rootfall: 1, distributor: { hole: '5 mm 2' } }).issues
  it('is told with place, value, what is wrong and an example in the measures of the person', () => {
    expect(issueText(issue!, english, metric)).toBe(
      'the hole of the distributor: “5 mm 2” cannot be read: what stands after the number is no unit of this measure. Write it like 3 mm; units that fit: mm, cm, m, in or ft.',
    )
    expect(issueText(issue!, english, inches)).toContain('Write it like 1/8 in;')
    expect(issueText(issue!, spanish, metric)).toContain('“5 mm 2” no se puede leer')
  })
})
