import { practiceLengths } from '../../tables/practice.ts'
import type { SheetId } from '../sheets/context.ts'
import type { SetPage } from '../sheets/set.ts'
import { type Given, text } from './input.ts'
import type { Chapter } from './model.ts'

const DRAWINGS: readonly SheetId[] = ['overview', 'section', 'marking', 'water', 'stand']
/** Sheets whose content the booklet says in its own chapters. */
const TOLD_ELSEWHERE: readonly SheetId[] = ['cuts', 'parts', 'steps', 'batch']
/** Sheets that go with the feed: to be cut out for the bottles, and what becomes of a dumped tank. */
const OF_THE_FEED: readonly SheetId[] = ['labels', 'disposal']

const sheets = (pages: readonly SetPage[]) => pages.map(({ page, title }) => ({ kind: 'sheet' as const, page, title }))

/** Drawings to look at. */
export function drawingsChapter(g: Given, pages: readonly SetPage[]): Chapter | null {
  const own = pages.filter((p) => DRAWINGS.includes(p.id))
  return own.length === 0 ? null : { id: 'drawings', title: g.tell('drawings-title'), blocks: sheets(own) }
}

/** Sheets that follow the batch. */
export const feedSheets = (pages: readonly SetPage[]) => sheets(pages.filter((p) => OF_THE_FEED.includes(p.id)))

/** Sheets to cut out and lay on the pipe. */
export function templatesChapter(g: Given, pages: readonly SetPage[]): Chapter | null {
  const own = pages.filter((p) => ![...DRAWINGS, ...TOLD_ELSEWHERE, ...OF_THE_FEED].includes(p.id))
  if (own.length === 0) return null
  const { low_m, high_m } = practiceLengths.rows['check-bar']
  const tolerance = g.sheet.within(high_m ?? low_m)
  return {
    id: 'templates',
    title: g.tell('templates-title'),
    blocks: [
      text(g.tell('templates-how', { tolerance }), 'caution'),
      text(g.tell('templates-laser'), 'caution'),
      ...sheets(own),
    ],
  }
}
