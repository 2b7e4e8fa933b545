import { correction, penGate, type Readings } from '../../../disciplines/nutrients/correction.ts'
import { penReadingOf, readingAt25 } from '../../../disciplines/nutrients/pen-reading.ts'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import type { Unit } from '../../../kernel/units.ts'
import { orNull } from '../../../plan/known.ts'
import type { Display } from '../../../render/display.ts'
import { correctionTexts, penQuestion } from '../../../render/tables/correction.ts'
import { fill } from '../../../render/words/fill.ts'
import { findingText } from '../../../render/words/sentences.ts'
import { language, words } from '../language.ts'
import type { Evaluated } from './protocol.ts'

/** Readings of today as typed. */
export interface TypedReadings {
  readonly volume: string
  readonly ec: string
  readonly ph: string
  readonly temp: string
  /** Whether the batch was just mixed: then the pen is held against the prediction. */
  readonly fresh: boolean
}

const forms = {
  volume: { unit: 'm3', bare: 'L', example: '21 L' },
  temp: { unit: 'C', bare: '°C', example: '21 °C' },
} as const satisfies Readonly<Record<string, { unit: Unit; bare: string; example: string }>>

const BARE = /^\d+([.,]\d+)?$/
const PH = { low: 2, high: 11 }
const TEMPERATURE_C = { low: 0, high: 45 }

type Read = { readonly value: number | null } | { readonly wrong: string }

function read(name: keyof typeof forms, text: string): Read {
  const typed = text.trim()
  if (typed === '') return { value: null }
  const { unit, bare, example } = forms[name]
  const found = readQuantity(BARE.test(typed) ? `${typed} ${bare}` : typed, unit)
  return found.ok
    ? { value: found.value }
    : { wrong: fill(language().tend.unread, { name: language().tend[name], typed, example }) }
}

function readPh(text: string): Read {
  const typed = text.trim()
  if (typed === '') return { value: null }
  const value = Number(typed.replace(',', '.'))
  return value >= PH.low && value <= PH.high
    ? { value }
    : { wrong: fill(language().tend.unread, { name: language().tend.ph, typed, example: '6.3' }) }
}

/** What to pour in today, in sentences; or why that cannot be said. */
export function corrected({ plan, facts }: Evaluated, typed: TypedReadings, display: Display): readonly string[] {
  const { nutrients, tank } = facts
  const reads = [read('volume', typed.volume), readPh(typed.ph), read('temp', typed.temp)]
  const wrong = reads.flatMap((r) => ('wrong' in r ? [r.wrong] : []))
  const ec = typed.ec.trim() === '' ? null : penReadingOf(typed.ec, nutrients.pen)
  const question = ec === null ? null : penQuestion(ec, typed.ec.trim(), words(), display)
  if (wrong.length > 0 || question !== null) return [...wrong, ...(question === null ? [] : [question])]
  const [volume_m3, pH, temp] = reads.map((r) => ('value' in r ? r.value : null))
  const [batch, blend] = [orNull(nutrients.batch), orNull(nutrients.blend)]
  if (batch === null || blend === null) return [language().tend['wants-feed']]
  if (volume_m3 === null || volume_m3 === undefined) return [language().tend.wants]
  const temperature_C = temp ?? batch.temperature_C
  if (temperature_C < TEMPERATURE_C.low || temperature_C > TEMPERATURE_C.high)
    return [fill(words().tables['correct-no-temperature']!, { typed: typed.temp.trim() })]
  const compensation_per_K = plan.feed?.penCompensation
  const conductivity_S_m =
    ec !== null && 'read_S_m' in ec
      ? readingAt25({ reading_S_m: ec.read_S_m, temperature_C, compensation_per_K })
      : null
  const gate = typed.fresh && conductivity_S_m !== null ? penGate(batch, conductivity_S_m) : null
  const told = gate === null ? [] : [findingText(gate, words(), display).sentence]
  if (gate?.verdict === 'fail') return told
  const readings: Readings = { volume_m3, conductivity_S_m, pH: pH ?? null, temperature_C }
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
