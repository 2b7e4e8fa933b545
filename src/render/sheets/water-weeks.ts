import type { RootFacts } from '../../disciplines/hydraulics/index.ts'
import { band, quantity } from '../../kernel/units.ts'
import { orNull } from '../../plan/known.ts'
import { rootPractice } from '../../tables/roots.ts'
import { bounds } from '../drawing/bounds.ts'
import { actions, paragraph } from '../paper/words.ts'
import { rootsByWeek } from '../views/roots-by-week.ts'
import { stopClockTable } from '../views/stop-clock.ts'
import { hung, topLeft } from './compose.ts'
import type { Context, Draft } from './context.ts'
import { caption, numbers } from './figure.ts'

const CHART = { width_mm: 94, height_mm: 58 }
const AXIS_mm = 9
const BESIDE_mm = 8
const CAPTION_mm = 7
const BELOW_mm = 12

const HALF = rootPractice.rows.boreTaken.low

/** When the bore is half full, and how full it is when the oldest plants are cut. */
export function rootRows(c: Context, roots: RootFacts): readonly (readonly [name: string, figure: string | null])[] {
  const { halfFull_d, atOldest, oldest_d, filmShare, boreNeeded_m } = roots
  return [
    [c.say('num-roots-half'), c.shown(band(halfFull_d.low, halfFull_d.high, 'd'))],
    [c.say('num-roots-cut'), c.shown(quantity(oldest_d, 'd'))],
    [c.say('num-roots-then'), c.shown(band(atOldest.low, atOldest.high, 'share'))],
    [c.say('num-roots-film'), c.shown(quantity(filmShare, 'share'))],
    [c.say('num-roots-bore'), atOldest.high > HALF ? c.shown(quantity(boreNeeded_m, 'm')) : null],
  ]
}

/** What is done about roots, week by week. */
export function rootDeeds(c: Context, roots: RootFacts): readonly string[] {
  const crop = roots.heaviest === null ? null : (c.words.choices[roots.heaviest] ?? roots.heaviest)
  return [
    c.say('act-roots-look', { ring: String(roots.ring) }),
    ...(crop === null ? [] : [c.say('act-roots-swap', { crop })]),
    c.say('act-roots-cut'),
  ]
}

/** What runs week by week: roots that fill the bore, and how long plants hold out without water. */
export function weekPages(c: Context): readonly Draft[] {
  const roots = orNull(c.facts.hydraulics.roots)
  if (roots === null) return []
  const { drawing: clear } = c.room
  const [left, top] = topLeft(c)
  const chart = hung(rootsByWeek({ facts: roots, words: c.words.waterPath, ...CHART }), [left, top - CAPTION_mm])
  const beside = left + AXIS_mm + CHART.width_mm + BESIDE_mm
  const list = numbers({
    at: [beside, top],
    width_mm: clear.right - beside,
    heading: c.say('key-numbers'),
    rows: rootRows(c, roots),
  })
  const deeds = actions({
    at: [beside, top - list.height_mm - 6],
    width_mm: clear.right - beside,
    lines: rootDeeds(c, roots),
  })
  const low = Math.min(bounds(chart)?.bottom ?? top, top - list.height_mm - 6 - deeds.height_mm)
  const clockTop = low - BELOW_mm
  const clock = stopClockTable({
    facts: c.facts.hydraulics.stop,
    words: c.words.waterPath,
    display: c.display,
    at: [left, clockTop - CAPTION_mm + 3],
    width_mm: AXIS_mm + CHART.width_mm,
  })
  const said = paragraph({
    at: [beside, clockTop],
    width_mm: clear.right - beside,
    text: c.say('clock-how'),
  })
  const acts = actions({
    at: [beside, clockTop - said.height_mm - 4],
    width_mm: clear.right - beside,
    lines: [c.say('act-clock-try'), c.say('act-clock-note')],
  })
  return [
    {
      id: 'water',
      title: c.say('weeks-title'),
      subtitle: c.say('weeks-sub'),
      scale: c.say('no-scale'),
      drawing: [
        ...caption([left, top - 3], c.say('figure-roots')),
        ...chart,
        ...list.drawing,
        ...deeds.drawing,
        ...caption([left, clockTop], c.say('figure-clock')),
        ...clock.drawing,
        ...said.drawing,
        ...acts.drawing,
      ],
    },
  ]
}
