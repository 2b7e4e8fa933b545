import { correction, penGate, type Readings } from '../../../disciplines/nutrients/correction.ts'
import { penReadingOf, readingAt25 } from '../../../disciplines/nutrients/pen-reading.ts'
import { orNull } from '../../../plan/known.ts'
import type { Display } from '../../../render/display.ts'
import { correctionTexts, penQuestion } from '../../../render/tables/correction.ts'
import { fill } from '../../../render/words/fill.ts'
import { findingText } from '../../../render/words/sentences.ts'
import { language, words } from '../language.ts'
import type { Evaluated } from './protocol.ts'
import { readPh, readTemperature, readVolume, type TypedReadings, toldSign } from './typed-readings.ts'

const TEMPERATURE_C = { low: 0, high: 45 }

/** What to pour in today, in sentences; or why that cannot be said. */
export function corrected({ plan, facts }: Evaluated, typed: TypedReadings, display: Display): readonly string[] {
  const { nutrients, tank } = facts
  const volume = readVolume(typed.volume, orNull(tank))
  const [acidity, warmth] = [readPh(typed.ph), readTemperature(typed.temp)]
  const reads = [volume, acidity, warmth]
  const wrong = reads.flatMap((r) => r.wrong)
  const ec = typed.ec.trim() === '' ? null : penReadingOf(typed.ec, nutrients.pen)
  const question = ec === null ? null : penQuestion(ec, typed.ec.trim(), words(), display)
  if (wrong.length > 0 || question !== null) return [...wrong, ...(question === null ? [] : [question])]
  const [batch, blend] = [orNull(nutrients.batch), orNull(nutrients.blend)]
  if (batch === null || blend === null) return [language().tend['wants-feed']]
  if (volume.value === null) return [language().tend.wants]
  const volume_m3 = volume.value
  const temperature_C = warmth.value ?? batch.temperature_C
  if (temperature_C < TEMPERATURE_C.low || temperature_C > TEMPERATURE_C.high)
    return [fill(words().tables['correct-no-temperature']!, { typed: typed.temp.trim() })]
  const compensation_per_K = plan.feed?.penCompensation
  const conductivity_S_m =
    ec !== null && 'read_S_m' in ec
      ? readingAt25({ reading_S_m: ec.read_S_m, temperature_C, compensation_per_K })
      : null
  const gate = typed.fresh && conductivity_S_m !== null ? penGate(batch, conductivity_S_m) : null
  const signs = [...reads.flatMap((r) => r.told), ...toldSign('ec', typed.ec.trim(), 'S_m')]
  const told = [...signs, ...(gate === null ? [] : [findingText(gate, words(), display).sentence])]
  if (gate?.verdict === 'fail') return told
  const readings: Readings = { volume_m3, conductivity_S_m, pH: acidity.value, temperature_C }
  const { low, high } = batch.predicted.conductivity_S_m
  const line = orNull(tank)?.fill
  const filled = line === undefined ? null : orNull(line)
  const wanted = {
    line_m3: filled?.volume_m3 ?? plan.feed?.batch_m3 ?? volume_m3,
    conductivity_S_m: plan.feed?.conductivity_S_m ?? (low + high) / 2,
    pH: plan.feed?.pH ?? null,
  }
  const { shelf, pen, stock } = nutrients
  const today = correction({ readings, wanted, batch, blend, shelf: shelf.products, pen })
  const of = { factor: orNull(stock)?.factor ?? null, doses: orNull(batch.doses) ?? [] }
  const goal = { pH: wanted.pH, readPh: readings.pH, penWidth: pen.pH, ...of }
  return [...told, ...correctionTexts(today, goal, words(), display)]
}
