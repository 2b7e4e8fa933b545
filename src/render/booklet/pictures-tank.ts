import { orNull } from '../../plan/known.ts'
import { dimension } from '../drawing/dimension.ts'
import { contour, type Drawing, lettering, line, type Point, polyline, rectangle } from '../drawing/primitives.ts'
import { levels } from '../views/levels.ts'
import { fitted } from './frame.ts'
import type { Given } from './input.ts'

/** The tank cut open with its lines. */
export function tankPicture(g: Given): Drawing {
  const facts = orNull(g.facts.reservoir)
  if (facts === null) return []
  const cover_m = g.plan.pump?.minimumDepth_m ?? null
  return fitted((ratio) => levels({ facts, cover_m, words: g.words.waterPath, display: g.display, ratio }), {
    width_mm: 70,
    height_mm: 44,
  })
}

/** The hose's end at its own height over a bucket. */
export function bucketPicture(g: Given): Drawing {
  const flow = g.plan.riser?.neededFlow_m3_s
  const height_m = g.plan.riser?.outletHeight_m
  const bench = 12
  const at = (x: number, up: number): Point => [x, bench + 2 + up]
  const bucket: readonly Point[] = [at(12, 15), at(14, 0), at(30, 0), at(32, 15)]
  const water: readonly Point[] = [at(14.2, 0), at(29.8, 0), at(30.8, 8), at(13.2, 8)]
  const hose: readonly Point[] = [[-4, 4], at(-4, 20), at(2, 24), at(16, 24), at(22, 22), at(22, 18)]
  const rain = [18, 20, 22, 24, 26].map((x, i) => line(at(x, 15 - i), at(x, 12 - i), 'thin'))
  return [
    line([-8, 0], [40, 0], 'cut'),
    rectangle({ left: 8, right: 36, bottom: bench, top: bench + 2 }, 'visible', { fill: 'paper' }),
    line([11, 0], [11, bench], 'visible'),
    line([33, 0], [33, bench], 'visible'),
    contour(water, null, { fill: 'water' }),
    polyline(bucket, 'cut'),
    ...rain,
    polyline(hose, 'cut'),
    ...(height_m === undefined
      ? []
      : dimension({
          from: [-4, 0],
          to: at(-4, 18),
          offset_mm: 7,
          figure: g.sheet.length(height_m),
          along: 'up',
        })),
    ...(flow === undefined
      ? []
      : [lettering(at(22, 3), g.sheet.shown({ value: flow, unit: 'm3_s' }), { size_mm: 3, anchor: 'middle' })]),
  ]
}
