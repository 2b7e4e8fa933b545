import { displacedVolume } from '../../disciplines/reservoir/vessel.ts'
import { inUnit } from '../../kernel/quantity-text.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { decimals } from '../display.ts'
import type { ExampleBlock } from './model.ts'
import { example, INCH_m, PI, type Pupil, type Read } from './pupil.ts'
import { bucketOf } from './wet.ts'

const LITRE_m3 = 0.001
const GALLON_m3 = 1 / inUnit(1, 'm3', 'US gal')
const MINUTE_s = 60

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

export function tank(p: Pupil): readonly ExampleBlock[] {
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

export function feeding(p: Pupil): readonly ExampleBlock[] {
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

export function bucket(p: Pupil): readonly ExampleBlock[] {
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

/** One step of pH is a factor of ten: water in the air against the pH wanted. */
export function acidity(p: Pupil): readonly ExampleBlock[] {
  const batch = orNull(p.g.facts.nutrients.batch)
  const wanted = p.g.plan.feed?.pH
  if (batch === null || wanted === undefined || batch.waterPh.inAir <= wanted) return []
  const [water, feed] = [p.read(batch.waterPh.inAir, 4), p.read(wanted, 2)]
  return [
    example(p, 'ions', {
      slots: { water: water.text, feed: feed.text },
      work: `10^(${water.text} − ${feed.text})`,
      hand: 10 ** (water.value - feed.value),
      engine: 10 ** (batch.waterPh.inAir - wanted),
      digits: 0,
      unit: '',
    }),
  ]
}
