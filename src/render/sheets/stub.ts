import type { TemplatesFacts } from '../../disciplines/templates/index.ts'
import { isKnown } from '../../plan/known.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { bounds } from '../drawing/bounds.ts'
import { angleDimension, dimension } from '../drawing/dimension.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { leader, note } from '../drawing/marks.ts'
import { contour, type Drawing, line, type Point, polyline } from '../drawing/primitives.ts'
import { moved, turned } from '../drawing/transform.ts'
import { composed, fitsSheet, spread } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines, paperFigure } from './hole.ts'

/** The wrap with its mouth below: x round from the upper line, y up from the lowest point of the mouth. */
export function stubOutline(t: TemplatesFacts): {
  readonly end: readonly Point[]
  readonly mouth: readonly Point[]
  readonly width: number
} {
  const { wrap } = t.stub
  const foot_m = Math.max(...wrap.mouth.map((p) => p.y_m))
  const put = (p: { x_m: number; y_m: number }): Point => [p.x_m * 1000, (foot_m - p.y_m) * 1000]
  return { end: wrap.end.map(put), mouth: wrap.mouth.map(put), width: wrap.width_m * 1000 }
}

/** Height of a polyline at x. */
export function heightAt(points: readonly Point[], x: number): number {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!]
    if (x <= b[0] || i === points.length - 1) return a[1] + ((x - a[0]) / (b[0] - a[0] || 1)) * (b[1] - a[1])
  }
  return points[0]?.[1] ?? 0
}

export const stubContour = (t: TemplatesFacts): Drawing => {
  const { end, mouth } = stubOutline(t)
  return [contour([...mouth, ...[...end].reverse()], 'cut', { layer: 'stub' })]
}

function wrapBlock(c: Context, t: TemplatesFacts): Drawing {
  const { end, mouth, width } = stubOutline(t)
  const tab = practiceLengths.rows['overlap-tab'].high_m * 1000
  const sixteen = Array.from({ length: 15 }, (_, i) => ((i + 1) * width) / 16).map((x, i) =>
    line([x, heightAt(mouth, x)], [x, heightAt(end, x)], (i + 1) % 4 === 0 ? 'centre' : 'hatch'),
  )
  const right = [heightAt(mouth, width), heightAt(end, width)] as const
  const mid = width / 2
  const top = Math.max(...end.map((p) => p[1]))
  const mitre = t.joint.end.kind === 'mitre'
  const saw = mitre ? c.say('stub-saw', { angle: c.angle(t.stub.saw_rad ?? 0) }) : c.say('stub-cope')
  const tilted = t.joint.mouthTilt_rad !== 0
  return [
    ...sixteen,
    ...stubContour(t),
    polyline(
      [
        [width, right[1]],
        [width + tab, right[1] - 1.6],
        [width + tab, right[0] + 1.6],
        [width, right[0]],
      ],
      'hidden',
    ),
    ...dimension({
      from: [0, heightAt(mouth, 0)],
      to: [0, heightAt(end, 0)],
      offset_mm: -7,
      figure: c.figure(t.stub.lengths.crown_m),
    }),
    ...dimension({
      from: [mid, heightAt(mouth, mid)],
      to: [mid, heightAt(end, mid)],
      offset_mm: 6,
      figure: c.figure(t.stub.lengths.heel_m),
    }),
    ...dimension({
      from: [0, Math.min(0, ...mouth.map((p) => p[1]))],
      to: [width, Math.min(0, ...mouth.map((p) => p[1]))],
      offset_mm: -7,
      figure: c.say('stub-round', { w: c.size(width / 1000), paper: paperFigure(c, t.joint.paper_m) }),
    }),
    ...sawNote(end, width, saw),
    ...note({ at: [0, heightAt(end, 0) + 3.6], lines: [c.say('upper-side')] }),
    ...note({ at: [mid, top + 2], lines: [c.say('lower-side')], anchor: 'middle' }),
    ...note({
      at: [width * 0.19, heightAt(mouth, width * 0.19) + 2.1],
      lines: [c.say(tilted ? 'stub-mouth-tilted' : 'stub-mouth')],
    }),
    ...note({
      at: [width + 5.6, (right[0] + right[1]) / 2],
      lines: [c.say('stub-tab')],
      anchor: 'middle',
      turn_rad: Math.PI / 2,
    }),
  ]
}

/** What the curve is, left of its crest where there is room for the words, else right of it. */
function sawNote(end: readonly Point[], width: number, text: string): Drawing {
  const heights = end.map((p) => p[1])
  const top = Math.max(...heights)
  const flat = top - Math.min(...heights) < 16
  const reach = lettersWidth({ text, face: 'drafting', size_mm: 2.9 }) + 14
  const left = !flat && width * 0.3 > reach
  const x = width * (left ? 0.3 : 0.72)
  const y = heightAt(end, x)
  const elbow: Point = left ? [x - 9, Math.max(y + 5, top - 6)] : [x + 5, y + 7]
  return leader({ to: [x, y], elbow, lines: [text] })
}

