import type { LayoutFacts } from '../../disciplines/layout/index.ts'
import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import { clipped } from '../drawing/clip.ts'
import {
  contour,
  type Drawing,
  lettering,
  line,
  type Point,
  polyline,
  type Rect,
  rectangle,
} from '../drawing/primitives.ts'

/** Outline of one hole about its mark, in metres; x round the pipe. */
export function holeOutline(templates: TemplatesFacts, round: 'on the pipe' | 'on paper'): readonly Point[] {
  const { joint } = templates
  const { outline } = joint.cut === 'axis' ? templates.holeAlong : templates.holeSquare
  const stretch = round === 'on paper' ? 1 : 1 / (1 + joint.paper_m / (2 * joint.stub.columnRadius_m))
  return outline.map(({ x_m, y_m }): Point => [x_m * stretch, y_m])
}

/** Where a site stands on the flat: its place from line 1, and once more where its hole reaches over the seam. */
function placesRound(round: number, at: number, half: number): readonly number[] {
  const places = [at]
  if (at - half < 0) places.push(at + round)
  if (at + half > round) places.push(at - round)
  return places
}

/**
 * All holes of the unrolled column in paper millimetres: `ratio` for a metre, x from the seam (half a line's way
 * before line 1), y from the foot. A hole that reaches over the seam stands on both edges, cut off at the seam.
 */
export function unrolledHoles(given: {
  readonly layout: LayoutFacts
  readonly templates: TemplatesFacts
  readonly ratio: number
  readonly stretch: number
  readonly from_m: number
  readonly to_m: number
  readonly seam_m: number
}): Drawing {
  const { layout, templates, ratio, stretch, from_m, to_m, seam_m } = given
  const round_m = layout.circumference_m * stretch
  const outline = holeOutline(templates, 'on the pipe').map(([x, y]): Point => [x * stretch, y])
  const half_m = Math.max(...outline.map(([x]) => Math.abs(x)))
  const area: Rect = { left: 0, right: round_m * ratio, bottom: from_m * ratio, top: to_m * ratio }
  return layout.sites.flatMap((site) => {
    const at = ((((site.turn_rad / (2 * Math.PI)) * round_m - seam_m * stretch) % round_m) + round_m) % round_m
    return placesRound(round_m, at, half_m).flatMap((x) => {
      const ring = outline.map(([u, v]): Point => [(x + u) * ratio, (site.mark_m + v) * ratio])
      return clipped([contour(ring, 'cut', { part: `site-${site.number}` })], area)
    })
  })
}

/** The unrolled surface at a small scale: outline, lines with their numbers, holes with theirs. */
export function unrolled(given: {
  readonly layout: LayoutFacts
  readonly templates: TemplatesFacts | null
  readonly ratio: number
}): Drawing {
  const { layout, templates, ratio } = given
  const width = layout.circumference_m * ratio
  const height = layout.columnLength_m * ratio
  const seam_m = seamOf(layout)
  const x = (turn_rad: number): number =>
    ((turn_rad / (2 * Math.PI)) * layout.circumference_m - seam_m + layout.circumference_m) % layout.circumference_m
  const few = layout.lines.length <= 14 && (layout.lines.length < 2 || closest(layout) * ratio > 4)
  const lines: Drawing = layout.lines.flatMap((l) => {
    const at = x(l.turn_rad) * ratio
    return [
      line([at, 0], [at, height], few ? 'centre' : 'ornament'),
      ...(few ? [lettering([at, height + 1.4], String(l.number), { size_mm: 2.6, anchor: 'middle' as const })] : []),
    ]
  })
  const holes: Drawing =
    templates === null
      ? layout.sites.flatMap((s) => {
          const [cx, cy] = [x(s.turn_rad) * ratio, s.mark_m * ratio]
          return [
            polyline(
              [
                [cx - 1, cy],
                [cx + 1, cy],
              ],
              'visible',
            ),
            polyline(
              [
                [cx, cy - 1],
                [cx, cy + 1],
              ],
              'visible',
            ),
          ]
        })
      : unrolledHoles({ layout, templates, ratio, stretch: 1, from_m: 0, to_m: layout.columnLength_m, seam_m }).map(
          (p) =>
            p.kind === 'path'
              ? { ...p, pen: 'visible' as const, fill: p.closed ? ('paper' as const) : ('none' as const) }
              : p,
        )
  const wide = templates === null ? 0 : Math.max(...holeOutline(templates, 'on the pipe').map(([u]) => 2 * u)) * ratio
  const numbers: Drawing =
    wide < 4.4
      ? []
      : layout.sites
          .filter((s) => x(s.turn_rad) * ratio > 2.4 && x(s.turn_rad) * ratio < width - 2.4)
          .map((s) =>
            lettering([x(s.turn_rad) * ratio, s.mark_m * ratio - 1.3], String(s.number), {
              size_mm: 2.3,
              anchor: 'middle',
              halo: true,
            }),
          )
  return [rectangle({ left: 0, right: width, bottom: 0, top: height }, 'visible'), ...lines, ...holes, ...numbers]
}

/** The least way round the pipe from a line to the next. */
const closest = (layout: LayoutFacts): number =>
  Math.min(...layout.lines.slice(1).map((l, i) => l.turn_rad - layout.lines[i]!.turn_rad)) *
  (layout.circumference_m / (2 * Math.PI))

/** The seam lies before line 1, half the way to the line that is nearest on that side, so that few holes meet it. */
export function seamOf(layout: LayoutFacts): number {
  const last = layout.lines.at(-1)
  if (last === undefined || layout.lines.length < 2) return layout.circumference_m / 2
  const back_rad = 2 * Math.PI - last.turn_rad
  return -(back_rad / (4 * Math.PI)) * layout.circumference_m
}
