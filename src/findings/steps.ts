import { edgeUnits } from '../kernel/edge-units.ts'
import { inUnit, readQuantity } from '../kernel/quantity-text.ts'
import type { Unit } from '../kernel/units.ts'
import { valueAt } from '../plan/patch.ts'
import type { PlanDocument } from '../plan/plan.ts'

/** A length that nearly every plan states: its unit serves for lengths that the plan leaves out. */
const SPOKEN = 'column/stub/lowerSide'

/** What goes with inches, for quantities that the plan leaves out. */
const byInches: Readonly<Partial<Record<Unit, string>>> = {
  N: 'lbf',
  kg: 'lb',
  kg_m2: 'lb/ft2',
  m3: 'US gal',
  m3_s: 'US gph',
  m_s: 'mph',
  C: '°F',
}

/** The unit that the person used for this field, so that a remedy speaks the same language. */
function spelledAs(document: PlanDocument, path: string, unit: Unit): string {
  const typed = valueAt(document, path)
  if (typeof typed === 'string') {
    const read = readQuantity(typed, unit)
    // Feet are told by the tape in inches; the head of a pump is read from its box.
    if (read.ok) return read.spelled === 'ft' && path !== 'pump/maxHead' ? 'in' : read.spelled
  }
  if (path === SPOKEN) return edgeUnits[unit]?.[0]?.spell[0] ?? ''
  const spoken = spelledAs(document, SPOKEN, 'm')
  if (unit === 'm') return spoken
  const besideInches = spoken === 'in' ? byInches[unit] : undefined
  if (besideInches !== undefined) return besideInches
  return edgeUnits[unit]?.[0]?.spell[0] ?? ''
}

const INCH_FRACTIONS = 16

function inchText(sixteenths: number): string {
  const whole = Math.floor(sixteenths / INCH_FRACTIONS)
  let [top, under] = [sixteenths - whole * INCH_FRACTIONS, INCH_FRACTIONS]
  while (top > 0 && top % 2 === 0) [top, under] = [top / 2, under / 2]
  return top === 0 ? `${whole} in` : `${whole === 0 ? '' : `${whole} `}${top}/${under} in`
}

/** Without the dust of floating point. */
const tidy = (n: number): number => Number(n.toPrecision(9))

/** Digits of a step that can be set and told: 0.25, 12.5, 1.75. */
const FEW_DIGITS = 3

const isRound = (n: number): boolean => tidy(n) === Number(n.toPrecision(FEW_DIGITS))

const ROUND = [1, 2, 2.5, 5] as const

/** The largest round number that is no more than `n`. */
function roundBelow(n: number): number {
  const decade = 10 ** Math.floor(Math.log10(n) + 1e-9)
  return tidy(decade * (ROUND.findLast((r) => r * decade <= n * (1 + 1e-9)) ?? 1))
}

/** A quantity on a scale of whole steps, each of which can be typed and set as it is told. */
export interface Scale {
  /** Size of one step in the engine's unit. */
  readonly step: number
  /** The quantity at a whole number of steps, as the person would type it. */
  readonly text: (steps: number) => string
}

/**
 * The scale for a field: in the unit in which it was typed, in steps as wanted. A step that is no round number in that
 * unit is taken in another unit where it is one (a minute is none in hours), else made round and smaller (a litre is
 * none in gallons). Inches go by sixteenths.
 */
export function scaleOf(document: PlanDocument, path: string, unit: Unit, wanted: number): Scale {
  const typed = spelledAs(document, path, unit)
  if (typed === 'in') return { step: 0.0254 / INCH_FRACTIONS, text: inchText }
  const sizeIn = (spelled: string): number => inUnit(wanted, unit, spelled) - inUnit(0, unit, spelled)
  // Time is told by the clock: minutes where hours would need a fraction.
  const clock = unit === 's' && !isRound(sizeIn(typed)) ? ['min', 's'].find((u) => isRound(sizeIn(u))) : undefined
  const spelled = clock ?? typed
  const size = isRound(sizeIn(spelled)) ? tidy(sizeIn(spelled)) : roundBelow(sizeIn(spelled))
  const one = readQuantity(`${size} ${spelled}`, unit)
  return { step: one.ok ? one.value : wanted, text: (steps) => `${tidy(steps * size)} ${spelled}` }
}
