import { advances, measured } from './advances.ts'
import type { Face } from './primitives.ts'

const faces: readonly Face[] = ['drafting', 'serif', 'italic', 'medium', 'strong']

const tables: Readonly<Record<Face, ReadonlyMap<string, number>>> = (() => {
  const letters = [...measured]
  const table = (face: Face): ReadonlyMap<string, number> => {
    const widths = advances[face].widths.split(' ')
    return new Map(letters.flatMap((l, i) => (widths[i] === '-' ? [] : [[l, Number.parseInt(widths[i]!, 36) / 1000]])))
  }
  return Object.fromEntries(faces.map((f) => [f, table(f)])) as Record<Face, ReadonlyMap<string, number>>
})()

/** Width taken for a letter that no face has: the printers show a box about this wide. */
const UNKNOWN_WIDTH = 0.6

/** What stands in for a letter that a face lacks, tried in this order. */
const substitutes: Readonly<Record<string, string>> = {
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '–',
  '\u2013': '-',
  '\u2014': '–',
  '\u00ad': '',
  '\u2002': ' ',
  '\u2003': ' ',
  '\u2007': ' ',
  '\u2009': ' ',
  '\u200a': '',
  '\u200b': '',
  '\u202f': ' ',
  '\u00a0': ' ',
  '\n': ' ',
  '\t': ' ',
  '\u2300': 'Ø',
  '\u2205': 'Ø',
  '\u2044': '/',
  '\u2032': "'",
  '\u2033': '"',
  '\u2248': '~',
  '\u2260': '=',
  '\u03bc': 'µ',
  '\u2126': 'Ω',
  '\u2206': 'Δ',
  '\u02da': '°',
  '\u00ba': '°',
  '\u2215': '/',
  '\u22c5': '·',
  '\u2219': '·',
  '\u2192': '>',
  '\u2190': '<',
  '\u2026': '...',
  '\u2212': '–',
  '\u2018': "'",
  '\u2019': "'",
  '\u201a': ',',
  '\u201c': '"',
  '\u201d': '"',
  '\u201e': '"',
  '₀': '0',
  '₁': '1',
  '₂': '2',
  '₃': '3',
  '₄': '4',
  '₅': '5',
  '₆': '6',
  '₇': '7',
  '₈': '8',
  '₉': '9',
}

/** The letters of a text for which the face has no glyph, each once, in order. */
export function missingLetters({ text, face }: { text: string; face: Face }): readonly string[] {
  return [...new Set(text.normalize('NFC'))].filter((l) => !tables[face].has(l))
}

/** The text as the face can show it: composed letters, and stand-ins from the list above for what it lacks. */
export function shownText({ text, face }: { text: string; face: Face }): string {
  const has = tables[face]
  const shown = (letter: string, depth: number): string => {
    if (has.has(letter) || depth === 0) return letter
    const other = substitutes[letter]
    return other === undefined ? letter : [...other].map((l) => shown(l, depth - 1)).join('')
  }
  return [...text.normalize('NFC')].map((l) => shown(l, 3)).join('')
}

/** Width of a text in mm by the advance widths of its letters; printers set it with kerning, a trace narrower. */
export function lettersWidth({ text, face, size_mm }: { text: string; face: Face; size_mm: number }): number {
  let ems = 0
  for (const letter of shownText({ text, face })) ems += tables[face].get(letter) ?? UNKNOWN_WIDTH
  return ems * size_mm
}

/** Heights of a face in type sizes: a capital, a small x, and how far a p reaches below the line. */
export const metrics = (face: Face): { capital: number; xHeight: number; descent: number; name: string } =>
  advances[face]

/** A number keeps its unit: no line ends between "100" and "mm". */
const withUnitsBound = (text: string): string =>
  text.replace(/(\d) (?=(?:\p{L}{1,2}|[°%µ]\S*|\p{L}{1,3}\/\S+)(?:[\s.,;:)]|$))/gu, '$1\u00a0')

/** A text broken into lines that fit; at spaces, and inside a word only where the word alone is too wide. */
export function brokenLines(given: { text: string; face: Face; size_mm: number; width_mm: number }): readonly string[] {
  const { text, face, size_mm, width_mm } = given
  const fits = (t: string) => lettersWidth({ text: t, face, size_mm }) <= width_mm
  const lines: string[] = []
  for (const paragraph of withUnitsBound(text).split('\n')) {
    let row = ''
    for (const word of paragraph.split(' ').filter((w) => w !== '')) {
      const longer = row === '' ? word : `${row} ${word}`
      if (fits(longer)) {
        row = longer
        continue
      }
      if (row !== '') lines.push(row)
      row = ''
      for (const letter of word) {
        if (row !== '' && !fits(row + letter)) {
          lines.push(row)
          row = ''
        }
        row += letter
      }
    }
    lines.push(row)
  }
  return lines
}

/** The same number of lines, but of even length: for short texts, where one word on a line of its own would look lost. */
export function balancedLines(given: {
  text: string
  face: Face
  size_mm: number
  width_mm: number
}): readonly string[] {
  const lines = brokenLines(given)
  let narrow = 0
  let wide = given.width_mm
  while (wide - narrow > 0.1) {
    const width_mm = (narrow + wide) / 2
    if (brokenLines({ ...given, width_mm }).length > lines.length) narrow = width_mm
    else wide = width_mm
  }
  return brokenLines({ ...given, width_mm: wide })
}
