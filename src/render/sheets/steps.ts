import type { BuildFacts, Step } from '../../disciplines/build/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import { lettersWidth } from '../drawing/letters.ts'
import { type Drawing, lettering, line, type Point, type Primitive } from '../drawing/primitives.ts'
import { actions, paragraph } from '../paper/words.ts'
import { finerThanTape } from '../tape.ts'
import { fill } from '../words/fill.ts'
import { topLeft, widthOf } from './compose.ts'
import type { Context, Draft, Drafted, SheetId } from './context.ts'
import { flowed } from './cuts.ts'
import { slotTextOf } from './slots.ts'

/** Which of the sheets a step speaks of. */
export const sheetOf: Readonly<Record<string, SheetId>> = {
  parts: 'parts',
  templates: 'hole',
  'cut-list': 'cuts',
  marks: 'marking',
  'hole-template': 'hole',
  'stub-template': 'stub',
  'angle-gauge': 'gauge',
  'distributor-plate': 'distributor',
  lid: 'lid',
  base: 'lid',
}

/** The sentences of a step, filled. */
export interface StepText {
  readonly title: string
  readonly times: string
  readonly acts: readonly string[]
  readonly cautions: readonly string[]
  readonly test: string
  readonly waits: readonly string[]
}

export function stepText(c: Context, s: Step, number: number, build: BuildFacts): StepText {
  const slots = slotTextOf(c, build.slots)
  const time = (seconds: number) => c.shown(quantity(seconds, 's'))
  const acts = s.actions.map((a) => fill(c.words.steps.acts[a] ?? a, slots))
  const must = s.test?.must
  // Both ends of a check bar's tolerance lie on one mark of an inch tape: it is measured in millimetres.
  const bothAlike = must?.min !== undefined && must.max !== undefined && c.length(must.min) === c.length(must.max)
  const lengthOf = (n: number) => (bothAlike ? c.ofBar(n) : (finerThanTape(n, c.display) ?? c.length(n)))
  const limit = (n: number | undefined) =>
    n === undefined ? '' : s.test!.unit === 'm' ? lengthOf(Math.abs(n)) : c.shown(quantity(n, s.test!.unit))
  const test =
    s.test === null
      ? ''
      : fill(c.words.steps.tests[s.test.id] ?? '', { ...slots, min: limit(must?.min), max: limit(must?.max) })
  return {
    title: c.say('step-hands', { n: String(number), title: c.words.steps.titles[s.id] ?? s.id }),
    times: [
      c.say('step-time', { hands: time(s.hands_s) }),
      ...(s.stay_s > 0 ? [c.say('step-stay', { stay: time(s.stay_s) })] : []),
      ...(s.away_s > 0 ? [c.say('step-away', { away: time(s.away_s) })] : []),
    ].join(', '),
    acts,
    cautions: s.cautions.flatMap((k) => (c.words.cautions[k] === undefined ? [] : [fill(c.words.cautions[k], slots)])),
    test: test === '' ? '' : c.say('step-test', { test }),
    waits: s.needs.flatMap((n) =>
      n.waitFor === null || n.wait_s === 0
        ? []
        : [
            fill(c.words.steps.waits[n.waitFor] ?? '', {
              time: time(n.wait_s),
              step: c.words.steps.titles[n.step] ?? n.step,
            }),
          ],
    ),
  }
}

interface Said {
  readonly height_mm: number
  readonly draw: (at: Point) => Drawing
}

function piece(t: StepText, reference: string, width: number): Said {
  const set = ([x, y]: Point): { readonly drawing: Drawing; readonly gone: number } => {
    const out: Primitive[] = [line([x, y], [x + width, y], 'thin')]
    out.push(lettering([x, y - 5.4], t.title, { face: 'strong', size_mm: 4.2 }))
    const aside = reference === '' ? t.times : `${t.times}; ${reference}`
    const fits =
      lettersWidth({ text: t.title, face: 'strong', size_mm: 4.2 }) +
        lettersWidth({ text: aside, face: 'italic', size_mm: 3.3 }) +
        6 <
      width
    out.push(
      lettering(fits ? [x + width, y - 5.4] : [x, y - 9.8], aside, {
        face: 'italic',
        size_mm: 3.3,
        anchor: fits ? 'end' : 'start',
        tone: 'quiet',
      }),
    )
    let gone = fits ? 8.4 : 12.6
    for (const wait of t.waits) {
      const b = paragraph({ at: [x, y - gone], width_mm: width, text: wait, face: 'medium', size_mm: 3.4 })
      out.push(...b.drawing)
      gone += b.height_mm + 1.4
    }
    for (const text of t.cautions) {
      const b = paragraph({ at: [x, y - gone], width_mm: width, text, face: 'medium', size_mm: 3.4 })
      out.push(...b.drawing)
      gone += b.height_mm + 1.4
    }
    if (t.cautions.length + t.waits.length > 0) gone += 1
    const acts = actions({ at: [x, y - gone], width_mm: width, lines: [...t.acts] })
    out.push(...acts.drawing)
    gone += acts.height_mm
    if (t.test !== '') {
      const b = paragraph({ at: [x, y - gone - 2.4], width_mm: width, text: t.test, face: 'medium', size_mm: 3.6 })
      out.push(...b.drawing)
      gone += b.height_mm + 2.4
    }
    return { drawing: out, gone: gone + 5.4 }
  }
  return { height_mm: set([0, 0]).gone, draw: (at) => set(at).drawing }
}

/** All steps in order; `numbers` tells on which page of the set a sheet begins. */
export function stepsSheet(c: Context, numbers: ReadonlyMap<SheetId, number>): Drafted {
  const { build } = c.facts
  if (!isKnown(build)) return build
  const b = build.known
  const width = widthOf(c.room.drawing)
  const pieces = b.steps.map((s, i) => {
    const id = s.id === 'closure' ? 'strip' : s.sheet === null ? undefined : sheetOf[s.sheet]
    const page = id === undefined ? undefined : numbers.get(id)
    return piece(stepText(c, s, i + 1, b), page === undefined ? '' : `${c.say('sheet')} ${page}`, width)
  })
  const time = (seconds: number) => c.shown(quantity(seconds, 's'))
  const subtitle = c.say('steps-sub', {
    hands: time(b.hands_s),
    elapsed: time(b.elapsed_s),
    alone: time(b.elapsedAlone_s),
  })
  const [, y] = topLeft(c)
  return {
    pages: (y > 0 ? flowed(c, pieces) : []).map(
      (drawing, i): Draft => ({
        id: 'steps',
        title: i === 0 ? c.say('steps-title') : c.say('continued', { title: c.say('steps-title') }),
        subtitle,
        scale: c.say('no-scale'),
        drawing,
      }),
    ),
  }
}
