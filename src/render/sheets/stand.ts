import type { TippingFacts } from '../../disciplines/structure/index.ts'
import { anyPriced, type DayFacts } from '../../disciplines/water/index.ts'
import { band, type Quantity, quantity } from '../../kernel/units.ts'
import { orNull } from '../../plan/known.ts'
import { shownText, telling } from '../display.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing } from '../drawing/primitives.ts'
import { actions, paragraph } from '../paper/words.ts'
import { dayCourse } from '../views/day-course.ts'
import { isWeighedByAge, tippingChart } from '../views/tipping.ts'
import { hung, topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { coolingPages } from './cooling.ts'
import { caption, needsOf, numbers } from './figure.ts'

const TIPPING = { width_mm: 94, height_mm: 56 }
/** The day takes what is left of the sheet, between these heights. */
const DAY = { width_mm: 94, least_mm: 58, most_mm: 96 }
const AXIS_mm = 9
const BESIDE_mm = 8
const CAPTION_mm = 7
/** Figures over and under a chart. */
const FEET_mm = 15
const ABOVE_DEEDS_mm = 6

type Row = readonly [name: string, figure: string | null]

const gustText = (c: Context, gust_m_s: number): string =>
  shownText(quantity(gust_m_s, 'm_s'), telling('wind', c.display))

export function tippingRows(c: Context, t: TippingFacts): readonly Row[] {
  const { mass, floor } = c.facts.structure
  const shown = (n: number | null | undefined, unit: Quantity['unit']) =>
    n === null || n === undefined ? null : c.shown(quantity(n, unit))
  const times = (n: number | null) =>
    n === null ? null : c.say('times', { n: n.toFixed(1).replace('.', c.display.decimal) })
  const windy = t.gust_m_s > 0
  const weak = t.worst.ratio !== null && t.worst.ratio < t.wanted
  const masses = orNull(mass)
  const strap_N = Math.max(t.strap.wind_N, t.strap.people_N)
  return [
    [c.say('num-mass-full'), shown(masses?.full_kg, 'kg')],
    [c.say('num-mass-low'), shown(masses?.low_kg, 'kg')],
    [c.say('num-ratio-full'), windy ? times(t.atFill.ratio) : null],
    [c.say('num-ratio-low'), windy ? times(t.atLow.ratio) : null],
    [c.say('num-falls'), windy ? gustText(c, t.worst.falls_m_s) : null],
    [c.say('num-child'), c.plan.place?.children === true || !windy ? times(t.child.low) : null],
    [c.say('num-strap'), strap_N > 0 ? shown(strap_N, 'N') : null],
    [c.say('num-strap-at'), strap_N > 0 ? c.shown(quantity(t.strap.height_m, 'm')) : null],
    [c.say('num-ballast'), weak ? shown(t.ballast_kg, 'kg') : null],
    [c.say('num-base'), weak ? c.shown(quantity(t.baseNeeded_m, 'm')) : null],
    [c.say('num-floor'), shown(orNull(floor)?.judged.load_kg_m2, 'kg_m2')],
  ]
}

export function dayRows(c: Context, d: DayFacts): readonly Row[] {
  const oxygen = orNull(d.oxygen)
  const warm = d.hotLow.warmer_s
  const cold = [d.coldFull.course.lowest_C, d.coldLow.course.lowest_C]
  const coldest = band(Math.min(...cold), Math.max(...cold), 'C')
  return [
    [c.say('num-warmest'), c.shown(quantity(d.hotLow.course.highest_C, 'C'))],
    [c.say('num-warmest-full'), c.shown(quantity(d.hotFull.course.highest_C, 'C'))],
    [c.say('num-warmer'), warm > 0 ? c.shown(quantity(warm, 's')) : null],
    [c.say('num-coldest'), c.shown(coldest)],
    [c.say('num-oxygen'), oxygen === null ? null : c.shown(quantity(oxygen.saturation_g_m3, 'g_m3'))],
  ]
}

const coolingRows = (c: Context, d: DayFacts): readonly Row[] =>
  d.cooling
    .filter((x) => x.cooler_K >= 0.1)
    .map((x): Row => [c.words.phrases[`cooling-${x.id}`] ?? x.id, c.shown(quantity(x.cooler_K, 'K'))])

interface Part {
  readonly drawing: Drawing
  readonly low: number
}

/** What the chart of tipping is drawn against. */
export const tippingCaption = (t: TippingFacts) => (isWeighedByAge(t) ? 'figure-tipping-own' : 'figure-tipping')

function standPart(c: Context, t: TippingFacts, top: number): Part {
  const { body } = c.room
  const chart = tippingChart({ facts: t, words: c.words.standCharts, display: c.display, ...TIPPING })
  const put = chart === null ? [] : hung(chart, [body.left, top - CAPTION_mm])
  const width_mm =
    chart === null
      ? widthOf(c.room.drawing) * 0.55
      : c.room.drawing.right - body.left - AXIS_mm - TIPPING.width_mm - BESIDE_mm
  const left = chart === null ? body.left : c.room.drawing.right - width_mm
  const list = numbers({ at: [left, top], width_mm, heading: c.say('key-numbers'), rows: tippingRows(c, t) })
  const own =
    chart === null
      ? paragraph({
          at: [left, top - list.height_mm - 4],
          width_mm,
          text: c.say(t.gust_m_s > 0 ? 'stand-own' : 'stand-still'),
        })
      : null
  const low = Math.min(bounds(put)?.bottom ?? top, top - list.height_mm - (own === null ? 0 : own.height_mm + 4))
  return {
    drawing: [
      ...(chart === null ? [] : caption([body.left, top - 3], c.say(tippingCaption(t)))),
      ...put,
      ...list.drawing,
      ...(own?.drawing ?? []),
    ],
    low,
  }
}

/** The day's chart, as high as the room allows, and what cools it. */
function dayPart(c: Context, d: DayFacts, top: number, floor: number): Part {
  const { body, drawing: clear } = c.room
  const height_mm = Math.min(DAY.most_mm, Math.max(DAY.least_mm, top - floor - CAPTION_mm - FEET_mm))
  const size = { width_mm: DAY.width_mm, height_mm }
  const chart = dayCourse({ facts: d, words: c.words.standCharts, display: c.display, ...size })
  const put = hung(chart, [body.left, top - CAPTION_mm])
  const left = body.left + AXIS_mm + DAY.width_mm + BESIDE_mm
  const width_mm = clear.right - left
  const list = numbers({ at: [left, top], width_mm, heading: c.say('key-numbers'), rows: dayRows(c, d) })
  const below = top - list.height_mm - 6
  const cooling = numbers({
    at: [left, below],
    width_mm,
    heading: c.say(anyPriced(d.cooling) ? 'num-best-buy' : 'num-cooling'),
    // Who is cool enough is not advised to cool.
    rows: d.hotLow.warmer_s > 0 ? coolingRows(c, d) : [],
  })
  return {
    drawing: [
      ...caption([body.left, top - 3], c.say(`figure-day-${c.facts.water.sky.kind}`)),
      ...put,
      ...list.drawing,
      ...cooling.drawing,
    ],
    low: bounds(put)!.bottom,
  }
}

function deeds(c: Context, t: TippingFacts | null, d: DayFacts | null): readonly string[] {
  const refill = t?.refill_m3 ?? null
  const low = t?.atLow.level.volume_m3 ?? 0
  const strap = t !== null && Math.max(t.strap.wind_N, t.strap.people_N) > 0
  return [
    ...(strap
      ? [
          c.say('stand-strap', {
            height: c.shown(quantity(t.strap.height_m, 'm')),
            load: c.shown(quantity(Math.max(t.strap.wind_N, t.strap.people_N), 'N')),
          }),
        ]
      : []),
    ...(refill !== null && refill > low ? [c.say('stand-refill', { volume: c.shown(quantity(refill, 'm3')) })] : []),
    ...(d === null
      ? []
      : [c.say(`day-note-${c.facts.water.sky.kind}`, { unit: c.display.lengths === 'in' ? '°F' : '°C' })]),
  ]
}

/** How it stands in the wind, and how warm its water gets. */
export function standSheet(c: Context): Drafted {
  const { structure, day } = c.facts
  const t = orNull(structure.tipping)
  const d = day === null ? null : orNull(day)
  if (t === null && d === null) {
    const needs = [structure.tipping, ...(day === null ? [] : [day])].flatMap(needsOf)
    return { needs: [...new Set(needs)] }
  }
  const [left, top] = topLeft(c)
  const stand = t === null ? { drawing: [], low: top } : standPart(c, t, top)
  const lines = deeds(c, t, d)
  const width_mm = AXIS_mm + DAY.width_mm
  const high = actions({ at: [left, top], width_mm, lines }).height_mm
  const heatTop = stand.low - (t === null ? 0 : 9)
  const heat =
    d === null ? { drawing: [], low: stand.low } : dayPart(c, d, heatTop, c.room.body.bottom + high + ABOVE_DEEDS_mm)
  const acts = actions({ at: [left, heat.low - ABOVE_DEEDS_mm], width_mm, lines })
  const mass = orNull(structure.mass)
  const gust = c.plan.place?.gust_m_s
  const slots =
    mass === null ? null : { mass: c.shown(quantity(mass.full_kg, 'kg')), low: c.shown(quantity(mass.low_kg, 'kg')) }
  return {
    pages: [
      {
        id: 'stand',
        title: c.say('stand-title'),
        subtitle:
          slots === null
            ? ''
            : gust === undefined
              ? c.say('stand-sub-still', slots)
              : c.say('stand-sub', { ...slots, gust: gustText(c, gust) }),
        scale: c.say('no-scale'),
        drawing: [...stand.drawing, ...heat.drawing, ...acts.drawing],
      },
      ...(d === null ? [] : coolingPages(c, d)),
    ],
  }
}
