import { bounds } from '../../render/drawing/bounds.ts'
import { around, letteringRect } from '../../render/drawing/boxes.ts'
import type { Drawing, Point, Primitive, Rect } from '../../render/drawing/primitives.ts'
import { lettering, line } from '../../render/drawing/primitives.ts'
import { svg } from '../../render/drawing/svg.ts'
import { moved } from '../../render/drawing/transform.ts'
import { FIGURE_mm, type Sketch } from '../../render/tower/sketch.ts'
import type { PageWords } from '../../render/words/en/page.ts'
import type { Given, SheetOf } from './drawings.ts'
import { type Stroke, strokes } from './strokes.ts'
import type { Evaluated } from './workers/protocol.ts'

/** What is asked of the drawings, as it can be sent to a worker. */
export interface AskedViews extends Omit<Given, 'shown'> {
  readonly views: readonly string[]
}

/** Marks as the page draws them: strokes, and lettering as the inside of an SVG. */
export interface Inked {
  readonly strokes: readonly Stroke[]
  readonly letters: string
}

export type Corners = readonly [left: number, bottom: number, right: number, top: number]

/** A drawn sheet; figures stay apart from the marks, for they are edited and explained. */
export interface Picture extends Omit<Sketch, 'marks' | 'taken'>, Inked {
  readonly id: string
  /** Where no balloon may stand: left, bottom, right, top. */
  readonly taken?: readonly Corners[]
  readonly titles: readonly (keyof PageWords)[]
}

/** The part of the loop to which a mark belongs, before its own name: a site is of the stubs. */
function tagged(p: Primitive): Primitive {
  if (p.part === undefined) return p
  if (p.part.startsWith('site-')) return { ...p, part: `stubs ${p.part}` }
  return p.part === 'base' ? { ...p, part: 'drain' } : p
}

/** A screen shows a quarter of a millimetre as one point; nearer points of a curve say nothing, unless it turns there. */
const NEAR_mm = 0.25
const TURN_cos = 0.9

function thinned(points: readonly Point[]): readonly Point[] {
  const kept: Point[] = []
  for (const [i, p] of points.entries()) {
    const [before, after] = [kept.at(-1), points[i + 1]]
    if (before && after) {
      const [ax, ay, bx, by] = [p[0] - before[0], p[1] - before[1], after[0] - p[0], after[1] - p[1]]
      const [a, b] = [Math.hypot(ax, ay), Math.hypot(bx, by)]
      if (a < NEAR_mm && ax * bx + ay * by >= TURN_cos * a * b) continue
    }
    kept.push(p)
  }
  return kept
}

const seen = (p: Primitive): Primitive => (p.kind === 'path' ? { ...p, points: thinned(p.points) } : p)

/** Marks for the page, those of a box. */
function inked(drawing: Drawing, box: Rect): Inked {
  const marks = drawing.map(tagged)
  const letters = marks.filter((p) => p.kind === 'text')
  const page = {
    width_mm: box.right - box.left,
    height_mm: box.top - box.bottom,
    drawing: moved(letters, [-box.left, -box.bottom]),
  }
  const text = letters.length === 0 ? '' : svg({ page, title: '', paint: 'class' })
  return {
    strokes: strokes(marks.map(seen), box),
    letters: text === '' ? '' : text.slice(text.indexOf('</title>') + 8, text.lastIndexOf('</svg>')),
  }
}

const out = (n: number, to: (n: number) => number): number => to(n * 100) / 100

/** The box with edges on hundredths, so that rounded curves stay short. */
const framed = ({ left, right, bottom, top }: Rect): Rect => ({
  left: out(left, Math.floor),
  right: out(right, Math.ceil),
  bottom: out(bottom, Math.floor),
  top: out(top, Math.ceil),
})

/** A sheet holds all that is drawn on it: nothing reaches over its neighbour or its title. */
const boxOf = ({ box, marks, figures }: Sketch): Rect => around(box, bounds([...marks, ...figures.map((f) => f.text)]))

/** Air between a figure and a balloon. */
const AIR_mm = 0.3

