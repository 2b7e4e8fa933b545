import { orNull } from '../../plan/known.ts'
import { decimals } from '../display.ts'
import type { PupilKey } from '../words/en/booklet-pupils.ts'
import { type Given, text } from './input.ts'
import type { Block, Chapter, ExampleBlock } from './model.ts'
import { example, HALF_TURN_deg, INCH_m, PI, type Pupil, pupil } from './pupil.ts'
import { acidity, bucket, feeding, tank } from './pupils-water.ts'

function roundPipe(p: Pupil): readonly ExampleBlock[] {
  const layout = orNull(p.g.facts.layout)
  const pipe = p.g.plan.column?.pipe
  if (layout === null || pipe === undefined) return []
  // The tape's word goes before the shop's.
  const d = p.length(layout.circumference_m / Math.PI)
  const scale = p.g.display.lengths === 'in' ? 1 / INCH_m : 1000
  const round = example(p, 'round', {
    slots: { d: `${d.text} ${p.unit}` },
    work: `${decimals(PI, 4, p.g.display.decimal)} × ${d.text}`,
    hand: PI * d.value,
    engine: layout.circumference_m * scale,
    digits: p.resultDigits,
    unit: p.unit,
  })
  const n = layout.lines.length
  if (layout.lineSpacing_m === null || n < 2) return [round]
  const c = p.length(layout.circumference_m)
  return [
    round,
    example(p, 'spacing', {
      slots: { round: `${c.text} ${p.unit}`, n: String(n) },
      work: `${c.text} ÷ ${n}`,
      hand: c.value / n,
      engine: layout.lineSpacing_m * scale,
      digits: p.resultDigits,
      unit: p.unit,
    }),
  ]
}

function counting(p: Pupil): readonly ExampleBlock[] {
  const layout = orNull(p.g.facts.layout)
  if (layout === null || p.g.plan.column?.sites?.pattern !== 'rings') return []
  const { rings, perRing: each, columns } = layout
  const pitch_m = p.g.plan.column.sites.pitch_m
  const scale = p.g.display.lengths === 'in' ? 1 / INCH_m : 1000
  const whole = example(p, 'sites', {
    slots: { rings: String(rings), each: String(each), columns: String(columns) },
    work: `${rings} × ${each} × ${columns}`,
    hand: rings * each * columns,
    engine: layout.plants,
    digits: 0,
    unit: '',
  })
  const n = Math.min(rings, 4)
  const site = layout.sites.find((s) => s.ring === n)
  if (pitch_m === undefined || n < 2 || site === undefined) return [whole]
  const [first, pitch] = [p.length(layout.firstMark_m), p.length(pitch_m)]
  return [
    whole,
    example(p, 'height', {
      slots: {
        n: String(n),
        steps: String(n - 1),
        first: `${first.text} ${p.unit}`,
        pitch: `${pitch.text} ${p.unit}`,
      },
      work: `${first.text} + ${n - 1} × ${pitch.text}`,
      hand: first.value + (n - 1) * pitch.value,
      engine: site.mark_m * scale,
      digits: p.resultDigits,
      unit: p.unit,
    }),
  ]
}

function joint(p: Pupil): readonly ExampleBlock[] {
  const t = orNull(p.g.facts.templates)
  if (t === null) return []
  const { hole, cut } = t.joint
  const scale = p.g.display.lengths === 'in' ? 1 / INCH_m : 1000
  const deg = (rad: number) => p.read((rad * HALF_TURN_deg) / Math.PI, 1)
  const angle = deg(hole.angle_rad)
  const saw_rad = t.stub.saw_rad
  const saw =
    saw_rad === null
      ? []
      : [
          example(p, 'saw', {
            slots: { angle: `${angle.text}°` },
            work: `90 − ${angle.text}`,
            hand: 90 - angle.value,
            engine: (saw_rad * HALF_TURN_deg) / Math.PI,
            digits: 1,
            unit: '°',
          }),
        ]
  // Only a hole along an axis that meets the column's own is as high as this rule says.
  if (cut !== 'axis' || hole.offset_m !== 0) return saw
  const d = p.length(2 * hole.holeRadius_m)
  const sine = p.read(Math.sin((angle.value * Math.PI) / HALF_TURN_deg), 4)
  return [
    ...saw,
    example(p, 'hole', {
      slots: { d: `${d.text} ${p.unit}`, angle: `${angle.text}°`, sine: sine.text },
      work: `${d.text} ÷ ${sine.text}`,
      hand: d.value / sine.value,
      engine: t.holeAlong.extent.height_m * scale,
      digits: p.resultDigits,
      unit: p.unit,
    }),
  ]
}

/** The bands of a school: what is asked in each. */
const bands: readonly { readonly key: PupilKey; readonly of: readonly string[] }[] = [
  { key: 'band-arcs', of: ['round', 'spacing', 'sites', 'height'] },
  { key: 'band-ratios', of: ['saw', 'hole', 'box', 'pail', 'bucket', 'grams-1', 'grams-2'] },
  { key: 'band-pH', of: ['ions'] },
]

/** Examples that this plan has the numbers for, the easiest band first. */
export function examplesOf(g: Given): readonly ExampleBlock[] {
  const p = pupil(g)
  const all = [...roundPipe(p), ...counting(p), ...joint(p), ...tank(p), ...bucket(p), ...feeding(p), ...acidity(p)]
  return bands.flatMap(({ of }) => all.filter((e) => of.includes(e.id)))
}

/** The worksheet: every question with its rule, the steps left to the pupil. Null where there is nothing to work out yet. */
export function pupilsChapter(g: Given): Chapter | null {
  const examples = examplesOf(g)
  if (examples.length === 0) return null
  const numbered = examples.map((e, i) => ({ ...e, question: `${i + 1}. ${e.question}` }))
  const asked = bands.flatMap(({ key, of }): readonly Block[] => {
    const own = numbered.filter((e) => of.includes(e.id))
    return own.length === 0 ? [] : [{ kind: 'heading', text: g.pupils[key] }, ...own]
  })
  return {
    id: 'pupils',
    title: g.pupils.title,
    blocks: [text(g.pupils.how), text(g.pupils.pi, 'quiet'), ...asked],
  }
}

/** The answers, on a page of their own: each sum with its numbers, and what the plan says. */
export function answersChapter(g: Given): Chapter | null {
  const examples = examplesOf(g)
  if (examples.length === 0) return null
  return {
    id: 'answers',
    // Handed out apart from the questions.
    appendix: true,
    title: g.pupils.answers,
    blocks: [text(g.pupils['answers-how'], 'quiet'), ...examples.map((e, i) => text(`${i + 1}. ${e.work}. ${e.plan}`))],
  }
}
