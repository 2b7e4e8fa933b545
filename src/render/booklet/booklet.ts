import type { SheetId } from '../sheets/context.ts'
import { sheetSet } from '../sheets/set.ts'
import { batchChapter } from './batch.ts'
import { BLANK } from './blank.ts'
import { drawingsChapter } from './drawings.ts'
import { type BookletInput, type Given, given } from './input.ts'
import { logChapter } from './log.ts'
import type { Block, Booklet, Chapter } from './model.ts'
import { spentSheets, templatesChapter } from './pages-of-set.ts'
import { partsChapter } from './parts.ts'
import { answersChapter, pupilsChapter } from './pupils.ts'
import { measurements, purpose } from './purpose.ts'
import { runningChapter } from './running.ts'
import { stepChapters } from './steps.ts'

const said = (b: Block): readonly string[] => {
  switch (b.kind) {
    case 'text':
    case 'heading':
      return [b.text]
    case 'ticks':
      return b.lines.map((l) => l.text)
    case 'table':
      return b.rows.flat()
    case 'step':
      return [...b.waits, ...b.cautions, ...b.acts.map((a) => a.text), b.test?.text ?? '']
    default:
      return []
  }
}

/** Numbers that are left to the pen: in the sentences, and those that findings wait for. */
const blanksOf = (g: Given, chapters: readonly Chapter[]): number =>
  measurements(g).length +
  chapters.flatMap((c) => c.blocks.flatMap(said)).reduce((n, s) => n + (s.match(BLANK)?.length ?? 0), 0)

const present = <T>(list: readonly (T | null)[]): readonly T[] => list.flatMap((x) => (x === null ? [] : [x]))

/** The plan as a booklet from which somebody else builds: chapters of blocks, before any printer has seen them. */
export function booklet(input: BookletInput): Booklet {
  const g = given(input)
  const set = sheetSet(input)
  const titles = new Map<SheetId, string>()
  for (const p of set.pages) if (!titles.has(p.id)) titles.set(p.id, p.title)
  // Said by the booklet in its own words and not as sheets.
  titles.set('parts', g.tell('parts-title'))
  titles.set('cuts', g.tell('parts-cuts'))
  const later = present<Chapter>([
    partsChapter(g),
    drawingsChapter(g, set.pages),
    ...stepChapters(g, titles),
    batchChapter(g),
    runningChapter(g, spentSheets(set.pages)),
    logChapter(g),
    pupilsChapter(g),
    answersChapter(g),
    templatesChapter(g, set.pages),
  ])
  const blanks = blanksOf(g, later)
  const title = g.plan.name ?? g.sheet.say('unnamed')
  const change = String(g.plan.change ?? 0)
  return {
    title,
    subtitle: g.tell('subtitle', { change, date: g.date }),
    language: g.words.language,
    key: `${title} ${change}`,
    chapters: [purpose(g, blanks, [...set.refused, ...set.leftOut]), ...later],
    blanks,
  }
}
