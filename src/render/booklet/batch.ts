import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { Column } from '../paper/table.ts'
import {
  cheapestText,
  costText,
  doseTexts,
  elementTexts,
  penText,
  stockTexts,
  waterText,
  weakTexts,
} from '../tables/feed.ts'
import { orderLines } from '../tables/feed-order.ts'
import { placeName } from '../words/sentences.ts'
import { type Given, heading, text } from './input.ts'
import type { Block, Chapter } from './model.ts'

const words = (said: string): Column => ({ heading: said, align: 'words' })
const figures = (said: string): Column => ({ heading: said, align: 'figures' })

function weighing(g: Given): readonly Block[] {
  const { batch } = g.facts.nutrients
  if (!isKnown(batch)) return []
  const doses = doseTexts(batch.known, g.words, g.display)
  const poured = doses.some((d) => d.volume !== '')
  const columns = [
    words(g.tell('col-salt')),
    figures(g.tell('col-mass')),
    ...(poured ? [figures(g.tell('col-volume'))] : []),
    figures(g.tell('col-litre')),
    words(g.tell('col-bottle')),
  ]
  const rows = doses.map((d) => [d.name, d.mass, ...(poured ? [d.volume] : []), d.perLitre, d.bottle])
  return doses.length === 0
    ? []
    : [
        heading(g.tell('batch-weigh')),
        { kind: 'table', id: 'doses', columns, rows, ticked: true },
        ...weakTexts(batch.known, g.words, g.display).map((t) => text(`* ${t}`)),
      ]
}

function order(g: Given): readonly Block[] {
  const { batch } = g.facts.nutrients
  if (!isKnown(batch)) return []
  const lines = orderLines(batch.known, g.words, g.display)
  return lines.length === 0
    ? []
    : [
        heading(g.tell('batch-order')),
        ...lines.flatMap((l, i): readonly Block[] => [
          ...l.cautions.map((c) => text(c, 'caution')),
          { kind: 'ticks', lines: [{ id: `order-${i + 1}`, text: l.text }] },
        ]),
      ]
}

function reached(g: Given): readonly Block[] {
  const { batch } = g.facts.nutrients
  if (!isKnown(batch)) return []
  const rows = elementTexts(batch.known, g.display).map((e) => [e.element, e.wanted, e.reached])
  return [
    heading(g.tell('batch-reach')),
    {
      kind: 'table',
      id: 'reached',
      columns: [words(g.tell('col-element')), figures(g.tell('col-wanted')), figures(g.tell('col-reached'))],
      rows,
      ticked: false,
    },
    text(penText(g.facts.nutrients, batch.known, g.words, g.display)),
  ]
}

/** The batch sheet; null where the plan has no feed, and what is missing where it does not say enough. */
export function batchChapter(g: Given): Chapter | null {
  if (g.plan.feed === undefined) return null
  const { nutrients } = g.facts
  const { batch } = nutrients
  const title = g.tell('batch-title')
  const lacking = isKnown(batch) ? (isKnown(batch.known.doses) ? [] : batch.known.doses.needs) : batch.needs
  const needs = lacking.map((n) => placeName(n, g.words)).join(', ')
  const unknown = lacking.length === 0 ? [] : [text(g.tell('batch-unknown', { needs }))]
  if (!isKnown(batch)) return { id: 'batch', title, blocks: unknown }
  const volume_m3 = batch.known.volume_m3
  const volume = volume_m3 === null ? `${g.sheet.say('number-blank')} L` : g.sheet.shown(quantity(volume_m3, 'm3'))
  const said = [
    ...stockTexts(nutrients, g.plan.feed.stock?.volume_m3 ?? null, g.words, g.display),
    costText(batch.known, g.words, g.display),
    cheapestText(batch.known, g.words, g.display),
  ].filter((t) => t !== '')
  return {
    id: 'batch',
    title,
    blocks: [
      text(g.tell('batch-for', { volume })),
      text(waterText(nutrients, g.words, g.display)),
      ...unknown,
      ...weighing(g),
      ...order(g),
      ...reached(g),
      ...said.map((t) => text(t, 'quiet')),
    ],
  }
}
