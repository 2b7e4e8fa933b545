import { quantity } from '../../kernel/units.ts'
import type { Display } from '../display.ts'
import { shownText } from '../display.ts'
import type { SolidKey, SolidSentences } from '../words/en/solids.ts'
import { fill, oneOf } from '../words/fill.ts'
import { placeName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'
import type { SolidPart } from './part.ts'
import type { Absent, SolidSet } from './solids.ts'

interface Tongue {
  readonly words: Words
  readonly sentences: SolidSentences
  readonly display: Display
}

const length = (length_m: number, { display }: Tongue) => shownText(quantity(length_m, 'm'), display)

/** Name and size of a part. */
export function sizeText(part: SolidPart, t: Tongue): string {
  const [x, y, z] = part.size_m
  const name = t.sentences[part.name]
  return fill(t.sentences.size, { name, x: length(x, t), y: length(y, t), z: length(z, t) })
}

/** What goes with one part: how it is used, and where the printer is too small for it. */
export function remarkTexts(part: SolidPart, bed_m: number | undefined, t: Tongue): readonly string[] {
  const name = t.sentences[part.name]
  const said = part.remarks.map(({ key, slots = {} }) => {
    const shown = Object.entries(slots).map(([slot, q]) => [slot, shownText(q, t.display)] as const)
    return fill(t.sentences[key], { name, ...Object.fromEntries(shown) })
  })
  const tight = part.fits === false && bed_m !== undefined
  return [...said, ...(tight ? [fill(t.sentences['bed-exceeded'], { name, bed: length(bed_m, t) })] : [])]
}

export function absentText(a: Absent, t: Tongue): string {
  const name = t.sentences[a.id]
  if (a.because !== null) return fill(t.sentences['left-out-because'], { name, why: t.sentences[a.because] })
  const needs = oneOf(
    a.needs.map((n) => placeName(n, t.words)),
    t.words.phrases['and']!,
  )
  return fill(t.sentences['left-out'], { name, needs })
}

/** Cautions for what is in a set: about food and sun only where a part stays on the tower. */
export function cautionTexts(set: SolidSet, bed_m: number | undefined, t: Tongue): readonly string[] {
  const out: SolidKey[] = []
  const forPrinter = set.parts.filter((p) => p.printed)
  if (forPrinter.some((p) => p.wetted)) out.push('print-food', 'print-heat')
  if (forPrinter.length > 0) out.push('print-fumes')
  if (forPrinter.length > 0 && bed_m === undefined) out.push('bed-unknown')
  return out.map((key) => t.sentences[key])
}
