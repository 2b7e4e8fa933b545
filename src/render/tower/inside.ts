import { type Drawing, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import type { Elevation } from '../views/elevation.ts'
import type { TowerInput } from './tower.ts'

interface Inside {
  readonly marks: Drawing
  readonly places: Readonly<Record<string, Point>>
}

/** What stands inside: pump in the tank, riser up the column, distributor at the top; each only where it is planned. */
export function inside(
  { plan, tank }: TowerInput,
  e: Elevation,
  k: number,
  levels: { readonly fill_m: number | null; readonly low_m: number | null },
): Inside {
  const r = e.radius_m * k
  const floor = Math.max(0, (tank?.floor_m ?? 0) * k)
  const half = ((plan.reservoir?.container?.topWidth_m ?? plan.reservoir?.outsideWidth_m ?? 0) / 2) * k
  const hasPump = plan.pump !== undefined && e.lid_m !== null && half > r + 2
  const size = Math.min(5.5, Math.max(2, half - r - 1.4))
  const pumpX = -(half + r) / 2
  const places: Record<string, Point> = {}
  const marks: Drawing[] = []
  if (hasPump) {
    const box = { left: pumpX - size / 2, right: pumpX + size / 2, bottom: floor, top: floor + size * 0.85 }
    const slots = [0.3, 0.5, 0.7].map((t) =>
      line([box.left, floor + size * 0.85 * t], [box.right, floor + size * 0.85 * t], 'thin', { part: 'pump' }),
    )
    marks.push([rectangle(box, 'visible', { fill: 'paper', part: 'pump' }), ...slots])
    places['pump'] = [box.left + 0.8, floor + size * 0.5]
  }
  const outlet_m = plan.riser?.outletHeight_m
  const bore_m = plan.riser?.bore_m
  if (outlet_m !== undefined && bore_m !== undefined && plan.riser?.inside !== 'outside the column') {
    const h = Math.max(0.5, (bore_m / 2) * k * 1.15)
    const low = hasPump ? floor + size * 0.85 + 3.4 : e.foot_m * k
    const top = Math.min(outlet_m, e.top_m + 0.06) * k
    const start = hasPump ? low + 2.2 : low
    for (const side of [-1, 1])
      marks.push([
        polyline(
          [
            [side * h, start],
            [side * h, top],
          ],
          'hidden',
          { part: 'riser' },
        ),
      ])
    if (hasPump)
      marks.push([
        polyline(
          [
            [pumpX, floor + size * 0.85],
            [pumpX, low - 1],
            [pumpX + 1.2, low],
            [0, low],
            [0, low + 2.2],
          ],
          'hidden',
          { part: 'riser' },
        ),
      ])
    marks.push([
      polyline(
        [
          [-h, top],
          [-h, top + 1.4],
          [h, top + 1.4],
          [h, top],
        ],
        'visible',
        { part: 'riser' },
      ),
    ])
    places['riser'] = [h, (e.foot_m + (e.top_m - e.foot_m) * 0.42) * k]
  }
  const d = plan.distributor
  if (d?.depth_m !== undefined && d.kind !== 'tee') {
    const wide = Math.min((d.diameter_m ?? 2 * e.radius_m * 0.9) / 2, e.radius_m * 0.94) * k
    const top = e.top_m * k
    marks.push([
      polyline(
        [
          [-wide, top],
          [-wide, top - d.depth_m * k],
          [wide, top - d.depth_m * k],
          [wide, top],
        ],
        'hidden',
        { part: 'distributor' },
      ),
      line([-r - 0.6, top], [r + 0.6, top], 'visible', { part: 'distributor' }),
    ])
    places['distributor'] = [wide * 0.7, top - d.depth_m * k * 0.6]
  }
  if (levels.fill_m !== null && half > 0) places['reservoir'] = [-half * 0.75, (levels.fill_m * k + floor) / 2 + 3]
  return { marks: marks.flat(), places }
}
