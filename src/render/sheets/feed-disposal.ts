import type { BatchFacts } from '../../disciplines/nutrients/index.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { sanitisers } from '../../tables/sanitisers.ts'
import { placeName } from '../words/sentences.ts'
import { topLeft } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { flowed } from './cuts.ts'
import { act, type FeedPiece, gap, headed, said, tabled } from './feed-pieces.ts'

/** Rows to write in: as many as the page has room for. */
const LOG = { least: 4, most: 20, row_mm: 6.55, head_mm: 18 }

/** Masses in a full tank: what a dump lets go. */
function holds(c: Context, batch: BatchFacts): readonly FeedPiece[] {
  const running = orNull(c.facts.nutrients.running)
  const volume_m3 = running?.volume_m3 ?? batch.volume_m3
  if (volume_m3 === null) return []
  const mass = (g_m3: number) => c.shown(quantity((g_m3 * volume_m3) / 1000, 'kg'))
  const { N, P, K, Na } = batch.reached_g_m3
  const rows = [
    [c.say('disposal-volume'), c.shown(quantity(volume_m3, 'm3'))],
    [c.say('disposal-n'), mass(N)],
    [c.say('disposal-p'), mass(P)],
    [c.say('disposal-k'), mass(K)],
    [c.say('disposal-na'), mass(Na)],
  ]
  const columns = [
    { heading: '', align: 'words' as const },
    { heading: '', align: 'figures' as const },
  ]
  return [headed(c, c.say('disposal-holds')), ...tabled(c, { columns, rows, width_mm: 80 }), gap(2)]
}

function when(c: Context): readonly FeedPiece[] {
  const { running } = c.facts.nutrients
  if (!isKnown(running)) {
    const needs = [...new Set(running.needs)].map((n) => placeName(n, c.words)).join(', ')
    return [headed(c, c.say('disposal-when')), said(c, c.say('disposal-days-open', { needs })), gap(2)]
  }
  const { dump } = running.known
  const slots = {
    days: c.shown(band(dump.days.low, dump.days.high, 'd')),
    by: c.words.phrases[`dump-${dump.by}`] ?? dump.by,
  }
  return [headed(c, c.say('disposal-when')), said(c, c.say('disposal-days', slots)), gap(2)]
}

/** Where it may go, in general words: what is allowed is for the place to say. */
function where(c: Context): readonly FeedPiece[] {
  const to = c.plan.feed?.dumpTo
  const phrase = to === undefined ? null : (c.words.phrases[`dump-to-${to.replaceAll(' ', '-')}`] ?? to)
  const bleach = c.plan.feed?.sanitiser?.product === 'bleach'
  return [
    headed(c, c.say('disposal-where')),
    said(c, phrase === null ? c.say('disposal-plan-open') : c.say('disposal-plan', { to: phrase }), 'italic'),
    said(c, c.say('disposal-rules'), 'medium'),
    act(c, c.say('disposal-beds')),
    act(c, c.say('disposal-compost')),
    act(c, c.say('disposal-sewer')),
    said(c, c.say('disposal-never'), 'medium'),
    said(c, c.say('disposal-acid'), 'medium'),
    ...(bleach ? [said(c, c.say('disposal-bleach'), 'medium')] : []),
    gap(3),
  ]
}

/** How the empty tower is sanitised, where the plan names a product and its strength can be. */
function sanitising(c: Context): readonly FeedPiece[] {
  const facts = c.facts.nutrients.sanitiser
  if (facts === null) return []
  const { product, strength, water_m3, add_m3 } = facts
  const { weakest, strongest } = sanitisers.rows[product]
  const percent = String(Number((strength * 100).toPrecision(3))).replace('.', c.display.decimal)
  if (strength < weakest || strength > strongest)
    return [headed(c, c.say('sanitise-heading')), said(c, c.say('sanitise-strength', { percent }), 'medium'), gap(2)]
  const blank = c.say('number-blank')
  const slots = {
    product: c.words.phrases[`sanitiser-${product}`] ?? product,
    add: add_m3 === null ? blank : c.shown(band(add_m3.low, add_m3.high, 'm3')),
    water: water_m3 === null ? blank : c.shown(quantity(water_m3, 'm3')),
    percent,
  }
  return [
    headed(c, c.say('sanitise-heading')),
    said(c, c.words.cautions['bleach']!, 'medium'),
    act(c, c.say('sanitise-clean')),
    act(c, c.say('sanitise-add', slots)),
    act(c, c.say('sanitise-run')),
    gap(2),
  ]
}

function log(c: Context, used_mm: number): readonly FeedPiece[] {
  const page_mm = topLeft(c)[1] - c.room.body.bottom - LOG.head_mm
  const here = Math.floor((page_mm - used_mm) / LOG.row_mm)
  // Too few rows on this page: a page of its own, and then a full one.
  const count = Math.min(LOG.most, here >= LOG.least ? here : Math.floor(page_mm / LOG.row_mm))
  const keys = ['date', 'volume', 'n', 'p', 'where'] as const
  const widths = [28, 28, 22, 22, 44]
  const columns = keys.map((key, i) => ({
    heading: c.say(`disposal-col-${key}`),
    align: 'words' as const,
    width_mm: widths[i]!,
  }))
  const rows = Array.from({ length: count }, () => keys.map(() => ''))
  return [headed(c, c.say('disposal-log')), ...tabled(c, { columns, rows })]
}

/** What a dumped tank holds, when it is due, and where it may go. */
export function disposalSheet(c: Context): Drafted {
  if (c.plan.feed === undefined) return null
  const { batch } = c.facts.nutrients
  if (!isKnown(batch)) return { needs: [...new Set(batch.needs)] }
  const title = c.say('disposal-title')
  const told = [...holds(c, batch.known), ...when(c), ...where(c), ...sanitising(c)]
  const used_mm = told.reduce((sum, p) => sum + p.height_mm, 0)
  return {
    pages: flowed(c, [...told, ...log(c, used_mm)]).map(
      (drawing, i): Draft => ({
        id: 'disposal',
        title: i === 0 ? title : c.say('continued', { title }),
        subtitle: c.say('disposal-sub'),
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
