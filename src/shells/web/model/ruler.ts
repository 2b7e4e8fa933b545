import type { Band } from '../../../findings/finding.ts'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import { ends, type Quantity, type Unit } from '../../../kernel/units.ts'
import { type Display, show } from '../../../render/display.ts'

/** A scale for a number beside its limits, in the unit in which it is shown. */
export interface RulerScale {
  readonly unit: string
  readonly from: number
  readonly to: number
  /** Every numbered stroke. */
  readonly major: readonly number[]
  readonly minor: number
  /** From the engine's unit to that of the scale. */
  readonly shown: (engine: number) => number
}

/** How numbers of the engine's unit turn into the shown unit: read back from the unit's own spelling. */
function conversion(unit: Unit, spelled: string): (n: number) => number {
  const at = (n: number): number | null => {
    const read = spelled === '' ? null : readQuantity(`${n} ${spelled}`, unit)
    return read?.ok ? read.value : null
  }
  const [zero, one] = [at(0), at(1)]
  return zero === null || one === null || one === zero ? (n) => n : (n) => (n - zero) / (one - zero)
}

const NICE = [1, 2, 5, 10]

function step(span: number): number {
  const rough = span / 6
  const power = 10 ** Math.floor(Math.log10(rough))
  return power * (NICE.find((n) => n * power >= rough) ?? 10)
}

/** A scale on which all the given quantities and limits are seen, from nought where that is near. */
export function rulerScale(
  quantities: readonly Quantity[],
  bands: readonly Band[],
  unit: Unit,
  display: Display,
): RulerScale {
  const first = quantities[0]!
  const spelled = show(first, display).unit
  const shown = conversion(unit, spelled)
  const all = [
    ...quantities.flatMap((q) => [...ends(q)]),
    ...bands.flatMap((b) => [b.min, b.max].filter((n) => n !== undefined)),
  ].map(shown)
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const wide = high - low > 0 ? high - low : Math.abs(high) || 1
  const nearZero = low >= 0 && low < 1.5 * wide
  const start = nearZero ? 0 : low - 0.15 * wide
  const major = step(high + 0.15 * wide - start)
  const from = Math.floor(start / major + 1e-9) * major
  const to = high + 0.15 * wide
  const count = Math.floor((to - from) / major + 1e-9)
  return {
    unit: spelled,
    from,
    to: Math.max(to, from + major),
    major: Array.from({ length: count + 1 }, (_, i) => Number((from + i * major).toPrecision(9))),
    minor: major / (String(major).includes('2') ? 4 : 5),
    shown,
  }
}
