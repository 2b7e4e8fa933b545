import { band, type Quantity, quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { shownText, telling } from '../display.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Point } from '../drawing/primitives.ts'
import { actions, paragraph } from '../paper/words.ts'
import { levels, tankWidth } from '../views/levels.ts'
import { pumpCurve } from '../views/pump-curve.ts'
import { hung, topLeft } from './compose.ts'
import type { Context, Draft, Drafted } from './context.ts'
import { evenPages } from './even.ts'
import { caption, needsOf, numbers } from './figure.ts'
import { fittingScale } from './scale.ts'
import { weekPages } from './water-weeks.ts'
import { wettingPages } from './wetting.ts'

const CHART = { width_mm: 94, height_mm: 58 }
/** Left of the axis stand its figures. */
const AXIS_mm = 9
const BESIDE_mm = 8
const CAPTION_mm = 7
const TANK = { width_mm: 46, height_mm: 56 }

type Row = readonly [name: string, figure: string | null]

const liftText = (c: Context, lift_m: number): string => shownText(quantity(lift_m, 'm'), telling('head', c.display))

function flowRows(c: Context): readonly Row[] {
  const { hydraulics, reservoir } = c.facts
  const shown = (q: Quantity | null | undefined) => (q === null || q === undefined ? null : c.shown(q))
  const flow = orNull(hydraulics.flow)
  const distributor = orNull(hydraulics.distributor)
  const held = orNull(hydraulics.held)
  const tank = orNull(reservoir)
  const range = (r: { low: number; high: number } | null | undefined, unit: Quantity['unit']) =>
    r === null || r === undefined ? null : band(r.low, r.high, unit)
  const one = (n: number | null | undefined, unit: Quantity['unit']) =>
    n === null || n === undefined ? null : quantity(n, unit)
  const usable = tank === null ? null : orNull(tank.usable_m3)
  const needed = c.plan.riser?.neededFlow_m3_s
  const lift_m = orNull(hydraulics.lift)?.fromLow_m
  return [
    [c.say('num-column'), shown(range(flow?.least_m3_s, 'm3_s'))],
    [c.say('num-fill'), shown(range(flow?.leastAtFill_m3_s, 'm3_s'))],
    [c.say('num-needed'), shown(one(needed, 'm3_s'))],
    [c.say('num-lift'), lift_m === undefined ? null : liftText(c, lift_m)],
    [c.say('num-speed'), shown(range(flow?.riserSpeed_m_s, 'm_s'))],
    [c.say('num-head'), shown(one(distributor?.neededHead_m, 'm'))],
    [c.say('num-full'), shown(one(distributor?.full_m3_s, 'm3_s'))],
    [c.say('num-back'), shown(range(held?.back_m3, 'm3'))],
    [c.say('num-usable'), shown(usable === null || usable <= 0 ? null : one(usable, 'm3'))],
    [c.say('num-days'), tank === null ? null : shown(orNull(tank.days))],
    [c.say('num-dry'), shown(range(hydraulics.stop.worst.dry_s, 's'))],
  ]
}

/** What the two curves leave open, and the test that tells. */
function pumpWords(c: Context): { readonly lines: readonly string[]; readonly read: string } {
  const flow = orNull(c.facts.hydraulics.flow)
  const tested = orNull(c.facts.hydraulics.pump)?.tests.some((t) => t.believable) ?? false
  const total = flow === null ? '' : c.shown(band(flow.total_m3_s.low, flow.total_m3_s.high, 'm3_s'))
  const outlet = c.plan.riser?.outletHeight_m
  const inches = c.display.lengths === 'in'
  return {
    read: flow === null ? '' : c.say(tested ? 'read-tested' : 'read-band', { flow: total }),
    lines: [
      c.say('act-bucket', { height: outlet === undefined ? '________' : c.length(outlet) }),
      c.say('act-bucket-read', { unit: inches ? 'US gal' : 'L', length: c.unit }),
      c.say(tested ? 'act-bucket-again' : 'act-bucket-type'),
    ],
  }
}

interface Part {
  readonly drawing: Drawing
  readonly low: number
}

/** The pump's chart; returns how far down it reaches. */
function pumpPart(c: Context, top: number): Part {
  const { left } = c.room.body
  const chart = pumpCurve({
    facts: c.facts.hydraulics,
    needed_m3_s: c.plan.riser?.neededFlow_m3_s ?? null,
    words: c.words.waterPath,
    display: c.display,
    ...CHART,
  })
  if (chart === null) return { drawing: [], low: top }
  const put = hung(chart, [left, top - CAPTION_mm])
  return { drawing: [...caption([left, top - 3], c.say('figure-pump')), ...put], low: bounds(put)!.bottom - 10 }
}

/** The tank with its lines, and what to do with them. */
function tankPart(c: Context, top: number): Part {
  const facts = orNull(c.facts.reservoir)
  if (facts === null) return { drawing: [], low: top }
  const { left } = c.room.body
  const { ratio, reduction } = fittingScale({
    width_m: tankWidth(facts),
    height_m: facts.tank.depth_m,
    room: TANK,
    display: c.display,
  })
  const cover_m = c.plan.pump?.minimumDepth_m ?? null
  const put = hung(levels({ facts, cover_m, words: c.words.waterPath, display: c.display, ratio }), [
    left,
    top - CAPTION_mm,
  ])
  const stop = orNull(facts.afterStop)
  const lines = [
    ...(isKnown(facts.tank.fill) ? [c.say('act-lines-draw')] : []),
    ...(stop === null ? [] : [c.say('act-lines-stop', { level: c.length(stop.high_m) })]),
  ]
  const below = bounds(put)!.bottom - 8
  const acts = actions({ at: [left, below], width_mm: AXIS_mm + CHART.width_mm, lines })
  const scale = c.say('at-scale', { n: String(reduction) })
  return {
    drawing: [...caption([left, top - 3], c.say('figure-levels'), scale), ...put, ...acts.drawing],
    low: below - acts.height_mm,
  }
}

function firstPage(c: Context): Draft | null {
  const { body, drawing: clear } = c.room
  const [, top] = topLeft(c)
  const pump = pumpPart(c, top)
  const tank = tankPart(c, pump.low)
  if (pump.drawing.length + tank.drawing.length === 0) return null
  const left = body.left + AXIS_mm + CHART.width_mm + BESIDE_mm
  const width_mm = clear.right - left
  const { read, lines } = pumpWords(c)
  const said = paragraph({ at: [left, top], width_mm: body.right - left, text: read })
  const actsTop = top - said.height_mm - (read === '' ? 0 : 3)
  const acts = actions({ at: [left, actsTop], width_mm: body.right - left, lines })
  const at: Point = [left, actsTop - acts.height_mm - 7]
  const list = numbers({ at, width_mm, heading: c.say('key-numbers'), rows: flowRows(c) })
  const lift = orNull(c.facts.hydraulics.lift)
  const needed = c.plan.riser?.neededFlow_m3_s
  return {
    id: 'water',
    title: c.say('water-title'),
    subtitle:
      lift === null || needed === undefined
        ? c.say('water-sub-plain')
        : c.say('water-sub', {
            lift: liftText(c, lift.fromLow_m),
            needed: c.shown(quantity(needed, 'm3_s')),
          }),
    scale: c.say('no-scale'),
    drawing: [...pump.drawing, ...tank.drawing, ...said.drawing, ...acts.drawing, ...list.drawing],
  }
}

/** Pump and levels on one page, the sites that the water meets on the next. */
export function waterSheet(c: Context): Drafted {
  const { hydraulics, reservoir } = c.facts
  const first = firstPage(c)
  const even = evenPages(c, orNull(hydraulics.flow))
  const pages = [...(first === null ? [] : [first]), ...even, ...wettingPages(c), ...weekPages(c)]
  if (pages.length > 0) return { pages }
  const needs = [hydraulics.flow, hydraulics.wetting, reservoir].flatMap(needsOf)
  return { needs: [...new Set(needs)] }
}
