import { inUnit, readQuantity } from '../kernel/quantity-text.ts'
import { ecScales } from '../tables/ec-scales.ts'
import type { QuantityField } from './field.ts'

const SCALES = ['ppm-500', 'ppm-640', 'ppm-700'] as const
const PPM = /\s*ppm$/i
/** As many as pens show. */
const DIGITS = 3

/**
 * What a conductivity written in ppm would be on the scales that pens use, by 500, by 640 and by 700: `2.20 mS/cm`.
 * Empty where the text is no such number or the field holds no conductivity.
 */
export function onPenScales({ unit }: QuantityField, typed: string): readonly string[] {
  if (unit !== 'S_m' || !PPM.test(typed)) return []
  // Read as one on a scale of its own, so that all ways of writing a number are taken as everywhere else.
  const read = readQuantity(typed.replace(PPM, ' S/m'), unit)
  if (!read.ok) return []
  return SCALES.map((scale) => {
    const shown = inUnit(read.value / ecScales.rows[scale].perS_m, unit, 'mS/cm').toPrecision(DIGITS)
    return `${shown.includes('e') ? Number(shown) : shown} mS/cm`
  })
}
