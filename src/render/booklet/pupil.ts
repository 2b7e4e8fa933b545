import { decimals, inchFraction } from '../display.ts'
import type { PupilKey } from '../words/en/booklet-pupils.ts'
import { fill } from '../words/fill.ts'
import type { Given } from './input.ts'
import type { ExampleBlock } from './model.ts'

/** A number as a pupil reads it: its text, and what that text is worth. */
export interface Read {
  readonly text: string
  readonly value: number
}

/** π as it stands on the page. */
export const PI = Number(Math.PI.toFixed(4))
export const INCH_m = 0.0254
export const HALF_TURN_deg = 180

/** Where a pupil writes. */
const LINE = '____________'

export interface Pupil {
  readonly g: Given
  readonly say: (key: PupilKey, slots?: Readonly<Record<string, string>>) => string
  readonly read: (value: number, digits: number) => Read
  /** A length in millimetres with one decimal, or in inches with three. */
  readonly length: (length_m: number) => Read
  readonly unit: string
  readonly resultDigits: number
}

export function pupil(g: Given): Pupil {
  const inches = g.display.lengths === 'in'
  const read = (value: number, digits: number): Read => ({
    text: decimals(value, digits, g.display.decimal)
      .replace(/([.,]\d*?)0+$/, '$1')
      .replace(/[.,]$/, ''),
    value: Number(value.toFixed(digits)),
  })
  return {
    g,
    say: (key, slots = {}) => fill(g.pupils[key], slots),
    read,
    length: (m) => (inches ? read(m / INCH_m, 3) : read(m * 1000, 1)),
    unit: g.sheet.unit,
    resultDigits: inches ? 2 : 1,
  }
}

/** What a tape in sixteenths shows for a length in inches. */
function onTape(p: Pupil, { engine, unit }: { readonly engine: number; readonly unit: string }): string {
  if (unit !== 'in') return ''
  return p.say('on-tape', { mark: inchFraction(engine * INCH_m, p.g.display.inchParts).text })
}

/** One example: the sum done with the numbers as they are read, beside what the engine has. */
export function example(
  p: Pupil,
  of: string,
  given: {
    readonly slots: Readonly<Record<string, string>>
    readonly rule?: PupilKey
    readonly work: string
    /** By hand, from the numbers as read. */
    readonly hand: number
    /** By the engine, in the same unit. */
    readonly engine: number
    readonly digits: number
    readonly unit: string
  },
): ExampleBlock {
  const { slots, work, digits } = given
  const unit = given.unit === '' ? '' : given.unit === '°' ? '°' : ` ${given.unit}`
  const [hand, engine] = [p.read(given.hand, digits), p.read(given.engine, digits)]
  const last = 10 ** -digits
  const agrees =
    hand.text === engine.text ? 'same' : Math.abs(hand.value - engine.value) <= last * 1.0001 ? 'rounding' : 'different'
  const verdict = p.say(agrees === 'same' ? 'same' : agrees === 'rounding' ? 'rounding' : 'not-same')
  return {
    kind: 'example',
    id: of,
    question: p.say(`${of}-question` as PupilKey, slots),
    given: `${p.say('given')}: ${p.say((given.rule === undefined ? `${of}-given` : given.rule.replace('-line', '-given')) as PupilKey, slots)}.`,
    rule: p.say(given.rule ?? (`${of}-line` as PupilKey), slots),
    answer: p.say('answer', { line: `${LINE}${unit}` }),
    work: `${work} = ${hand.text}${unit}`,
    plan: `${p.say('plan', { value: `${engine.text}${unit}${onTape(p, given)}` })} ${verdict}`,
    agrees,
  }
}
