import { displacedVolume } from '../../disciplines/reservoir/vessel.ts'
import { inUnit } from '../../kernel/quantity-text.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { decimals, inchFraction } from '../display.ts'
import type { PupilKey } from '../words/en/booklet-pupils.ts'
import { fill } from '../words/fill.ts'
import { type Given, text } from './input.ts'
import type { Chapter, ExampleBlock } from './model.ts'
import { bucketOf } from './wet.ts'

/** A number as a pupil reads it: its text, and what that text is worth. */
interface Read {
  readonly text: string
  readonly value: number
}

/** π as it stands on the page. */
const PI = Number(Math.PI.toFixed(4))
const INCH_m = 0.0254
const LITRE_m3 = 0.001
const GALLON_m3 = 1 / inUnit(1, 'm3', 'US gal')
const MINUTE_s = 60
const HALF_TURN_deg = 180

interface Pupil {
  readonly g: Given
  readonly say: (key: PupilKey, slots?: Readonly<Record<string, string>>) => string
  readonly read: (value: number, digits: number) => Read
  /** A length in millimetres with one decimal, or in inches with three. */
  readonly length: (length_m: number) => Read
  readonly unit: string
  readonly resultDigits: number
}

function pupil(g: Given): Pupil {
  const inches = g.display.lengths === 'in'
  const read = (value: number, digits: number): Read => ({
    text: decimals(value, digits, g.display.decimal)
      .replace(/([.,]\d*?)0+$/, '$1')
      .replace(/[.,]$/, ''),
    value: Number(value.toFixed(digits)),
  })
  return {
    g,
    say: (key, slots = {}) => fill(g.pupils[key], slots),
    read,
    length: (m) => (inches ? read(m / INCH_m, 3) : read(m * 1000, 1)),
    unit: g.sheet.unit,
    resultDigits: inches ? 2 : 1,
  }
}

/** What a tape in sixteenths shows for a length in inches. */
function onTape(p: Pupil, { engine, unit }: { readonly engine: number; readonly unit: string }): string {
  if (unit !== 'in') return ''
  return p.say('on-tape', { mark: inchFraction(engine * INCH_m, p.g.display.inchParts).text })
}

/** One example: the sum done with the numbers as they are read, beside what the engine has. */
function example(
  p: Pupil,
  of: string,
  given: {
    readonly slots: Readonly<Record<string, string>>
    readonly rule?: PupilKey
    readonly work: string
    /** By hand, from the numbers as read. */
    readonly hand: number
    /** By the engine, in the same unit. */
    readonly engine: number
    readonly digits: number
    readonly unit: string
  },
): ExampleBlock {
  const { slots, work, digits } = given
  const unit = given.unit === '' ? '' : given.unit === '°' ? '°' : ` ${given.unit}`
  const [hand, engine] = [p.read(given.hand, digits), p.read(given.engine, digits)]
  const last = 10 ** -digits
  const agrees =
    hand.text === engine.text ? 'same' : Math.abs(hand.value - engine.value) <= last * 1.0001 ? 'rounding' : 'different'
  const verdict = p.say(agrees === 'same' ? 'same' : agrees === 'rounding' ? 'rounding' : 'not-same')
  return {
    kind: 'example',
    id: of,
    question: p.say(`${of}-question` as PupilKey, slots),
    given: `${p.say('given')}: ${p.say((given.rule === undefined ? `${of}-given` : given.rule.replace('-line', '-given')) as PupilKey, slots)}.`,
    rule: p.say(given.rule ?? (`${of}-line` as PupilKey), slots),
    work: `${work} = ${hand.text}${unit}`,
    plan: `${p.say('plan', { value: `${engine.text}${unit}${onTape(p, given)}` })} ${verdict}`,
    agrees,
  }
}

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

/** Lengths for a volume: centimetres with two decimals, or inches with three. */
function volumeUnits(p: Pupil) {
  const inches = p.g.display.lengths === 'in'
  return {
    read: (m: number) => (inches ? p.read(m / INCH_m, 3) : p.read(m * 100, 2)),
    unit: inches ? 'in' : 'cm',
    per: inches ? Math.round(GALLON_m3 / INCH_m ** 3) : 1000,
    whole_m3: inches ? GALLON_m3 : LITRE_m3,
    name: inches ? 'gal' : 'L',
  }
}

