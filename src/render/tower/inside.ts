import { type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import type { Elevation } from '../views/elevation.ts'
import type { TowerInput } from './input.ts'

interface Inside {
  readonly marks: Drawing
  readonly places: Readonly<Record<string, Point>>
}

const none: Inside = { marks: [], places: {} }

/** Where the pump stands beside the column, in millimetres of paper. */
interface PumpPlace {
  readonly x: number
  readonly floor: number
  readonly size: number
}

function pumpPlace({ plan, tank }: TowerInput, e: Elevation, k: number): PumpPlace | null {
  const r = e.radius_m * k
  const half = ((plan.reservoir?.container?.topWidth_m ?? plan.reservoir?.outsideWidth_m ?? 0) / 2) * k
  if (plan.pump === undefined || e.lid_m === null || half <= r + 2) return null
  return {
    x: -(half + r) / 2,
    floor: (tank?.floor_m ?? 0) * k,
    size: Math.min(5.5, Math.max(2, half - r - 1.4)),
  }
}

/** The body is a sign of the pump: its sizes are not in the plan. */
function pump({ x, floor, size }: PumpPlace): Inside {
  const top = floor + size * 0.85
  const box = { left: x - size / 2, right: x + size / 2, bottom: floor, top }
  const slots = [0.3, 0.5, 0.7].map((t) => {
    const y = floor + (top - floor) * t
    return line([box.left, y], [box.right, y], 'thin', { part: 'pump' })
  })
  return {
    marks: [rectangle(box, 'visible', { fill: 'paper', part: 'pump' }), ...slots],
    places: { pump: [box.left + 0.8, floor + size * 0.5] },
  }
}

function riser({ plan }: TowerInput, e: Elevation, k: number, from: PumpPlace | null): Inside {
  const { outletHeight_m, bore_m, inside: where } = plan.riser ?? {}
  if (outletHeight_m === undefined || bore_m === undefined || where === 'outside the column') return none
  const h = Math.max(0.5, (bore_m / 2) * k)
  const pumpTop = from === null ? 0 : from.floor + from.size * 0.85
  const start = from === null ? e.foot_m * k : pumpTop + 5.6
  const top = Math.min(outletHeight_m, e.top_m + 0.06) * k
  const part = { part: 'riser' }
  const bend: readonly Point[] =
    from === null
      ? []
      : [
          [from.x, pumpTop],
          [from.x, start - 3.2],
          [from.x + 1.2, start - 2.2],
          [0, start - 2.2],
          [0, start],
        ]
  const end: readonly Point[] = [
    [-h, top],
    [-h, top + 1.4],
    [h, top + 1.4],
    [h, top],
  ]
  return {
    marks: [
      ...[-h, h].map((x) => line([x, start], [x, top], 'hidden', part)),
      ...(bend.length > 0 ? [polyline(bend, 'hidden', part)] : []),
      polyline(end, 'visible', part),
    ],
    places: { riser: [h, (e.foot_m + (e.top_m - e.foot_m) * 0.42) * k] },
  }
}

function distributor({ plan }: TowerInput, e: Elevation, k: number): Inside {
  const { depth_m, diameter_m, kind } = plan.distributor ?? {}
  if (depth_m === undefined || diameter_m === undefined || kind === 'tee') return none
  const half = (diameter_m / 2) * k
  const [top, foot] = [e.top_m * k, (e.top_m - depth_m) * k]
  const edge = e.radius_m * k + 0.6
  const cup: readonly Point[] = [
    [-half, top],
    [-half, foot],
    [half, foot],
    [half, top],
  ]
  const part = { part: 'distributor' }
  return {
    marks: [polyline(cup, 'hidden', part), line([-edge, top], [edge, top], 'visible', part)],
    places: { distributor: [half * 0.7, top - depth_m * k * 0.6] },
  }
}

/** What stands inside: pump in the tank, riser up the column, distributor at the top; each only where it is planned. */
export function inside(
  input: TowerInput,
  e: Elevation,
  k: number,
  levels: { readonly fill_m: number | null; readonly low_m: number | null },
): Inside {
  const from = pumpPlace(input, e, k)
  const parts = [from === null ? none : pump(from), riser(input, e, k, from), distributor(input, e, k)]
  const tank = input.plan.reservoir
  const half = ((tank?.container?.topWidth_m ?? tank?.outsideWidth_m ?? 0) / 2) * k
  const water: Readonly<Record<string, Point>> =
    levels.fill_m !== null && e.lid_m !== null && half > 0
      ? { reservoir: [-half * 0.75, ((input.tank?.floor_m ?? 0) + levels.fill_m) * k * 0.5 + 3] }
      : {}
  return {
    marks: parts.flatMap((p) => p.marks),
    places: Object.assign({}, ...parts.map((p) => p.places), water),
  }
}
