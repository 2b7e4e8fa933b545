import { type Quantity, quantity, type Unit } from '../../kernel/units.ts'
import type { Pipe } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { fixings } from '../../tables/consumables.ts'
import { residualCurrents, safetyLengths } from '../../tables/exposure.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { CutsFacts, MaterialCuts } from '../cuts/index.ts'
import { hoseEnds } from './equations.ts'
import { type Part, part } from './part.ts'
import { strapParts } from './strap-parts.ts'
import { hoseSubstitutes, pipeSubstitutes } from './substitutes.ts'

/** Counts that every part is reckoned from. */
export interface Numbers {
  readonly columns: number
  readonly tanks: number
  /** Sites that get a plant, all columns together. */
  readonly planted: number
  /** Sites of all columns, capped ones too. */
  readonly sites: number
  readonly strap: boolean
  /** What gust and people pull at most, where it is known and the plan names no strap. */
  readonly strap_N: number | null
}

const pieces = (n: number): Quantity => quantity(n, 'count')
const size = (value: number | undefined | null, unit: Unit = 'm'): Quantity | null =>
  value === undefined || value === null ? null : quantity(value, unit)

/** Pipe by whole lengths where a cutting plan tells how many, by the metre where none does. */
function pipePart(id: string, pipe: Pipe | undefined, cuts: MaterialCuts | undefined, at: string): Part[] {
  if (pipe === undefined || cuts === undefined || cuts.pieces.length === 0) return []
  const plan = cuts.plan
  const whole = plan !== null && plan.sticks.length > 0
  const lengths = whole ? [...new Set(plan.sticks.map((s) => s.length_m))] : []
  return [
    part(id, 'pipe', {
      label: pipe.label,
      sizes: {
        outside: size(pipe.outside_m),
        wall: size(pipe.wall_m),
        each: lengths.length === 1 ? size(lengths[0]) : null,
      },
      count: whole ? pieces(plan.sticks.length) : quantity(cuts.pieces_m, 'm'),
      standard: pipe.standard,
      substitutes: pipeSubstitutes(pipe),
      unit_money: whole && plan.price_money !== null ? plan.price_money / plan.sticks.length : null,
      price_money: whole && plan.status !== 'short-of-stock' ? plan.price_money : null,
      priceAt: at,
    }),
  ]
}

export function pipeParts(plan: Plan, cuts: CutsFacts): Part[] {
  const of = (kind: MaterialCuts['of']) => cuts.materials.find((m) => m.of === kind)
  return [
    ...pipePart('column-pipe', plan.column?.pipe, of('column'), 'stock/lengths'),
    ...pipePart('stub-pipe', plan.column?.stub?.pipe, of('stub'), 'stock/lengths'),
  ]
}

/** The return pipe by whole lengths or by the metre, and the couplings that join its pieces. */
function returnParts(n: Numbers, m: MaterialCuts | undefined): Part[] {
  if (m === undefined || m.pieces.length === 0) return []
  const cut = m.plan !== null && m.plan.sticks.length > 0 ? m.plan : null
  const couplings = (m.pieces[0]?.count ?? 0) - n.tanks
  return [
    part('return-pipe', 'pipe', {
      sizes: { bore: size(m.bore_m), each: size(cut?.sticks[0]?.length_m) },
      count: cut === null ? quantity(m.pieces_m, 'm') : pieces(cut.sticks.length),
      unit_money: cut === null || cut.price_money === null ? null : cut.price_money / cut.sticks.length,
      price_money: cut?.price_money ?? null,
      priceAt: 'stock/lengths',
    }),
    ...(couplings > 0
      ? [part('coupling', 'fitting', { count: pieces(couplings), sizes: { bore: size(m.bore_m) } })]
      : []),
  ]
}