function tank(p: Pupil): readonly ExampleBlock[] {
  const facts = orNull(p.g.facts.tank)
  if (facts === null || !isKnown(facts.fill)) return []
  const { vessel, standing } = facts
  const { level_m, volume_m3 } = facts.fill.known
  const u = volumeUnits(p)
  const away = p.read(displacedVolume({ standing, level_m }) / u.whole_m3, 3)
  const h = u.read(level_m)
  const at = (foot: number, top: number, share: number) => foot + ((top - foot) * level_m * share) / facts.depth_m
  const said = (r: Read) => `${r.text} ${u.unit}`
  const rest = { engine: volume_m3 / u.whole_m3, digits: 1, unit: u.name }
  const minus = ` ÷ ${u.per} − ${away.text}`
  if (vessel.shape === 'round') {
    const [D, d] = [u.read(at(vessel.bottom_m, vessel.top_m, 1)), u.read(vessel.bottom_m)]
    return [
      example(p, 'pail', {
        slots: { top: said(D), bottom: said(d), h: said(h), away: `${away.text} ${u.name}` },
        work: `${decimals(PI, 4, p.g.display.decimal)} ÷ 12 × ${h.text} × (${D.text}² + ${D.text} × ${d.text} + ${d.text}²)${minus}`,
        hand: ((PI / 12) * h.value * (D.value ** 2 + D.value * d.value + d.value ** 2)) / u.per - away.value,
        ...rest,
      }),
    ]
  }
  if (vessel.shape !== 'box') return []
  const across = (share: number) => u.read(at(vessel.bottomLength_m, vessel.topLength_m, share))
  const along = (share: number) => u.read(at(vessel.bottomWidth_m, vessel.topWidth_m, share))
  const slots = { h: said(h), away: `${away.text} ${u.name}` }
  const upright = vessel.bottomLength_m === vessel.topLength_m || vessel.bottomWidth_m === vessel.topWidth_m
  if (upright) {
    const [a, b] = [across(0.5), along(0.5)]
    return [
      example(p, 'box', {
        slots: { ...slots, a: said(a), b: said(b) },
        work: `${a.text} × ${b.text} × ${h.text}${minus}`,
        hand: (a.value * b.value * h.value) / u.per - away.value,
        ...rest,
      }),
    ]
  }
  // Walls that lean both ways: the area of the middle counts four times (Simpson's rule, exact for such a body).
  const areas = [0, 0.5, 1].map((share) => [across(share), along(share)] as const)
  const product = areas.map(([a, b]) => `${a.text} × ${b.text}`)
  const sum = areas.reduce((total, [a, b], i) => total + (i === 1 ? 4 : 1) * a.value * b.value, 0)
  return [
    example(p, 'box', {
      slots: { ...slots, floor: product[0]!, middle: product[1]!, top: product[2]! },
      rule: 'lean-line',
      work: `${h.text} ÷ 6 × (${product[0]} + 4 × ${product[1]} + ${product[2]})${minus}`,
      hand: ((h.value / 6) * sum) / u.per - away.value,
      ...rest,
    }),
  ]
}

function feeding(p: Pupil): readonly ExampleBlock[] {
  const batch = orNull(p.g.facts.nutrients.batch)
  const doses = batch === null ? null : orNull(batch.doses)
  if (batch === null || doses === null || batch.volume_m3 === null) return []
  const litres = p.read(batch.volume_m3 / LITRE_m3, 1)
  const sorted = [...doses].filter((d) => d.mass_kg > 0 && d.weakStock === null).sort((a, b) => b.mass_kg - a.mass_kg)
  return sorted.slice(0, 2).map((dose, i) => {
    // In a litre as the recipe was found; the whole is weighed to the scale's step.
    const perLitre = p.read((batch.found.doses_g_m3[dose.id] ?? 0) / 1000, 4)
    const digits = Math.max(0, Math.round(-Math.log10(dose.step_kg * 1000)))
    const made = example(p, 'grams', {
      slots: { salt: dose.id, perLitre: perLitre.text, litres: litres.text },
      work: `${perLitre.text} × ${litres.text}`,
      hand: perLitre.value * litres.value,
      engine: dose.mass_kg * 1000,
      digits,
      unit: 'g',
    })
    return { ...made, id: `grams-${i + 1}` }
  })
}

function bucket(p: Pupil): readonly ExampleBlock[] {
  const wanted = p.g.plan.riser?.neededFlow_m3_s
  if (wanted === undefined || wanted <= 0) return []
  const u = volumeUnits(p)
  const volume_m3 = bucketOf(p.g, wanted)
  const [volume, flow] = [p.read(volume_m3 / u.whole_m3, 1), p.read((wanted * MINUTE_s) / u.whole_m3, 3)]
  return [
    example(p, 'bucket', {
      slots: { bucket: `${volume.text} ${u.name}`, flow: `${flow.text} ${u.name}` },
      work: `${volume.text} ÷ ${flow.text} × 60`,
      hand: (volume.value / flow.value) * 60,
      engine: volume_m3 / wanted,
      digits: 0,
      unit: 's',
    }),
  ]
}

/** Worked examples that this plan has the numbers for. */
export function examplesOf(g: Given): readonly ExampleBlock[] {
  const p = pupil(g)
  return [...roundPipe(p), ...counting(p), ...joint(p), ...tank(p), ...bucket(p), ...feeding(p)]
}

/** The page for pupils; null where there is nothing to work out yet. */
export function pupilsChapter(g: Given): Chapter | null {
  const examples = examplesOf(g)
  if (examples.length === 0) return null
  return {
    id: 'pupils',
    title: g.pupils.title,
    blocks: [text(g.pupils.how), text(g.pupils.pi, 'quiet'), ...examples],
  }
}
