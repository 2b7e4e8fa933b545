import { orNull } from '../../plan/known.ts'
import { bounds } from '../../render/drawing/bounds.ts'
import type { Drawing, Lettering, Primitive } from '../../render/drawing/primitives.ts'
import { type Sketch, scaleFor } from '../../render/tower/sketch.ts'
import { dayCourse } from '../../render/views/day-course.ts'
import { levels, tankWidth } from '../../render/views/levels.ts'
import { pumpCurve } from '../../render/views/pump-curve.ts'
import { rootsByWeek } from '../../render/views/roots-by-week.ts'
import { stopClockTable } from '../../render/views/stop-clock.ts'
import { tippingChart } from '../../render/views/tipping.ts'
import { wettingMapView } from '../../render/views/wetting-map.ts'
import type { Given, SheetOf } from './drawings.ts'
import { words } from './language.ts'
import type { Evaluated } from './workers/protocol.ts'

/** Figures of an axis stand left of it. */
const AXIS_mm = 10
const LABELS_mm = 60
const KEY_mm = 52

const isFigure = (p: Primitive): p is Lettering => p.kind === 'text' && /\d/.test(p.text)

/** A drawing for the page, its figures apart so that each can be explained; a chart has no scale. */
function sketch(drawing: Drawing | null, scale = 0): Sketch | null {
  const box = drawing === null ? null : bounds(drawing)
  if (drawing === null || box === null) return null
  return {
    marks: drawing.filter((p) => !isFigure(p)),
    figures: drawing.filter(isFigure).map((text) => ({ text, why: { fact: 'drawing' } })),
    places: {},
    box: { left: box.left - 0.5, right: box.right + 1, bottom: box.bottom - 0.5, top: box.top + 1 },
    scale,
  }
}

type Id = 'chart-pump' | 'chart-stop' | 'chart-levels' | 'chart-wetting' | 'chart-roots' | 'chart-tipping' | 'chart-day'

/** A chart stands with the parts that it tells of. */
const sheetOf = (
  id: Id,
  parts: readonly Given['part'][],
  draw: (e: Evaluated, given: Given, width_mm: number) => Sketch | null,
): SheetOf => ({
  id,
  titles: () => [id],
  draw: (e, given) =>
    parts.includes(given.part) && given.shown('water') ? draw(e, given, given.detail_mm * 0.95) : null,
})

const pump = sheetOf('chart-pump', ['pump', 'riser'], (e, { display }, width_mm) =>
  sketch(
    pumpCurve({
      facts: e.facts.hydraulics,
      needed_m3_s: e.plan.riser?.neededFlow_m3_s ?? null,
      words: words().waterPath,
      display,
      width_mm: width_mm - AXIS_mm,
      height_mm: width_mm * 0.62,
    }),
  ),
)

const tank = sheetOf('chart-levels', ['reservoir'], (e, { display, room_mm }, width_mm) => {
  const facts = orNull(e.facts.reservoir)
  if (facts === null) return null
  const wide = scaleFor(tankWidth(facts), Math.max(20, width_mm - LABELS_mm))
  const scale = Math.max(wide, scaleFor(facts.tank.depth_m, room_mm * 0.4))
  const cover_m = e.plan.pump?.minimumDepth_m ?? null
  return sketch(levels({ facts, cover_m, words: words().waterPath, display, ratio: 1000 / scale }), scale)
})

const wetting = sheetOf('chart-wetting', ['column'], (e, { room_mm }, width_mm) => {
  const facts = orNull(e.facts.hydraulics.wetting)
  const layout = orNull(e.facts.layout)
  if (facts === null || layout === null) return null
  const high = scaleFor(layout.columnLength_m, room_mm * 0.9)
  const scale = Math.max(high, scaleFor(layout.circumference_m, Math.max(20, width_mm - KEY_mm)))
  return sketch(wettingMapView({ facts, layout, at: 'asDrawn', words: words().waterPath, ratio: 1000 / scale }), scale)
})

const tipping = sheetOf('chart-tipping', ['place', 'drain'], (e, { display }, width_mm) => {
  const facts = orNull(e.facts.structure.tipping)
  const size = { width_mm: width_mm - AXIS_mm, height_mm: width_mm * 0.62 }
  return facts === null ? null : sketch(tippingChart({ facts, words: words().standCharts, display, ...size }))
})

const day = sheetOf('chart-day', ['reservoir', 'roots', 'place'], (e, { display }, width_mm) => {
  const facts = e.facts.day === null ? null : orNull(e.facts.day)
  const size = { width_mm: width_mm - AXIS_mm, height_mm: width_mm }
  return facts === null ? null : sketch(dayCourse({ facts, words: words().standCharts, display, ...size }))
})

const stop = sheetOf('chart-stop', ['pump', 'roots'], (e, { display }, width_mm) =>
  sketch(
    stopClockTable({
      facts: e.facts.hydraulics.stop,
      words: words().waterPath,
      display,
      at: [0, 0],
      width_mm,
    }).drawing,
  ),
)

const roots = sheetOf('chart-roots', ['roots', 'column'], (e, _given, width_mm) => {
  const facts = orNull(e.facts.hydraulics.roots)
  const size = { width_mm: width_mm - AXIS_mm, height_mm: width_mm * 0.62 }
  return facts === null ? null : sketch(rootsByWeek({ facts, words: words().waterPath, ...size }))
})

/** Pump, clock of the stop, levels, wetted sites, roots in the bore, tipping and a hot day, each beside the part that it tells of. */
export const sheetsOfWater: readonly SheetOf[] = [pump, stop, tank, wetting, roots, tipping, day]
