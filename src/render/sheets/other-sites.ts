import { plainHoleGap } from '../../disciplines/templates/equations.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { dimension } from '../drawing/dimension.ts'
import { leader } from '../drawing/marks.ts'
import { circle, contour, type Drawing, line, type Point, rectangle } from '../drawing/primitives.ts'
import { table } from '../paper/table.ts'
import { composed, spread, topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted, SheetId } from './context.ts'
import { barLines, boxOf, paperStretchOf, siteFrame } from './hole.ts'

const pagesOf = (
  c: Context,
  id: SheetId,
  title: string,
  subtitle: string,
  drawings: readonly Drawing[],
  contours: Drawing,
): readonly Draft[] =>
  drawings.map((drawing, i) => ({
    id,
    title: i === 0 ? title : c.say('continued', { title }),
    subtitle,
    scale: c.say('full-size'),
    drawing,
    ...(i === 0 && contours.length > 0 ? { contours } : {}),
  }))

const sitesOf = (c: Context): string =>
  isKnown(c.facts.layout) ? String(c.facts.layout.known.sites.length) : c.say('number-blank')

/** Slit, stop holes and warm zone of a heat-formed pocket. */
export function pocketSheet(c: Context): Drafted {
  const { pocket } = c.facts
  if (!isKnown(pocket)) return pocket
  const { slit_m, wall_m } = pocket.known
  const former_m = c.plan.column?.pocket?.former_m ?? 0
  const slit = slit_m * 1000 * paperStretchOf(c)
  const stop_m = practiceLengths.rows['slit-stop-hole']
  const zone_m = practiceLengths.rows['heated-zone']
  const r = stop_m.low_m * 500
  const high = zone_m.high_m * 1000
  const box: Point[] = [
    [-slit / 2 - r, -high / 2],
    [slit / 2 + r, high / 2],
  ]
  const range = (a: number, b: number) => `${c.figure(a)}–${c.length(b)}`
  const holes: Drawing = [
    circle([-slit / 2, 0], r, 'cut', { layer: 'slit' }),
    circle([slit / 2, 0], r, 'cut', { layer: 'slit' }),
  ]
  const drawing: Drawing = [
    ...siteFrame(c, boxOf(box), false),
    rectangle({ left: -slit / 2 - 8, right: slit / 2 + 8, bottom: -high / 2, top: high / 2 }, 'hidden'),
    line([-slit / 2 + r, 0], [slit / 2 - r, 0], 'cut'),
    ...holes,
    ...dimension({
      from: [-slit / 2, 0],
      to: [slit / 2, 0],
      offset_mm: -14,
      figure: c.say('pocket-slit', { l: c.figure(slit_m) }),
      along: 'across',
    }),
    ...leader({
      to: [slit / 2, -r],
      elbow: [slit / 2 + 5, -high / 2 - 6],
      lines: [c.say('pocket-stop', { d: range(stop_m.low_m, stop_m.high_m) })],
    }),
    ...leader({
      to: [slit * 0.25, high / 2],
      elbow: [slit * 0.25 + 5, high / 2 + 7],
      lines: [c.say('pocket-zone', { z: range(zone_m.low_m, zone_m.high_m) })],
    }),
  ]
  const former = c.length(former_m)
  const lines = [
    ...barLines(c),
    c.say('act-paper-out'),
    c.say('act-pocket-lay'),
    c.say('act-pocket-stop'),
    c.say('act-pocket-heat'),
    c.say('act-pocket-form', { former }),
    c.say('act-pocket-wall', { wall: c.length(wall_m) }),
  ]
  const hot = c.words.cautions['hot-pvc']
  const cautions = [...(hot === undefined || hot.includes('{') ? [] : [hot]), c.say('laser')]
  const subtitle = c.say('pocket-sub', { former, n: sitesOf(c) })
  return {
    pages: pagesOf(c, 'pocket', c.say('pocket-title'), subtitle, spread(c, drawing, { lines, cautions }), holes),
  }
}

