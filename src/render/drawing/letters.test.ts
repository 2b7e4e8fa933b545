import { readFileSync } from 'node:fs'
import * as fontkit from 'fontkit'
import { describe, expect, it } from 'vitest'
import { advances } from './advances.ts'
import { balancedLines, brokenLines, lettersWidth, missingLetters, shownText } from './letters.ts'
import type { Face } from './primitives.ts'

const files: Readonly<Record<Face, string>> = {
  drafting: 'RootfallDrafting',
  serif: 'SourceSerif4-Regular',
  italic: 'SourceSerif4-Italic',
  medium: 'SourceSerif4-Medium',
  strong: 'SourceSerif4-SemiBold',
}
const faces = Object.keys(files) as Face[]
const bytes = (face: Face) => readFileSync(new URL(`../../../assets/fonts/${files[face]}.ttf`, import.meta.url))
const plain = { kern: false, liga: false, clig: false, dlig: false, calt: false }

describe.each(faces)('letters of %s', (face) => {
  const font = fontkit.create(bytes(face))
  const text = 'Ø 50 mm · 45° · ½ in ≤ ±0.5 ąęłż ĄĘŁŻ Größe água × − → € … Δ π'

  it('are as wide as in the font, to a thousandth of the size each', () => {
    const set = font.layout(text, plain).positions.reduce((sum, p) => sum + p.xAdvance, 0) / font.unitsPerEm
    expect(Math.abs(lettersWidth({ text, face, size_mm: 1 }) - set)).toBeLessThan(0.001 * text.length)
  })

  it('are printed with kerning no wider than reckoned, and at most a fiftieth narrower over a sentence', () => {
    const sentence = 'Two of the 24 stubs, 111.2 mm each, sawn at 45° from EN 1401 pipe.'
    const kerned =
      font.layout(sentence, { ...plain, kern: true }).positions.reduce((s, p) => s + p.xAdvance, 0) / font.unitsPerEm
    const reckoned = lettersWidth({ text: sentence, face, size_mm: 1 })
    expect(kerned / reckoned).toBeLessThan(1.005)
    expect(kerned / reckoned).toBeGreaterThan(0.98)
  })

  it('cover what sheets are made of', () => {
    expect(missingLetters({ text, face })).toEqual([])
    expect(missingLetters({ text: 'ąćęłńóśźżĄĆĘŁŃÓŚŹŻäöüßéèàçñåøæőűčšžřďťľ½¼¾⅛⅜⅝⅞≤≥±×−–·°²³µ₂₃₄', face })).toEqual([])
  })

  it('have figures of one width for tables, except the drafting letter with its slim 1', () => {
    const widths = new Set([...'0123456789'].map((d) => lettersWidth({ text: d, face, size_mm: 1 })))
    expect(widths.size).toBe(face === 'drafting' ? 2 : 1)
  })

  it('bear the name that the printers use', () => {
    expect(advances[face].name.startsWith(files[face].split('-')[0]!)).toBe(true)
  })
})

describe('text', () => {
  it('has stand-ins for what a face lacks, and keeps the rest', () => {
    expect(shownText({ text: '⌀ 50\u2011a 漢', face: 'serif' })).toBe('Ø 50-a 漢')
    expect(shownText({ text: 'a\u0328', face: 'drafting' })).toBe('ą')
  })

  it('breaks at spaces within the width and loses nothing', () => {
    const text = 'Cut out the hole; lay the ticks on line and height; draw round.'
    const given = { text, face: 'serif', size_mm: 3.6, width_mm: 40 } as const
    const lines = brokenLines(given)
    expect(lines.join(' ')).toBe(text)
    for (const l of lines) expect(lettersWidth({ ...given, text: l })).toBeLessThanOrEqual(40)
    const even = balancedLines(given)
    expect(even.length).toBe(lines.length)
    expect(even.join(' ')).toBe(text)
  })

  it('keeps a number and its unit on one line', () => {
    for (let width_mm = 12; width_mm < 60; width_mm++) {
      const lines = brokenLines({
        text: 'Both bars measure 100 mm, at 4.0 L/min or 45 °C here',
        face: 'serif',
        size_mm: 3.6,
        width_mm,
      })
      for (const l of lines) expect(l).not.toMatch(/^(mm|L\/min|°C)/)
    }
  })

  it('breaks a word that is too long by itself, and ends however narrow the column', () => {
    expect(brokenLines({ text: 'unausweichlich', face: 'serif', size_mm: 4, width_mm: 10 }).join('')).toBe(
      'unausweichlich',
    )
    expect(brokenLines({ text: 'abc', face: 'serif', size_mm: 4, width_mm: 0 })).toEqual(['a', 'b', 'c'])
    expect(brokenLines({ text: '', face: 'serif', size_mm: 4, width_mm: 10 })).toEqual([''])
  })
})