/** Hose by whole coils where the plan states them and cuts from them, else by the metre. */
function hosePart(plan: Plan, m: MaterialCuts, i: number): Part {
  const coils = m.plan !== null && m.plan.sticks.length > 0 ? m.plan : null
  const id = i === 0 ? 'hose' : `hose-${i + 1}`
  const common = {
    sizes: { bore: size(m.bore_m), each: coils === null ? null : size(coils.sticks[0]?.length_m) },
    substitutes: m.bore_m === null ? [] : hoseSubstitutes(m.bore_m),
    priceAt: 'prices/hosePerMetre',
  }
  return coils === null
    ? part(id, 'hose', { ...common, count: quantity(m.pieces_m, 'm'), unit_money: plan.prices?.hosePerMetre })
    : part(id, 'hose', {
        ...common,
        count: pieces(coils.sticks.length),
        unit_money: coils.price_money === null ? null : coils.price_money / coils.sticks.length,
        price_money: coils.price_money,
      })
}

/** Hose, clamps on every end of it, and the fittings that the plan lists. */
export function hoseParts(plan: Plan, n: Numbers, cuts: CutsFacts): Part[] {
  const { riser, prices } = plan
  if (riser === undefined) return []
  const perPump = Math.ceil(n.columns / n.tanks)
  const { branches } = riser
  const perTank =
    branches === undefined
      ? hoseEnds({ columns_count: perPump, header: riser.header !== undefined })
      : 2 + 2 * branches.length
  const ends = n.tanks * perTank
  const listed = (riser.fittings ?? []).filter(
    (f) => f.kind !== undefined && f.kind !== 'entrance' && f.kind !== 'exit',
  )
  const barbs = listed.reduce((sum, f) => sum + (f.kind === 'barb' ? (f.count ?? 1) : 0), 0) * n.tanks
  return [
    ...cuts.materials.filter((m) => m.of === 'hose').map((m, i) => hosePart(plan, m, i)),
    ...returnParts(
      n,
      cuts.materials.find((m) => m.of === 'return'),
    ),
    part('clamps', 'fixing', {
      count: pieces(Math.max(ends, barbs)),
      sizes: { bore: size(riser.drops?.bore_m ?? riser.bore_m) },
      spares: 'clamp',
      unit_money: prices?.clamp,
      priceAt: 'prices/clamp',
    }),
    ...listed.map((f) =>
      part(`fitting-${f.kind!.replace(' ', '-')}`, 'fitting', {
        count: pieces((f.count ?? 1) * n.tanks),
        sizes: { bore: size(f.bore_m ?? riser.bore_m) },
      }),
    ),
  ]
}

/** What each site and each column needs beside pipe. */
export function columnParts(plan: Plan, n: Numbers): Part[] {
  const { column, distributor, prices } = plan
  const outside_m = column?.pipe?.outside_m
  const method = column?.sites?.method
  const empty = n.sites - n.planted
  const cap = column?.cap
  return [
    part('cup', 'cup', {
      count: pieces(n.planted),
      sizes: { rim: size(column?.cup?.rim_m), body: size(column?.cup?.body_m), depth: size(column?.cup?.depth_m) },
      spares: 'cup',
      unit_money: prices?.cup,
      priceAt: 'prices/cup',
    }),
    ...(empty > 0 ? [part('site-cap', 'fitting', { count: pieces(empty), made: true })] : []),
    ...(method === 'fitting'
      ? [
          part('site-fitting', 'fitting', {
            count: pieces(Math.ceil(n.sites / (column?.fitting?.branches ?? 1))),
            sizes: { outside: size(outside_m) },
          }),
        ]
      : []),
    ...(cap === undefined || cap === 'none'
      ? []
      : [
          part('cap', 'fitting', {
            label: cap,
            count: pieces(n.columns),
            sizes: { outside: size(outside_m) },
            unit_money: prices?.cap,
            priceAt: 'prices/cap',
          }),
        ]),
    ...(distributor === undefined || distributor.kind === 'ring'
      ? []
      : [
          part('distributor', 'fitting', {
            label: distributor.kind ?? null,
            count: pieces(n.columns),
            sizes: { outside: size(distributor.diameter_m), depth: size(distributor.depth_m) },
            unit_money: prices?.distributor,
            priceAt: 'prices/distributor',
          }),
        ]),
  ]
}

