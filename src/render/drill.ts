import { ends, type Quantity } from '../kernel/units.ts'
import { drills } from '../tables/drills.ts'
import { type Display, decimals, thousandths } from './display.ts'

/** Less than this apart, a hole is the drill's: rounding of the plan's own text, far below what a drill wanders. */
const SAME_m = 5e-6

/** Of the hole, what a drill of the set may be off; further off it is another hole, and thousandths are told. */
const NEAR = 0.02

/** Findings whose number is a hole as it is drilled. */
const measuresHole: ReadonlySet<string> = new Set(['hydraulics/hole-size'])

export const isHoleSize = (id: string): boolean => measuresHole.has(id)

/** The drill of an inch set that comes nearest, by sixty-fourths: a tape's sixteenths would be another hole. */
function nearestInch(diameter_m: number): string {
  const inch = Object.values(drills.rows).filter((d) => d.system === 'in')
  const off = (d: { readonly diameter_m: number }) => Math.abs(d.diameter_m - diameter_m)
  const best = inch.reduce((a, b) => (off(b) < off(a) ? b : a))
  return off(best) <= NEAR * diameter_m ? best.label : `${thousandths(diameter_m)} in`
}

function sizeText(diameter_m: number, display: Display): string {
  const fitting = Object.values(drills.rows).filter((d) => Math.abs(d.diameter_m - diameter_m) < SAME_m)
  const drill = fitting.find((d) => d.system === display.lengths) ?? fitting[0]
  const own = drill?.label ?? `${decimals(diameter_m * 1000, 1, '.').replace(/\.0$/, '')} mm`
  const label = drill?.system === 'in' || display.lengths === 'mm' ? own : nearestInch(diameter_m)
  const [figure, unit] = [label.slice(0, label.lastIndexOf(' ')), label.slice(label.lastIndexOf(' ') + 1)]
  return `${figure.replace('.', display.decimal)} ${display.units[unit] ?? unit}`
}

/**
 * A hole by the drill that makes it, as the drill is marked; where no drill of the owner's set does, by the nearest of it.
 * The nearest mark of a tape would be another hole.
 */
export function drillText(size: Quantity | number, display: Display): string {
  if (typeof size === 'number') return sizeText(size, display)
  const [low, high] = ends(size).map((d) => sizeText(d, display)) as [string, string]
  if (low === high) return low
  const [a, b] = [low.split(' '), high.split(' ')]
  return a.at(-1) === b.at(-1) ? `${a[0]}–${high}` : `${low}–${high}`
}