/** A round hole in which the cup hangs by its rim. */
export function cupHoleSheet(c: Context): Drafted {
  const body_m = c.plan.column?.cup?.body_m
  const pipe = isKnown(c.facts.room) ? c.facts.room.known.column : c.plan.column?.pipe
  if (body_m === undefined) return { needs: ['column/cup/body'] }
  if (pipe === undefined) return { needs: ['column/pipe'] }
  if (body_m >= pipe.bore_m) return { needs: ['column/cup/body'] }
  const R = pipe.outside_m / 2
  const q = body_m / 2
  const stretch = paperStretchOf(c)
  // A round hole seen along its axis is wider on the unrolled wall.
  const outline = Array.from({ length: 720 }, (_, i) => (i * Math.PI) / 360).map(
    (a): Point => [R * Math.asin((q * Math.sin(a)) / R) * 1000 * stretch, q * Math.cos(a) * 1000],
  )
  const box = boxOf(outline)
  const ring = contour(outline, 'cut', { layer: 'hole' })
  const drawing: Drawing = [
    ...siteFrame(c, box, true),
    ring,
    ...dimension({ from: [0, box.low], to: [0, box.high], offset_mm: -box.left + 8, figure: c.figure(body_m) }),
    ...dimension({
      from: [box.left, box.low],
      to: [box.right, box.low],
      offset_mm: -9,
      figure: c.figure((box.right - box.left) / 1000),
      along: 'across',
    }),
  ]
  const lines = [
    ...barLines(c),
    c.say('act-paper-out'),
    c.say('act-cuphole-lay'),
    c.say('act-starter', { d: c.length(practiceLengths.rows['starter-drill'].high_m) }),
    c.say('act-cuphole-cut'),
    c.say('act-cuphole-gap', { gap: c.length(plainHoleGap({ columnRadius_m: R, holeRadius_m: q })) }),
  ]
  const subtitle = c.say('cuphole-sub', { d: c.length(body_m), n: sitesOf(c) })
  return {
    pages: pagesOf(
      c,
      'cup-hole',
      c.say('cuphole-title'),
      subtitle,
      composed(c, drawing, { lines, cautions: [c.say('laser')] }),
      [ring],
    ),
  }
}

/** Where the fittings sit on the column, and how each is turned. */
export function fittingSheet(c: Context): Drafted {
  const { layout } = c.facts
  if (!isKnown(layout)) return layout
  const laying_m = c.plan.column?.fitting?.layingLength_m
  const [x, y] = topLeft(c)
  const rows = layout.known.sites.map((s) => [String(s.number), c.figure(s.mark_m), c.unit, String(s.line)])
  const width_mm = widthOf(c.room.drawing) * 0.5
  const drawings: Drawing[] = []
  let rest: readonly (readonly string[])[] = rows
  while (rest.length > 0 && drawings.length < 40) {
    const t = table({
      at: [0, 0],
      columns: [
        { heading: c.say('fitting-number'), align: 'figures' },
        { heading: c.say('fitting-mark'), align: 'figures' },
        { heading: '', align: 'unit' },
        { heading: c.say('fitting-bearing'), align: 'figures' },
      ],
      rows: rest,
      width_mm,
      height_mm: y - c.room.body.bottom - x * 0,
      boxed: true,
    })
    drawings.push(t.drawing)
    rest = t.rest
  }
  const lines = [
    ...(laying_m === undefined ? [c.say('act-fitting-measure', { unit: c.unit })] : []),
    c.say('act-fitting-pieces'),
    c.say('act-fitting-line'),
  ]
  const pages = drawings.flatMap((d, i) => composed(c, d, { lines: i === 0 ? lines : [] }))
  const l = laying_m === undefined ? `${c.say('number-blank')} ${c.unit}` : c.length(laying_m)
  return {
    pages: pagesOf(c, 'fitting', c.say('fitting-title'), c.say('fitting-sub', { l }), pages, []).map((p) => ({
      ...p,
      scale: c.say('no-scale'),
    })),
  }
}
