import type { BatchFacts } from '../../disciplines/nutrients/index.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { ecScales } from '../../tables/ec-scales.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { decimals, shownText } from '../display.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Point } from '../drawing/primitives.ts'
import { costText, doseTexts, weakTexts } from '../tables/feed.ts'
import { orderLines } from '../tables/feed-order.ts'
import { refillText } from '../tables/feed-running.ts'
import { chargeBalance } from '../views/charge-balance.ts'
import { ionBands } from '../views/ions.ts'
import { phLadder } from '../views/ph-ladder.ts'
import { choiceName, findingText, placeName } from '../words/sentences.ts'
import { hung } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { flowed } from './cuts.ts'
import { act, type FeedPiece, gap, headed, room, said, tabled } from './feed-pieces.ts'
import { caption } from './figure.ts'

const CAPTION_mm = 7
const WIDTH_mm = 78
const BETWEEN_mm = 5
/** Heights that let all of it stand on one page of the paper. */
const HIGH_mm = { A4: { row: 5.2, chart: 52 }, Letter: { row: 4.7, chart: 44 } }

function weighing(c: Context, batch: BatchFacts): readonly FeedPiece[] {
  const t = c.words.tables
  if (!isKnown(batch.doses)) {
    const needs = batch.doses.needs.map((n) => placeName(n, c.words)).join(', ')
    return [said(c, c.say('batch-needs', { needs }))]
  }
  const doses = doseTexts(batch, c.words, c.display)
  const priced = doses.some((d) => d.price !== '')
  const columns = (
    ['product', 'mass', 'volume', 'per-litre', 'bottle', ...(priced ? ['cost'] : [])] as readonly string[]
  ).map((key) => ({
    heading: t[`feed-${key}`]!,
    align: key === 'product' || key === 'bottle' ? ('words' as const) : ('figures' as const),
  }))
  const rows = doses.map((d) => [d.name, d.mass, d.volume, d.perLitre, d.bottle, ...(priced ? [d.price] : [])])
  const weak = weakTexts(batch, c.words, c.display)
  const cost = costText(batch, c.words, c.display)
  return [
    headed(c, c.say('batch-weigh')),
    ...tabled(c, { columns, rows, boxed: true }),
    ...(cost === '' ? [] : [said(c, cost, 'italic')]),
    ...(weak.length === 0 ? [] : [headed(c, c.say('batch-weak')), ...weak.map((text) => act(c, `* ${text}`)), gap(2)]),
  ]
}

/** What the pens should show, beside a rule for what they do show. */
function readings(c: Context, batch: BatchFacts): readonly FeedPiece[] {
  const { conductivity_S_m: κ, pHNow, pHLater } = batch.expected
  const { scale } = c.facts.nutrients.pen
  const blank = c.say('number-blank')
  const other = scale === null || scale === 'unmarked' || scale === 'mS/cm' ? null : scale
  const on = (S_m: number) => (other === null ? '' : String(Math.round(S_m * ecScales.rows[other].perS_m)))
  const ph = (r: { low: number; high: number }) => shownText(band(r.low, r.high, '1'), c.display)
  const rows = [
    [c.say('batch-row-water'), shownText(quantity(batch.temperature_C, 'C'), c.display), blank],
    [c.say('batch-row-ec'), shownText(band(κ.low, κ.high, 'S_m'), c.display), blank],
    ...(other === null ? [] : [[c.say('batch-row-scale', { name: other }), `${on(κ.low)}–${on(κ.high)}`, blank]]),
    [c.say('batch-row-now'), ph(pHNow), blank],
    [c.say('batch-row-later'), ph(pHLater), blank],
  ]
  const columns = [
    { heading: c.say('batch-reading'), align: 'words' as const },
    { heading: c.say('batch-should'), align: 'figures' as const },
    { heading: c.say('batch-is'), align: 'words' as const, width_mm: 34 },
  ]
  return [headed(c, c.say('batch-read')), ...tabled(c, { columns, rows })]
}

function order(c: Context, batch: BatchFacts): readonly FeedPiece[] {
  const lines = orderLines(batch, c.words, c.display)
  const refill = refillText(batch, c.words)
  if (lines.length === 0) return []
  return [
    headed(c, c.say('batch-order')),
    said(c, c.say('batch-adult'), 'medium'),
    ...lines.map(({ text, cautions }, i) => act(c, `${i + 1}. ${text}`, cautions)),
    ...(refill === '' ? [] : [gap(2), said(c, refill, 'italic')]),
  ]
}

