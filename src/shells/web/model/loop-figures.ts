import { inUnit } from '../../../kernel/quantity-text.ts'
import type { Quantity } from '../../../kernel/units.ts'
import { quantity } from '../../../kernel/units.ts'
import type { Pipe } from '../../../plan/pipe.ts'
import { type Display, shownText, telling } from '../../../render/display.ts'
import { drillText } from '../../../render/drill.ts'
import { choiceName, firstWords, say } from '../words.ts'
import type { Told } from '../workers/protocol.ts'
import type { PartId } from './parts.ts'
import { ofField, type Reason } from './reasons.ts'

/** The one figure under a stop of the loop, with its why; null where the plan tells nothing of it. */
export interface StopFigure {
  readonly text: string
  readonly why: Reason
}

type FigureOf = (e: Told, t: (q: Quantity) => string, display: Display) => StopFigure | null

const named = (choice: string | undefined): string | undefined =>
  choice === undefined ? undefined : choiceName(choice)

const text = (parts: readonly (string | null | undefined)[], path: string): StopFigure | null => {
  const told = parts.filter((p): p is string => typeof p === 'string' && p !== '')
  return told.length === 0 ? null : { text: told.join(', '), why: ofField(path) }
}

const length = (m: number | undefined, t: (q: Quantity) => string): string | null =>
  m === undefined ? null : t(quantity(m, 'm'))

/** Outside and wall of a pipe, as a maker says them. */
const pipeSize = (pipe: Pipe | undefined, { lengths, decimal, units }: Display): string | null => {
  const inches = (m: number): string => String(Number(inUnit(m, 'm', 'in').toFixed(2))).replace('.', decimal)
  if (pipe !== undefined && lengths === 'in')
    return `${inches(pipe.outside_m)} × ${inches(pipe.wall_m)} ${units['in'] ?? 'in'}`
  const mm = (m: number): string => String(Number((m * 1000).toFixed(1))).replace('.', firstWords().decimal)
  return pipe === undefined ? null : `${mm(pipe.outside_m)} × ${mm(pipe.wall_m)}`
}

/** A metre and more in metres, as hose is sold and lift is printed. */
const long = (m: number | undefined, t: (q: Quantity) => string): string | null => {
  const text = length(m, t)
  return m !== undefined && m >= 1 && text?.endsWith(' mm')
    ? `${String(Number(m.toFixed(2))).replace('.', firstWords().decimal)} m`
    : text
}

const figures: Readonly<Partial<Record<PartId, FigureOf>>> = {
  distributor: ({ plan: { distributor: d } }, _t, display) =>
    d?.holes === undefined || d.hole_m === undefined
      ? text([named(d?.kind)], 'distributor/kind')
      : text([say('holes-of', { count: d.holes, size: drillText(d.hole_m, display) })], 'distributor/hole'),
  column: ({ plan: { column: c } }, t, display) =>
    text([pipeSize(c?.pipe, display), length(c?.length_m, t)], 'column/length'),
  stubs: ({ plan: { column: c }, facts }, _t, display) => {
    const sites = 'known' in facts.layout ? facts.layout.known.sites.length : null
    if (sites === null) return text([pipeSize(c?.stub?.pipe, display)], 'column/stub/pipe')
    const of = pipeSize(c?.stub?.pipe, display)
    return text([of ? say('sites-of', { count: sites, size: of }) : say('sites', { count: sites })], 'column/stub/pipe')
  },
  cups: ({ plan: { column: c } }, t) =>
    text(
      [length(c?.cup?.rim_m ?? c?.cup?.body_m, t)],
      c?.cup?.rim_m === undefined ? 'column/cup/body' : 'column/cup/rim',
    ),
  roots: ({ plan: { crops } }) =>
    text(
      (crops ?? []).map((c) => named(c.crop)),
      'crops/0/crop',
    ),
  drain: ({ plan }) => text([named(plan.column?.base?.kind)], 'column/base/kind'),
  water: ({ plan, facts }, t) => {
    const names = (plan.water?.sources ?? []).filter((s) => s.share !== 0).map((s) => s.name)
    const { alkalinity_eq_m3: eq } = facts
    const alkalinity = eq === null ? null : t(quantity(eq, 'eq_m3'))
    return text([names.length === 1 ? names[0] : null, alkalinity], 'water/sources')
  },
  shelf: ({ plan: { feed } }) =>
    text([feed?.shelf === undefined ? null : say('on-shelf', { count: feed.shelf.length })], 'feed/shelf'),
  batch: ({ plan: { feed }, facts }, t) => {
    const strength = facts.conductivity_S_m
    const shown = strength === null ? null : t(quantity((strength.low + strength.high) / 2, 'S_m'))
    return text([shown ?? (feed?.batch_m3 === undefined ? null : t(quantity(feed.batch_m3, 'm3')))], 'feed/batch')
  },
  reservoir: ({ plan: { reservoir: r } }, t) =>
    r?.fillVolume_m3 !== undefined && r.lowVolume_m3 !== undefined
      ? text(
          [say('full-low', { full: t(quantity(r.fillVolume_m3, 'm3')), low: t(quantity(r.lowVolume_m3, 'm3')) })],
          'reservoir/fillVolume',
        )
      : text([r?.container?.label], 'reservoir/container'),
  pump: ({ plan: { pump: p } }, t, display) =>
    text(
      [
        p?.power_W === undefined ? null : t(quantity(p.power_W, 'W')),
        long(p?.maxHead_m, (q) => brief(q, telling('head', display))),
      ],
      'pump/maxHead',
    ),
  riser: ({ plan: { riser: r } }, t) => text([length(r?.bore_m, t), long(r?.length_m, t)], 'riser/bore'),
}

/** Round figures without the nought that a drawing would carry: 3 mm, not 3.0 mm. */
const brief = (q: Quantity, display: Display): string => shownText(q, display).replace(/[.,]0(?= )/, '')

export const stopFigure = (part: PartId, e: Told, display: Display): StopFigure | null =>
  figures[part]?.(e, (q) => brief(q, display), display) ?? null
