import type { CupFacts, TemplatesFacts } from '../../disciplines/templates/index.ts'
import { isKnown } from '../../plan/known.ts'
import { filletUse } from '../../tables/consumables.ts'
import { practiceAngles } from '../../tables/practice.ts'
import { bounds } from '../drawing/bounds.ts'
import { roundDimension } from '../drawing/dimension.ts'
import { arcPoints } from '../drawing/flatten.ts'
import { note } from '../drawing/marks.ts'
import { contour, type Drawing, line, type Point } from '../drawing/primitives.ts'
import { moved } from '../drawing/transform.ts'
import { polar } from '../drawing/vector.ts'
import { table } from '../paper/table.ts'
import { actions, paragraph, subheading } from '../paper/words.ts'
import { composed, heightOf, hung, topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { barLines } from './hole.ts'

/** The wedge between column and stub, seen from the side: column edge upright, stub edge leaning out. */
function wedge(t: TemplatesFacts): { readonly ring: readonly Point[]; readonly up: number; readonly along: number } {
  const { stub, axisLength_m: L } = t.joint
  const { columnRadius_m: R, stubRadius_m: r, angle_rad: th } = stub
  const crown = (L - (R + r * Math.cos(th)) / Math.sin(th)) * 1000
  const along = Math.max(40, Math.min(110, crown))
  const up = Math.max(60, Math.min(110, along * 1.6))
  // The corner stays clear of the joint's bead.
  const relief = 2 * filletUse.rows.bead.leg_m * 1000
  const corner = arcPoints({ centre: [0, 0], radius_mm: relief, from_rad: Math.PI / 2 - th, to_rad: Math.PI / 2 })
  const tip = polar([0, 0], along, Math.PI / 2 - th)
  return { ring: [...corner, [0, up], [tip[0], up], tip], up, along }
}

function wedgeBlock(c: Context, t: TemplatesFacts): Drawing {
  const { ring, up, along } = wedge(t)
  const th = t.joint.stub.angle_rad
  const [ux, uy] = [Math.sin(th), Math.cos(th)]
  return [
    contour(ring, 'cut', { layer: 'gauge' }),
    ...note({ at: [4, up * 0.52], lines: [c.angle(th)], size_mm: 5 }),
    ...note({ at: [-2, up / 2], lines: [c.say('gauge-on-column')], anchor: 'middle', turn_rad: Math.PI / 2 }),
    ...note({
      at: [ux * along * 0.62 + uy * 4.2, uy * along * 0.62 - ux * 4.2],
      lines: [c.say('gauge-on-stub')],
      anchor: 'middle',
      turn_rad: Math.PI / 2 - th,
    }),
  ]
}

/** A card with the column's round cut out of it: the bearing of the lines stands on it. */
function saddle(t: TemplatesFacts): { readonly ring: readonly Point[]; readonly half_rad: number } {
  const R = t.joint.stub.columnRadius_m * 1000
  const half_rad = Math.min(1.4, Math.asin(Math.min(1, 66 / R)))
  const [x, y] = [R * Math.sin(half_rad), R * Math.cos(half_rad)]
  const inner = arcPoints({
    centre: [0, 0],
    radius_mm: R,
    from_rad: Math.PI / 2 - half_rad,
    to_rad: Math.PI / 2 + half_rad,
  })
  return { ring: [...inner, [-x - 13, y], [-x - 13, R + 16], [x + 13, R + 16], [x + 13, y]], half_rad }
}

function saddleBlock(c: Context, t: TemplatesFacts, spacing_rad: number | null): Drawing {
  const { ring, half_rad } = saddle(t)
  const R = t.joint.stub.columnRadius_m * 1000
  const ticks =
    spacing_rad === null
      ? [0]
      : [-2, -1, 0, 1, 2].map((k) => k * spacing_rad).filter((a) => Math.abs(a) < half_rad - 0.1)
  return [
    contour(ring, 'cut', { layer: 'gauge' }),
    ...ticks.map((a) =>
      line(
        polar([0, 0], R, Math.PI / 2 + a),
        polar([0, 0], R + (a === 0 ? 14 : 6), Math.PI / 2 + a),
        a === 0 ? 'visible' : 'thin',
      ),
    ),
    ...note({ at: [1.6, R + 10.4], lines: [c.say('gauge-line')] }),
    ...note({ at: [-R * Math.sin(half_rad) - 9, R + 10.4], lines: [c.say('gauge-astride')] }),
    ...roundDimension({
      centre: [0, 0],
      radius_mm: R,
      at_rad: Math.PI / 2 - half_rad * 0.45,
      figure: `R ${c.size(R / 1000)}`,
      across: false,
    }).filter((p) => p.kind !== 'line' || Math.hypot(p.from[0], p.from[1]) > R * 0.2 || true),
  ]
}

/** How the grower's cup sits, or blanks to write its measures on. */
export function cupRows(
  c: Context,
  t: TemplatesFacts,
): { readonly title: string; readonly rows: readonly (readonly string[])[]; readonly blank: boolean } {
  const blank = c.say('number-blank')
  if (isKnown(t.cup)) {
    const f: CupFacts = t.cup.known
    return {
      title: c.say('cup-title'),
      blank: false,
      rows: [
        [c.say('cup-ledge'), c.size(f.ledge_m), c.unit],
        [c.say('cup-play'), c.size(f.play_m), c.unit],
        ...(f.slit_m > 0 ? [[c.say('cup-slit'), c.figure(f.slit_m), c.unit]] : []),
        [c.say('cup-to-axis'), c.figure(f.footToAxis_m), c.unit],
      ],
    }
  }
  const cup = c.plan.column?.cup
  const row = (label: string, value: number | undefined) => [
    label,
    value === undefined ? blank : c.figure(value),
    c.unit,
  ]
  return {
    title: c.say('cup-title'),
    blank: true,
    rows: [
      row(c.say('cup-rim-blank'), cup?.rim_m),
      row(c.say('cup-body-blank'), cup?.body_m),
      row(c.say('cup-foot-blank'), cup?.foot_m),
      row(c.say('cup-depth-blank'), cup?.depth_m),
    ],
  }
}

/** The rows about the cup as a block with its upper left corner at a point. */
export function cupBlock(
  c: Context,
  t: TemplatesFacts,
  at: Point,
  width_mm: number,
): { readonly drawing: Drawing; readonly height_mm: number } {
  const cup = cupRows(c, t)
  const head = subheading({ at, text: cup.title, width_mm })
  const rows = table({
    at: [at[0], at[1] - head.height_mm],
    columns: [
      { heading: '', align: 'words' },
      { heading: '', align: 'figures' },
      { heading: '', align: 'unit' },
    ],
    rows: cup.rows,
    width_mm,
    size_mm: 3.4,
  })
  const low = head.height_mm + rows.height_mm
  const said = cup.blank
    ? paragraph({ at: [at[0], at[1] - low - 2], width_mm, text: c.say('cup-blanks'), size_mm: 3.2, face: 'italic' })
    : null
  return {
    drawing: [...head.drawing, ...rows.drawing, ...(said?.drawing ?? [])],
    height_mm: low + (said ? said.height_mm + 2 : 0),
  }
}

/** Cards to hold against column and stub while the glue sets. */
export function gaugeSheet(c: Context): Drafted {
  const { templates, layout } = c.facts
  if (!isKnown(templates)) return templates
  const t = templates.known
  const spacing_rad =
    isKnown(layout) && layout.known.lineSpacing_m !== null ? (2 * Math.PI) / layout.known.lines.length : null
  const first = hung(wedgeBlock(c, t), [0, 0])
  const second = hung(saddleBlock(c, t, spacing_rad), [0, 0])
  const high = heightOf(bounds(first)!) + 12
  const block = [...first, ...moved(second, [0, -high])]
  const tolerance = c.angle(practiceAngles.rows['stub-angle'].high_rad)
  const lines = [
    ...barLines(c),
    c.say('act-gauge-card'),
    c.say('act-gauge-angle', { tolerance }),
    c.say('act-gauge-radius'),
    c.say('act-gauge-cup'),
  ]
  const box = bounds(block)!
  const [x, y] = topLeft(c)
  const beside = c.room.drawing.right - x - widthOf(bounds(first)!) - 10
  const pages = composedBeside(c, block, lines, beside, widthOf(bounds(first)!))
  const low = y - heightOf(box) - 9
  const room = low - c.room.body.bottom
  const cup = cupBlock(c, t, [x, low], Math.min(widthOf(c.room.drawing), 110))
  const withCup = cup.height_mm <= room ? [[...pages[0]!, ...cup.drawing], ...pages.slice(1)] : pages
  return {
    pages: withCup.map((drawing, i) => ({
      id: 'gauge' as const,
      title: i === 0 ? c.say('gauge-title') : c.say('continued', { title: c.say('gauge-title') }),
      subtitle: c.say('gauge-sub', { column: t.joint.column.label, angle: c.angle(t.joint.stub.angle_rad) }),
      scale: c.say('full-size'),
      drawing,
      ...(i === 0
        ? {
            contours: [
              contour(wedge(t).ring, 'cut', { layer: 'gauge' }),
              ...moved([contour(saddle(t).ring, 'cut', { layer: 'gauge' })], [140, 0]),
            ],
          }
        : {}),
    })),
  }
}

/** The words beside the wedge alone, since the saddle below it is wide. */
function composedBeside(
  c: Context,
  block: Drawing,
  lines: readonly string[],
  beside: number,
  wide: number,
): readonly Drawing[] {
  if (beside < 50) return composed(c, block, { lines })
  const [x, y] = topLeft(c)
  const put = hung(block, [x, y])
  const words = actions({ at: [x + wide + 10, y], width_mm: beside, lines })
  return [[...put, ...words.drawing]]
}