/** Where balloons cannot stand: on figures, and on lines of dimensions. Sheets without places have none. */
function takenOf({ places, figures, taken = [] }: Sketch): Pick<Picture, 'taken'> {
  if (Object.keys(places).length === 0) return {}
  const rects = [...figures.map((f) => letteringRect(f.text, AIR_mm)), ...taken]
  const corners = ({ left, bottom, right, top }: Rect): Corners => [
    tenth(left),
    tenth(bottom),
    tenth(right),
    tenth(top),
  ]
  return { taken: rects.map(corners) }
}

const tenth = (n: number): number => Math.round(n * 10) / 10

const givenOf = ({ views, ...rest }: AskedViews): Given => ({ ...rest, shown: (id) => views.includes(id) })

/** What the sheets show of an evaluation; sheets without anything to show are left out. */
export function pictures(e: Evaluated, asked: AskedViews, sheets: readonly SheetOf[]): readonly Picture[] {
  const given = givenOf(asked)
  return sheets.flatMap((sheet): Picture[] => {
    const sketch = sheet.draw(e, given)
    if (sketch === null) return []
    const { marks, taken, ...rest } = sketch
    const box = framed(boxOf(sketch))
    return [{ ...rest, ...takenOf(sketch), box, id: sheet.id, titles: sheet.titles(given), ...inked(marks, box) }]
  })
}

/** What a changed plan would draw otherwise: the marks and figures that the present drawing has not. */
function ghostly(now: Sketch, then: Sketch): Drawing {
  const here = new Set(now.marks.map((p) => JSON.stringify(p)))
  const figures = new Set(now.figures.map((f) => JSON.stringify(f.text)))
  return [
    ...then.marks.filter((p) => !(p.kind === 'path' && p.pen === null) && !here.has(JSON.stringify(p))),
    ...then.figures
      .map((f) => f.text)
      .filter((t) => !figures.has(JSON.stringify(t)))
      .map((t) => {
        const over = now.figures.some((f) => Math.hypot(f.text.at[0] - t.at[0], f.text.at[1] - t.at[1]) < 2)
        return over ? { ...t, text: `→ ${t.text}`, at: [t.at[0], t.at[1] - t.size_mm * 1.2] as const } : t
      }),
  ]
}

/** A change that moves no line is written beside its place. */
function noted(now: Sketch, part: string, note: string): Drawing {
  const at = now.places[part] ?? now.places['column'] ?? now.places['reservoir']
  if (at === undefined) return []
  const from: Point = [at[0] - 3, at[1] + 12]
  const said = broken(note)
  const texts = said.map((text, i) => {
    const y = from[1] + 1 + (said.length - 1 - i) * FIGURE_mm * 1.25
    return lettering([from[0], y], text, { size_mm: FIGURE_mm, anchor: 'middle', halo: true })
  })
  return [line(from, at, 'dimension'), ...texts]
}

/** Letters of a line over a drawing. */
const LINE_letters = 30

/** Words in lines that stand over a drawing. */
function broken(text: string): readonly string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 1 + word.length <= LINE_letters) lines.splice(-1, 1, `${last} ${word}`)
    else lines.push(word)
  }
  return lines
}

export interface Change {
  readonly part: string
  readonly note: string
}

/** The change over each sheet that draws it, by the sheet's id; over the tower at least its name, at its place. */
export function ghosts(
  [now, then]: readonly [Evaluated, Evaluated],
  asked: AskedViews,
  sheets: readonly SheetOf[],
  change: Change,
): Readonly<Record<string, Inked>> {
  const given = givenOf(asked)
  const drawn = sheets.flatMap((sheet) => {
    const [a, b] = [sheet.draw(now, given), sheet.draw(then, given)]
    if (a === null) return []
    const marks = b !== null && a.scale === b.scale ? ghostly(a, b) : []
    return [{ id: sheet.id, sketch: a, marks }]
  })
  const moves = drawn.some((d) => d.marks.length > 0)
  const named = (d: (typeof drawn)[number]): Drawing =>
    moves || d.id !== 'tower' ? d.marks : noted(d.sketch, change.part, change.note)
  return Object.fromEntries(drawn.map((d) => [d.id, inked(named(d), framed(boxOf(d.sketch)))]))
}
