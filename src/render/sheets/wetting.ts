import { type WettingFacts, wettingCures } from '../../disciplines/hydraulics/index.ts'
import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import { quantity } from '../../kernel/units.ts'
import { orNull } from '../../plan/known.ts'
import type { Drawing, Point } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { actions, paragraph } from '../paper/words.ts'
import { wettingKey, wettingMapView, wettingOnWall } from '../views/wetting-map.ts'
import { heightOf, topLeft, widthOf } from './compose.ts'
import type { Context, Draft } from './context.ts'
import { caption, numbers } from './figure.ts'
import { fittingScale } from './scale.ts'

const WORDS_mm = 60
/** Rows of what the marks mean. */
const KEY_mm = 41
const BETWEEN_mm = 12
const BESIDE_mm = 10
/** Caption, and the distributor's holes over the column. */
const ABOVE_mm = 13
/** A number hangs under the lowest site. */
const SIDE_mm = 3

type Change = ReturnType<typeof wettingCures>[number]

function cureText(c: Context, { what, from, to }: Change): string {
  const figure = (n: number): string => {
    if (what === 'count') return String(n)
    return what === 'flow_m3_s' ? c.shown(quantity(n, 'm3_s')) : c.angle(n)
  }
  return c.say(`cure-${what}`, { from: figure(from), to: figure(to) })
}

/** How long plugs that only drops reach are wetted by hand. */
function untilText(c: Context, { rootGap_m, rootWeeks }: WettingFacts): string {
  if (rootGap_m === null || rootWeeks === null) return c.say('act-wet-drops-cup')
  const weeks = [rootWeeks.low, rootWeeks.high].map((w) => String(Math.round(w)))
  return c.say('act-wet-drops', { gap: c.length(rootGap_m), from: weeks[0]!, to: weeks[1]! })
}

/** What the map says, what would wet the rest, and the test with paper. */
function words(c: Context, facts: WettingFacts, at: Point, width_mm: number): Drawing {
  const all = facts.asDrawn.length
  const missed = (r: { readonly low: number; readonly high: number }) =>
    c.say('of-sites', { n: r.low === r.high ? String(r.low) : `${r.low}–${r.high}`, m: String(all) })
  const key = wettingKey(c.words.waterPath, wettingOnWall(facts))
  const list = numbers({
    at: [at[0], at[1] - KEY_mm],
    width_mm,
    heading: c.say('num-missed'),
    rows: [
      [c.say('figure-drawn'), missed(facts.dry)],
      [worstName(c, facts), missed(facts.dryAtWorst)],
    ],
  })
  const only = (n: number) => missed({ low: n, high: n })
  const drops = numbers({
    at: [at[0], at[1] - KEY_mm - list.height_mm - 5],
    width_mm,
    heading: c.say('num-drops'),
    rows:
      facts.byDrops + facts.byDropsAtWorst === 0
        ? []
        : [
            [c.say('figure-drawn'), only(facts.byDrops)],
            [worstName(c, facts), only(facts.byDropsAtWorst)],
          ],
  })
  const cures = facts.dryAtWorst.high + facts.byDropsAtWorst === 0 ? null : wettingCures(c.plan, facts)
  const text =
    cures === null
      ? c.say('wet-all')
      : cures.length === 0
        ? c.say('wet-no-cure')
        : [c.say('wet-cures'), ...cures.map((x) => cureText(c, x))]
            .join(' ')
            .replace(/: (.*)$/, (_, rest: string) => `: ${rest}.`)
  const y = at[1] - KEY_mm - list.height_mm - 5 - (drops.height_mm === 0 ? 0 : drops.height_mm + 5)
  const said = paragraph({ at: [at[0], y], width_mm, text })
  const acts = actions({
    at: [at[0], y - said.height_mm - 5],
    width_mm,
    lines: [
      c.say('act-wet-level'),
      c.say('act-wet-strips'),
      ...(facts.byDrops + facts.byDropsAtWorst > 0 ? [untilText(c, facts)] : []),
      c.say('act-wet-note'),
    ],
  })
  return [...moved(key, [at[0], at[1] - 2.6]), ...list.drawing, ...drops.drawing, ...said.drawing, ...acts.drawing]
}

const worstName = (c: Context, facts: WettingFacts): string =>
  c.say('figure-worst', { lean: c.angle(facts.lean_rad), clogged: c.shown(quantity(facts.cloggedShare, 'share')) })

function maps(
  c: Context,
  facts: WettingFacts,
  layout: LayoutFacts,
): { readonly drawing: Drawing; readonly right: number; readonly reduction: number } {
  const { body, drawing: clear } = c.room
  const [left, top] = topLeft(c)
  const { ratio, reduction } = fittingScale({
    width_m: layout.circumference_m,
    height_m: layout.columnLength_m,
    room: {
      width_mm: (widthOf(clear) - WORDS_mm - BESIDE_mm - BETWEEN_mm) / 2 - SIDE_mm,
      height_mm: heightOf(body) - ABOVE_mm - 8,
    },
    display: c.display,
  })
  const width = layout.circumference_m * ratio
  const foot = top - ABOVE_mm - layout.columnLength_m * ratio
  const second = left + SIDE_mm + width + BETWEEN_mm
  const one = (at: 'asDrawn' | 'worst', x: number, name: string): Drawing => [
    ...moved(wettingMapView({ facts, layout, at, ratio }), [x, foot]),
    ...caption([x - SIDE_mm, top - 3], name),
  ]
  return {
    drawing: [...one('asDrawn', left + SIDE_mm, c.say('map-drawn')), ...one('worst', second, c.say('map-worst'))],
    right: second + width,
    reduction,
  }
}

/** Which sites get water: as drawn, and at the worst that the plan allows. */
export function wettingPages(c: Context): readonly Draft[] {
  const facts = orNull(c.facts.hydraulics.wetting)
  const layout = orNull(c.facts.layout)
  if (facts === null || layout === null || facts.asDrawn.length === 0) return []
  const { drawing, right, reduction } = maps(c, facts, layout)
  const [, top] = topLeft(c)
  const at: Point = [right + BESIDE_mm, top]
  return [
    {
      id: 'water',
      title: c.say('wetting-title'),
      subtitle: c.say('wetting-sub', {
        flow: c.shown(quantity(facts.flow_m3_s, 'm3_s')),
        holes: String(facts.holes.count),
      }),
      scale: c.say('at-scale', { n: String(reduction) }),
      drawing: [...drawing, ...words(c, facts, at, c.room.drawing.right - at[0])],
    },
  ]
}