/** The stub from the side as it lies on the saw, its long line below. */
function card(c: Context, t: TemplatesFacts): Drawing {
  const { stub } = t.joint
  const { crown_m, heel_m, centre_m } = t.stub.lengths
  const d = 2000 * stub.stubRadius_m
  const [up, low] = [crown_m * 1000, heel_m * 1000]
  const saw = t.stub.saw_rad ?? 0
  return [
    contour(
      [
        [0, 0],
        [low, 0],
        [up, d],
        [0, d],
      ],
      'visible',
    ),
    line([-4, d / 2], [(up + low) / 2 + 6, d / 2], 'centre'),
    ...dimension({ from: [0, 0], to: [low, 0], offset_mm: -7, figure: c.figure(heel_m) }),
    ...dimension({ from: [0, d], to: [up, d], offset_mm: 7, figure: c.figure(crown_m) }),
    ...dimension({ from: [0, d / 2], to: [(up + low) / 2, d / 2], offset_mm: 0, figure: c.figure(centre_m) }),
    ...dimension({ from: [0, 0], to: [0, d], offset_mm: 7, figure: `Ø${c.size(2 * stub.stubRadius_m)}` }),
    ...(saw > 0.02
      ? [
          line([low, 0], [low, Math.min(d, 32)], 'thin'),
          ...angleDimension({
            centre: [low, 0],
            radius_mm: Math.min(24, d * 0.6),
            from_rad: Math.PI / 2,
            to_rad: Math.PI / 2 + saw,
            figure: c.angle(saw),
          }),
        ]
      : []),
  ]
}

function lines(c: Context, t: TemplatesFacts): readonly string[] {
  const { lengths, saw_rad } = t.stub
  const slots = { heel: c.length(lengths.heel_m), crown: c.length(lengths.crown_m) }
  const mitre = saw_rad !== null
  return [
    ...barLines(c),
    ...(mitre
      ? [c.say('act-stub-saw', { angle: c.angle(saw_rad) }), c.say('act-stub-stop', slots)]
      : [c.say('act-stub-cope', slots), c.say('act-stub-blank', { blank: c.length(lengths.blank_m) })]),
    ...(mitre && t.joint.mouthTilt_rad === 0 ? [c.say('act-stub-flip')] : []),
    c.say('act-stub-mark'),
    c.say('act-stub-sixteen'),
    ...(t.trace.error_m > 0.0005
      ? [c.say('act-stub-trace', { error: c.within(t.trace.error_m), gap: c.within(t.trace.gap_m) })]
      : []),
  ]
}

/** The stub's end: wrap, saw setting, lengths. */
export function stubSheet(c: Context): Drafted {
  const { templates } = c.facts
  if (!isKnown(templates)) return templates
  const t = templates.known
  const upright = wrapBlock(c, t)
  // A wide wrap may lie on its side rather than on two sheets.
  const lying = turned(upright, Math.PI / 2)
  const wrap = !fitsSheet(c, upright) && fitsSheet(c, lying) ? lying : upright
  const said = { lines: lines(c, t) }
  const tall = Math.max(...stubOutline(t).end.map((p) => p[1])) + 22
  const drawn = t.joint.end.kind === 'mitre' ? card(c, t) : []
  const d = 2000 * t.joint.stub.stubRadius_m
  const one = [...wrap, ...moved(drawn, [10, tall + 3])]
  const roomy = drawn.length > 0 && tall + d + 30 < c.room.drawing.top - c.room.drawing.bottom - 4 && fitsSheet(c, one)
  const drawings = roomy ? sideBySide(c, wrap, drawn, said) : (fitsSheet(c, wrap) ? composed : spread)(c, wrap, said)
  const n = isKnown(c.facts.layout) ? c.facts.layout.known.plants : 1
  const subtitle = c.say('stub-sub', {
    stub: t.joint.stubPipe.label,
    angle: c.angle(t.joint.stub.angle_rad),
    n: String(n),
  })
  return {
    pages: drawings.map((drawing, i) => ({
      id: 'stub' as const,
      title: i === 0 ? c.say('stub-title') : c.say('continued', { title: c.say('stub-title') }),
      subtitle,
      scale: c.say('full-size'),
      drawing,
      ...(i === 0 ? { contours: stubContour(t) } : {}),
    })),
  }
}

/** The card above with the words beside it, the wrap below. */
function sideBySide(
  c: Context,
  wrap: Drawing,
  drawn: Drawing,
  said: { readonly lines: readonly string[] },
): readonly Drawing[] {
  const { body } = c.room
  const box = bounds(wrap)
  const pages = composed(c, drawn, said, box === null ? 0 : box.top - box.bottom + 6)
  const foot = moved(wrap, [body.left, body.bottom + 1 - (box?.bottom ?? 0)])
  return [[...pages[0]!, ...foot], ...pages.slice(1)]
}