const flat = (piece: { marks: Drawing; figures: readonly { text: Drawing[number] }[] }): Drawing => [
  ...piece.marks,
  ...piece.figures.map((f) => f.text),
]

/** A view under its caption, from its upper left corner. */
function view(title: string, drawing: Drawing, at_mm = 0): FeedPiece {
  const box = bounds(drawing)
  const height_mm = (box === null ? 0 : box.top - box.bottom) + CAPTION_mm + BETWEEN_mm
  const draw = ([x, y]: Point): Drawing => [
    ...caption([x + at_mm, y - 3.5], title),
    ...hung(drawing, [x + at_mm, y - CAPTION_mm]),
  ]
  return { height_mm, draw }
}

/** What is in the batch: elements on their bands, charges in two columns, the ladder of pH. */
function figures(c: Context, batch: BatchFacts): readonly FeedPiece[] {
  const { display } = c
  const base = { batch, words: c.words.feedViews, display }
  const pH = c.plan.feed?.pH
  const half = feedPractice.rows.phBand.high
  const ions = view(c.say('batch-ions'), flat(ionBands({ ...base, width_mm: room(c), row_mm: HIGH_mm[c.paper].row })))
  const [width_mm, height_mm] = [WIDTH_mm, HIGH_mm[c.paper].chart]
  const charge = view(c.say('batch-charge'), flat(chargeBalance({ ...base, width_mm, height_mm })))
  const wanted = pH === undefined ? null : { pH, half }
  const ladder = view(
    c.say('batch-ladder'),
    flat(phLadder({ ...base, nameOf: (id) => choiceName(id, c.words), wanted, width_mm, height_mm })),
    room(c) - width_mm,
  )
  const pair: FeedPiece = {
    height_mm: Math.max(charge.height_mm, ladder.height_mm),
    draw: (at) => [...charge.draw(at), ...ladder.draw(at)],
  }
  const own = c.findings.filter((f) => f.id === 'nutrients/element' && (f.verdict === 'fail' || f.verdict === 'watch'))
  const why = own.map((f) => said(c, findingText(f, c.words, display).sentence))
  return [
    ions,
    said(c, c.say('batch-key'), 'italic'),
    gap(4),
    pair,
    ...(why.length === 0 ? [] : [headed(c, c.say('batch-why')), ...why]),
  ]
}

function subtitle(c: Context, batch: BatchFacts): string {
  const { blend } = c.facts.nutrients
  const parts = isKnown(blend)
    ? blend.known.sources.map((s) => c.say('batch-water-part', { share: decimals(s.share * 100, 0), name: s.name }))
    : []
  const slots = { temperature: shownText(quantity(batch.temperature_C, 'C'), c.display), water: parts.join(', ') }
  return batch.volume_m3 === null
    ? c.say('batch-sub-open', slots)
    : c.say('batch-sub', { ...slots, volume: c.shown(quantity(batch.volume_m3, 'm3')) })
}

/** What to weigh, in which order, what the pens should show, and what is then in the tank. */
export function batchSheet(c: Context): Drafted {
  if (c.plan.feed === undefined) return null
  const { batch } = c.facts.nutrients
  if (!isKnown(batch)) return { needs: [...new Set(batch.needs)] }
  const title = c.say('batch-title')
  const draft = (drawing: Drawing, i: number, name: string): Draft => ({
    id: 'batch',
    title: i === 0 ? name : c.say('continued', { title: name }),
    subtitle: subtitle(c, batch.known),
    scale: c.say('no-scale'),
    drawing,
  })
  const first = [...weighing(c, batch.known), ...readings(c, batch.known)]
  const then = order(c, batch.known)
  const together = flowed(c, [...first, ...then])
  const apart = [...flowed(c, first), ...(then.length === 0 ? [] : flowed(c, then))]
  // The order of mixing is read at the tank: on a page of its own where that takes no more paper.
  const work = apart.length > together.length ? together : apart
  const told = flowed(c, figures(c, batch.known))
  return {
    pages: [
      ...work.map((d, i) => draft(d, i, title)),
      ...told.map((d, i) => draft(d, i, c.say('batch-figures-title'))),
    ],
  }
}