/** Sheet that covers the tank with the land that a lid needs over its rim. */
function lidPart(plan: Plan, n: Numbers): Part[] {
  const { container, lidThickness_m } = plan.reservoir ?? {}
  if (container === undefined) return []
  const land_m = 2 * practiceLengths.rows['lid-land'].low_m
  const through = plan.column?.base?.kind !== 'own foot'
  const outside_m = plan.column?.pipe?.outside_m
  return [
    part('lid', 'tank', {
      count: pieces(n.tanks),
      sizes: {
        length: size(container.topLength_m + land_m),
        width: size(container.topWidth_m + land_m),
        thickness: size(lidThickness_m),
        columnHole:
          through && outside_m !== undefined ? size(outside_m + practiceLengths.rows['lid-hole'].low_m) : null,
        fillerHole: size(practiceLengths.rows['lid-filler'].low_m),
      },
      pricedWith: 'reservoir',
    }),
    part('mesh', 'fixing', {
      count: pieces(n.tanks),
      sizes: { mesh: size(safetyLengths.rows['insect-mesh'].limit_m) },
    }),
  ]
}

/** As it is printed on the device. */
const TRIPS = `${residualCurrents.rows['IEC-outdoors'].trips_A * 1000} mA`

export function tankParts(plan: Plan, n: Numbers): Part[] {
  const { reservoir, pump, prices } = plan
  return [
    ...(reservoir === undefined
      ? []
      : [
          part('reservoir', 'tank', {
            label: reservoir.container?.label ?? null,
            count: pieces(n.tanks),
            sizes: { depth: size(reservoir.container?.depth_m), fill: size(reservoir.fillVolume_m3, 'm3') },
            unit_money: prices?.reservoir,
            priceAt: 'prices/reservoir',
          }),
        ]),
    ...lidPart(plan, n),
    ...(pump === undefined
      ? []
      : [
          part('pump', 'pump', {
            label: pump.name?.trim() || null,
            count: pieces(n.tanks),
            sizes: {
              head: size(pump.maxHead_m),
              flow: size(pump.maxFlow_m3_s, 'm3_s'),
              power: size(pump.power_W, 'W'),
            },
            spares: 'pump',
            unit_money: prices?.pump,
            priceAt: 'prices/pump',
          }),
          ...((pump.supply ?? 'mains') === 'mains'
            ? [part('rcd', 'electrical', { count: pieces(n.tanks), label: TRIPS })]
            : []),
          ...(pump.timerOn_s === undefined ? [] : [part('timer', 'electrical', { count: pieces(n.tanks) })]),
          ...(pump.battery === undefined ? [] : [part('battery', 'electrical', { count: pieces(n.tanks) })]),
        ]),
  ]
}

export function standParts(plan: Plan, n: Numbers): Part[] {
  const { base, pipe } = plan.column ?? {}
  const { lamps, prices } = plan
  const times = (row: keyof typeof fixings.rows) => pieces(n.columns * fixings.rows[row].each_count)
  return [
    ...(base?.kind === 'through the lid'
      ? [
          part('base-ring', 'fitting', {
            count: pieces(n.columns),
            sizes: { outside: size(pipe?.outside_m), depth: size(base.ringDepth_m) },
            made: true,
          }),
        ]
      : []),
    ...(base?.kind === 'flange on the lid'
      ? [
          part('flange', 'fitting', { count: pieces(n.columns), sizes: { outside: size(pipe?.outside_m) } }),
          part('bolts', 'fixing', { count: times('flange-bolts') }),
        ]
      : []),
    ...(base?.kind === 'own foot'
      ? [
          part('foot', 'fitting', { count: pieces(n.columns), sizes: { width: size(base.footWidth_m) }, made: true }),
          part('screws', 'fixing', { count: times('foot-screws') }),
        ]
      : []),
    ...(n.strap ? strapParts(plan, n) : []),
    ...(lamps?.count === undefined || lamps.count === 0
      ? []
      : [
          part('lamp', 'lamp', {
            count: pieces(lamps.count),
            sizes: { power: size(lamps.power_W, 'W'), length: size(lamps.length_m) },
            unit_money: prices?.lamp,
            priceAt: 'prices/lamp',
          }),
        ]),
  ]
}
