import { isKnown, orNull } from '../../plan/known.ts'
import { bounds } from '../drawing/bounds.ts'
import type { Drawing, Point, Primitive } from '../drawing/primitives.ts'
import { paragraph, subheading } from '../paper/words.ts'
import { stubSection } from '../views/section.ts'
import { fill } from '../words/fill.ts'
import { heightOf, hung, topLeft, widthOf } from './compose.ts'
import type { Context, Drafted } from './context.ts'
import { cupBlock } from './gauge.ts'
import { findingList } from './open-findings.ts'
import { fittingScale } from './scale.ts'
import { slotTextOf } from './slots.ts'

/** Cautions of the whole build, each once, those of the most steps first. */
function cautionsOf(c: Context): readonly string[] {
  if (!isKnown(c.facts.build)) return []
  const { steps, slots } = c.facts.build.known
  const counts = new Map<string, number>()
  for (const s of steps) for (const k of s.cautions) counts.set(k, (counts.get(k) ?? 0) + 1)
  return [...counts.entries()]
    .sort((a, b) => b[1] - a[1])
    .flatMap(([k]) => (c.words.cautions[k] === undefined ? [] : [fill(c.words.cautions[k], slotTextOf(c, slots))]))
}

/** As many cautions as the page has room for, from a point down. */
function beware(c: Context, [x, top]: Point, width_mm: number): Drawing {
  const cautions = cautionsOf(c)
  const { bottom } = c.room.body
  if (cautions.length === 0 || top - bottom <= 26) return []
  const head = subheading({ at: [x, top], text: c.say('cautions-title'), width_mm })
  const out: Primitive[] = [...head.drawing]
  let low = top - head.height_mm
  const closing = (at: Point) => paragraph({ at, width_mm, text: c.say('cautions-more'), size_mm: 3.2, face: 'italic' })
  const kept = closing([x, low]).height_mm + 1
  for (const text of cautions) {
    const block = paragraph({ at: [x, low], width_mm, text, size_mm: 3.4 })
    if (low - block.height_mm - kept < bottom) break
    out.push(...block.drawing)
    low -= block.height_mm + 1.6
  }
  return [...out, ...closing([x, low]).drawing]
}

/** Section through a stub; beside and below it what is to be mended and what to beware of. */
export function sectionSheet(c: Context): Drafted {
  const { templates } = c.facts
  const { body } = c.room
  const t = orNull(templates)
  const [x, y] = topLeft(c)
  const out: Primitive[] = []
  let low = y
  let reduction = 0
  let width = 0
  if (t !== null) {
    const R = t.joint.stub.columnRadius_m
    const { stub } = t.joint
    const room = { width_mm: 92, height_mm: 96 }
    const scale = fittingScale({
      width_m: R + t.stub.mouthReach_m + stub.stubRadius_m * Math.cos(stub.angle_rad),
      height_m: t.stub.mouthRise_m + stub.stubRadius_m * Math.sin(stub.angle_rad) + 0.6 * R,
      room,
      display: c.display,
    })
    reduction = scale.reduction
    const texts = { figure: c.figure, size: c.size, angle: c.angle, mark: c.say('note-mark') }
    const view = hung(stubSection({ plan: c.plan, templates: t, cup: orNull(t.cup), ratio: scale.ratio, texts }), [
      x,
      y,
    ])
    const box = bounds(view)!
    out.push(...view)
    width = widthOf(box)
    const beside = body.right - x - width - 10
    const cup = beside >= 44 ? cupBlock(c, t, [x + width + 10, y], beside) : null
    if (cup !== null) out.push(...cup.drawing)
    low = y - Math.max(heightOf(box), cup?.height_mm ?? 0) - 8
  }
  const clear = widthOf(c.room.drawing)
  const found = findingList(c, [x, low], clear, low - body.bottom)
  out.push(...found.drawing)
  low -= found.height_mm + 6
  out.push(...beware(c, [x, low], clear))
  const n = isKnown(c.facts.layout) ? String(c.facts.layout.known.plants) : c.say('number-blank')
  return {
    pages: [
      {
        id: 'section',
        title: t === null ? c.say('findings-title') : c.say('section-title'),
        subtitle:
          t === null
            ? (c.plan.name ?? c.say('unnamed'))
            : c.say('section-sub', {
                column: t.joint.column.label,
                stub: t.joint.stubPipe.label,
                angle: c.angle(t.joint.stub.angle_rad),
                n,
              }),
        scale: reduction === 0 ? c.say('no-scale') : c.say('at-scale', { n: String(reduction) }),
        drawing: out,
      },
    ],
  }
}
