import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, line, type Primitive } from '../drawing/primitives.ts'
import { polar } from '../drawing/vector.ts'

/** What stands in a sentence for a number that nobody has told yet. */
const BLANK = /_{4,}/

/** Blanks become rules to write on: whole lines, where a row of underscores would fall apart into dashes. */
export function ruled(drawing: Drawing): Drawing {
  return drawing.flatMap((p): Drawing => {
    if (p.kind !== 'text') return [p]
    const found = BLANK.exec(p.text)
    if (found === null) return [p]
    const width = (text: string) => lettersWidth({ text, face: p.face, size_mm: p.size_mm })
    const whole = width(p.text)
    const start = p.anchor === 'start' ? 0 : p.anchor === 'middle' ? -whole / 2 : -whole
    const before = p.text.slice(0, found.index)
    const after = p.text.slice(found.index + found[0].length)
    const at = (along: number) => polar(p.at, along, p.turn_rad)
    const from = start + width(before)
    const to = from + width(found[0])
    const more = { face: p.face, size_mm: p.size_mm, turn_rad: p.turn_rad, halo: p.halo, tone: p.tone }
    const out: Primitive[] = [line(at(from), at(to), 'thin')]
    if (before.trim() !== '') out.push(lettering(at(start), before, more))
    if (after.trim() !== '') out.push(...(ruled([lettering(at(to), after, more)]) as Primitive[]))
    return out
  })
}
