import { isKnown } from '../../plan/known.ts'
import type { Column } from '../paper/table.ts'
import { partRow } from '../sheets/parts.ts'
import { materialText, patternTexts } from '../tables/cuts.ts'
import { packsText, packTexts } from '../tables/packs.ts'
import { toolText, totalText } from '../tables/parts.ts'
import { type Given, heading, text, ticks } from './input.ts'
import type { Block, Chapter } from './model.ts'

const words = (said: string): Column => ({ heading: said, align: 'words' })
const figures = (said: string): Column => ({ heading: said, align: 'figures' })

function list(g: Given): readonly Block[] {
  const { parts } = g.facts
  if (!isKnown(parts)) return []
  const priced = parts.known.parts.some((p) => p.price_money !== null)
  const rows = parts.known.parts.map((p) => {
    const r = partRow(g.sheet, p)
    return [r.name, r.size, r.count, r.spares, ...(priced ? [r.price] : [])]
  })
  const packs = packTexts(g.facts.nutrients, g.words, g.display)
  const packRows = packs.map((r) => [r.name, r.size, r.count, '', ...(priced ? [r.price] : [])])
  const sums = [totalText(parts.known, g.words, g.display), packsText(g.facts.nutrients, g.words, g.display)]
  const columns = [
    words(g.tell('col-part')),
    words(g.tell('col-size')),
    figures(g.tell('col-count')),
    figures(g.tell('col-spare')),
    ...(priced ? [figures(g.tell('col-price'))] : []),
  ]
  const remarks = parts.known.parts.map((p) => partRow(g.sheet, p)).filter((r) => r.remark !== '')
  return [
    heading(g.tell('parts-parts')),
    { kind: 'table', id: 'parts', columns, rows: [...rows, ...packRows], ticked: true },
    ...(priced ? [text(sums.filter((s) => s !== '').join(' '), 'quiet')] : []),
    ...(remarks.length === 0 ? [] : [text(remarks.map((r) => `${r.name}: ${r.remark}.`).join(' '), 'quiet')]),
    heading(g.tell('parts-tools')),
    {
      kind: 'ticks',
      lines: ticks(
        'tool',
        parts.known.tools.map((t) => toolText(t, g.words).name),
      ),
      across: 4,
    },
  ]
}

function cuts(g: Given): readonly Block[] {
  const { materials } = g.facts.cuts
  if (materials.length === 0) return []
  return [
    heading(g.tell('parts-cuts')),
    ...materials.flatMap((m): readonly Block[] => {
      const patterns = patternTexts(m, g.words, g.display)
      const lines = patterns.map((p, i) => ({
        id: `pattern-${m.of}-${i + 1}`,
        text: `${p.times} × ${p.length}: ${p.pieces} (${p.rest})`,
      }))
      return [
        text(materialText(m, g.words, g.display), 'quiet'),
        ...(lines.length === 0 ? [] : [{ kind: 'ticks' as const, lines, across: 2 }]),
      ]
    }),
  ]
}

/** Everything that is bought and taken in the hand. */
export function partsChapter(g: Given): Chapter | null {
  const blocks = [...list(g), ...cuts(g)]
  return blocks.length === 0 ? null : { id: 'parts', title: g.tell('parts-title'), blocks }
}
