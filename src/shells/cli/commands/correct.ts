import { correction, penGate, type Readings } from '../../../disciplines/nutrients/correction.ts'
import type { NutrientsFacts } from '../../../disciplines/nutrients/index.ts'
import { penReadingOf, readingAt25 } from '../../../disciplines/nutrients/pen-reading.ts'
import type { TankFacts } from '../../../disciplines/reservoir/index.ts'
import { solutionVolume } from '../../../disciplines/reservoir/vessel.ts'
import { evaluate } from '../../../evaluate.ts'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import type { Unit } from '../../../kernel/units.ts'
import { readWithSign } from '../../../plan/decimal-signs.ts'
import { isKnown, type Known } from '../../../plan/known.ts'
import type { Plan } from '../../../plan/plan.ts'
import { correctionTexts, penQuestion } from '../../../render/tables/correction.ts'
import { fill } from '../../../render/words/fill.ts'
import { findingText } from '../../../render/words/sentences.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, type Stop, say, stop } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { needsText, planFile } from '../plan-file.ts'

type Options = Readonly<Record<string, unknown>>

/** A reading with its unit, or a sentence that says how to write it. */
function sayRead(name: string, typed: string, value: string | null): void {
  if (value !== null) say(fill(language().words.phrases['read-as']!, { place: `--${name}`, typed, value }))
}

function reading(options: Options, name: string, unit: Unit, example: string): number | null | Stop {
  const typed = options[name]
  if (typeof typed !== 'string') return null
  const read = readQuantity(typed, unit)
  sayRead(name, typed, readWithSign(typed, unit, language().words.decimal))
  return read.ok ? read.value : stop(`--${name} "${typed}" cannot be read. Write it like "${example}".`, EXIT.usage)
}

/** Conductivity as the pen shows it: with a unit, or bare on the pen's own scale. */
function penReading(options: Options, { pen }: NutrientsFacts, plan: Plan): number | null | Stop {
  const typed = options['ec']
  if (typeof typed !== 'string') return null
  sayRead('ec', typed, readWithSign(typed, 'S_m', language().words.decimal))
  const read = penReadingOf(typed, pen)
  const question = penQuestion(read, typed, language().words, displayOf(plan))
  return 'read_S_m' in read ? read.read_S_m : stop(question ?? '', EXIT.usage)
}

function volumeOf(options: Options, tank: Known<TankFacts>): number | Stop {
  const volume = reading(options, 'volume', 'm3', '21 L')
  if (volume !== null) return volume
  const level = reading(options, 'level', 'm', '130 mm')
  if (level !== null && typeof level === 'object') return level
  if (level === null)
    return stop('Tell the level (--level "130 mm") or the volume (--volume "21 L") in the tank.', EXIT.usage)
  if (!isKnown(tank)) return stop(needsText(tank.needs), EXIT.input)
  const { depth_m, vessel, standing } = tank.known
  if (level < 0 || level > depth_m)
    return stop(`--level "${String(options['level'])}" is not in a tank ${depth_m} m deep.`, EXIT.usage)
  return solutionVolume({ vessel, standing, level_m: level })
}

function readings(options: Options, plan: Plan, nutrients: NutrientsFacts, tank: Known<TankFacts>): Readings | Stop {
  const volume_m3 = volumeOf(options, tank)
  if (typeof volume_m3 === 'object') return volume_m3
  const ec = penReading(options, nutrients, plan)
  if (ec !== null && typeof ec === 'object') return ec
  const temperature = reading(options, 'temp', 'C', '21 °C')
  if (temperature !== null && typeof temperature === 'object') return temperature
  const pH = options['ph'] === undefined ? null : Number(String(options['ph']).replace(',', '.'))
  if (String(options['ph']).includes(',') && language().words.decimal === '.')
    sayRead('ph', String(options['ph']), String(pH))
  if (pH !== null && !(pH >= 2 && pH <= 11))
    return stop(`--ph "${String(options['ph'])}" is no pH of a tank.`, EXIT.usage)
  const { batch } = nutrients
  const fallback = isKnown(batch) ? batch.known.temperature_C : 20
  if (temperature !== null && !(temperature >= 0 && temperature <= 45))
    return stop(`--temp "${String(options['temp'])}" is no temperature of a tank.`, EXIT.usage)
  const temperature_C = temperature ?? fallback
  const told = { temperature_C, compensation_per_K: plan.feed?.penCompensation }
  return {
    ...{ volume_m3, pH, temperature_C },
    conductivity_S_m: ec === null ? null : readingAt25({ reading_S_m: ec, ...told }),
  }
}

export const correct: CommandOf = {
  name: 'correct',
  summary: 'today’s top-up and acid from the readings of level, EC, pH and temperature',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .option('--level <length>', 'level above the tank’s inside floor, "130 mm"')
      .option('--volume <volume>', 'volume in the tank instead of a level, "21 L"')
      .option('--ec <reading>', 'EC pen, "1.4 mS/cm", or bare on the pen’s scale')
      .option('--ph <number>', 'pH pen')
      .option('--temp <temperature>', 'temperature of the solution, "21 °C"')
      .option('--fresh', 'the batch was just mixed: hold the pen against the prediction, before planting'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const { facts } = evaluate(read.plan, { day: false })
    const { nutrients, tank } = facts
    const found = readings(options, read.plan, nutrients, tank)
    if ('stop' in found) return found
    if (!isKnown(nutrients.batch) || !isKnown(nutrients.blend)) {
      say(needsText([...new Set(isKnown(nutrients.batch) ? [] : nutrients.batch.needs)]))
      return EXIT.input
    }
    const batch = nutrients.batch.known
    const fill_m3 = isKnown(tank) && isKnown(tank.known.fill) ? tank.known.fill.known.volume_m3 : null
    const line_m3 = fill_m3 ?? read.plan.feed?.batch_m3 ?? found.volume_m3
    const mid = (batch.predicted.conductivity_S_m.low + batch.predicted.conductivity_S_m.high) / 2
    const wanted = {
      line_m3,
      conductivity_S_m: read.plan.feed?.conductivity_S_m ?? mid,
      pH: read.plan.feed?.pH ?? null,
    }
    const { blend, shelf, pen } = nutrients
    const today = correction({ readings: found, wanted, batch, blend: blend.known, shelf: shelf.products, pen })
    const gate =
      options['fresh'] === true && found.conductivity_S_m !== null ? penGate(batch, found.conductivity_S_m) : null
    const code = gate?.verdict === 'fail' ? EXIT.fails : EXIT.holds
    if (options['json']) {
      json({ issues: read.issues, readings: found, wanted, correction: today, gate })
      return code
    }
    const display = displayOf(read.plan)
    if (gate) out(findingText(gate, language().words, display).sentence)
    const factor = isKnown(nutrients.stock) ? nutrients.stock.known.factor : null
    const doses = isKnown(batch.doses) ? batch.doses.known : []
    const goal = { pH: wanted.pH, readPh: found.pH, penWidth: pen.pH, factor, doses }
    if (code === EXIT.holds) out(correctionTexts(today, goal, language().words, display).join('\n'))
    return code
  },
}
