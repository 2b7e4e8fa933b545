import type { TankFacts } from '../../../disciplines/reservoir/index.ts'
import { solutionVolume } from '../../../disciplines/reservoir/vessel.ts'
import { inUnit, readQuantity } from '../../../kernel/quantity-text.ts'
import type { Unit } from '../../../kernel/units.ts'
import { readWithSign } from '../../../plan/decimal-signs.ts'
import { fill } from '../../../render/words/fill.ts'
import { language, words } from '../language.ts'

/** Readings of today as typed. */
export interface TypedReadings {
  readonly volume: string
  readonly ec: string
  readonly ph: string
  readonly temp: string
  /** Whether the batch was just mixed: then the pen is held against the prediction. */
  readonly fresh: boolean
}

/** One reading, null where none is typed; `told` says how it was read, `wrong` why it was not. */
interface Read {
  readonly value: number | null
  readonly told: readonly string[]
  readonly wrong: readonly string[]
}

const BARE = /^\d+([.,]\d+)?$/
const PH = { low: 2, high: 11 }
const NONE: Read = { value: null, told: [], wrong: [] }

const unread = (name: 'volume' | 'ec' | 'ph' | 'temp', typed: string, example: string): Read => ({
  ...NONE,
  wrong: [fill(language().tend.unread, { name: language().tend[name], typed, example })],
})

/** What is told of a figure with the decimal sign of another language. */
export function toldSign(name: 'volume' | 'ec' | 'ph' | 'temp', typed: string, unit: Unit): readonly string[] {
  const value = readWithSign(typed, unit, words().decimal)
  const place = language().tend[name]
  return value === null ? [] : [fill(words().phrases['read-as']!, { place, typed, value })]
}

const withUnit = (typed: string, unit: string): string => (BARE.test(typed) ? `${typed} ${unit}` : typed)

export function readTemperature(text: string): Read {
  const typed = withUnit(text.trim(), '°C')
  if (typed === '') return NONE
  const read = readQuantity(typed, 'C')
  if (!read.ok) return unread('temp', text.trim(), '21 °C')
  return { ...NONE, value: read.value, told: toldSign('temp', typed, 'C') }
}

/** A volume, or the height at which the dip stick is wet. */
export function readVolume(text: string, tank: TankFacts | null): Read {
  const typed = withUnit(text.trim(), 'L')
  if (typed === '') return NONE
  const volume = readQuantity(typed, 'm3')
  if (volume.ok) return { ...NONE, value: volume.value, told: toldSign('volume', typed, 'm3') }
  const level = readQuantity(typed, 'm')
  if (!level.ok) return unread('volume', text.trim(), '21 L, 130 mm')
  if (tank === null) return { ...NONE, wrong: [language().tend['wants-tank']] }
  const { depth_m, vessel, standing } = tank
  if (!(level.value >= 0 && level.value <= depth_m)) {
    const most = `${Number(inUnit(depth_m, 'm', level.spelled).toPrecision(4))} ${level.spelled}`
    return { ...NONE, wrong: [fill(language().tend['too-high'], { typed: text.trim(), most })] }
  }
  const value = solutionVolume({ vessel, standing, level_m: level.value })
  return { ...NONE, value, told: toldSign('volume', typed, 'm') }
}

export function readPh(text: string): Read {
  const typed = text.trim()
  if (typed === '') return NONE
  const value = Number(typed.replace(',', '.'))
  if (!(value >= PH.low && value <= PH.high)) return unread('ph', typed, words().decimal === ',' ? '6,3' : '6.3')
  const other = typed.includes(words().decimal === '.' ? ',' : '.')
  const said = { place: language().tend.ph, typed, value: String(value).replace('.', words().decimal) }
  return { ...NONE, value, told: other ? [fill(words().phrases['read-as']!, said)] : [] }
}
