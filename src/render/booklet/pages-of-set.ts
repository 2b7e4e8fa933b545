import { practiceLengths } from '../../tables/practice.ts'
import type { SheetId } from '../sheets/context.ts'
import type { SetPage } from '../sheets/set.ts'
import { type Given, heading, text } from './input.ts'
import type { Block, Chapter } from './model.ts'

/** Sheets to look at, which the booklet takes over or draws for itself. */
const DRAWINGS: readonly SheetId[] = ['overview', 'section', 'marking', 'water', 'stand']
/** Sheets whose content the booklet says in its own chapters. */
const TOLD_ELSEWHERE: readonly SheetId[] = ['cuts', 'parts', 'steps', 'batch', 'disposal']

const blocksOf = (pages: readonly SetPage[]): readonly Block[] =>
  pages.map(({ id, page, title }) => ({ kind: 'sheet', id, page, title }))

/** The first page of each sheet that is named. */
export const firstPages = (pages: readonly SetPage[], ids: readonly SheetId[]): readonly Block[] =>
  blocksOf(ids.flatMap((id) => pages.find((p) => p.id === id) ?? []))

/** What becomes of a dumped tank. */
export const spentSheets = (pages: readonly SetPage[]) => blocksOf(pages.filter((p) => p.id === 'disposal'))

/** Sheets to be printed at full size, cut out and laid on the pipe or stuck on a bottle. */
export function templatesChapter(g: Given, pages: readonly SetPage[]): Chapter | null {
  const own = pages.filter((p) => ![...DRAWINGS, ...TOLD_ELSEWHERE].includes(p.id))
  if (own.length === 0) return null
  const { low_m, high_m } = practiceLengths.rows['check-bar']
  const tolerance = g.sheet.ofBar(high_m ?? low_m)
  const columns = [g.tell('templates-sheet'), g.tell('templates-lying'), g.tell('templates-standing')]
  return {
    id: 'templates',
    title: g.tell('templates-title'),
    appendix: true,
    blocks: [
      text(g.tell('templates-how', { tolerance }), 'caution'),
      text(g.tell('templates-laser'), 'caution'),
      heading(g.tell('templates-bars')),
      { kind: 'form', id: 'bars', columns, rows: own.map((p) => [p.title, '', '']) },
      ...blocksOf(own),
    ],
  }
}
