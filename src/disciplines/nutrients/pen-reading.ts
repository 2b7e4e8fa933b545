import { readQuantity } from '../../kernel/quantity-text.ts'
import type { EcScale } from '../../tables/ec-scales.ts'
import { feedPractice } from '../../tables/feed-practice.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { compensatedConductivity, rawConductivity } from './equations-conductivity.ts'
import { penConductivity } from './equations-water-report.ts'
import type { PenFacts } from './instruments.ts'

/** What a conductivity pen showed, as typed, or what has to be asked about it. */
export type PenReading =
  | { readonly read_S_m: number }
  /** A bare number on a pen whose scale nobody knows: what it would be on each of the three. */
  | { readonly onScales_S_m: Readonly<Record<'ppm-500' | 'ppm-640' | 'ppm-700', number>> }
  /** A number that no feed has, and what it would be in a thousandth of its unit. */
  | { readonly beyond_S_m: number; readonly perhaps_S_m: number }
  | { readonly unread: true }

const BARE = /^\d+([.,]\d+)?( ?ppm)?$/i
const MILLI = 1000

function within(S_m: number): PenReading {
  const { high } = feedPractice.rows.penReading
  return S_m <= high ? { read_S_m: S_m } : { beyond_S_m: S_m, perhaps_S_m: S_m / MILLI }
}

/** Reads it with its unit, or bare on the pen's own scale. */
export function penReadingOf(typed: string, { scale }: Pick<PenFacts, 'scale'>): PenReading {
  const text = typed.trim()
  if (!BARE.test(text)) {
    const found = readQuantity(text, 'S_m')
    return found.ok ? within(found.value) : { unread: true }
  }
  const reading = Number(text.replace(/ ?ppm/i, '').replace(',', '.'))
  const on = (of: EcScale) => penConductivity({ reading, scale: of })
  const ppm = /ppm/i.test(text) && !(scale ?? '').startsWith('ppm')
  if (ppm || scale === null || scale === 'unmarked')
    return { onScales_S_m: { 'ppm-500': on('ppm-500'), 'ppm-640': on('ppm-640'), 'ppm-700': on('ppm-700') } }
  return within(on(scale))
}

/** A reading at 25 °C as feed has it: the pen's own compensation undone, that of feed put in its place. */
export function readingAt25(given: {
  readonly reading_S_m: number
  readonly temperature_C: number
  /** Rise per kelvin that the pen takes off, 0 for a pen without compensation; undefined where nobody told. */
  readonly compensation_per_K: number | undefined
}): number {
  const { reading_S_m, temperature_C, compensation_per_K } = given
  if (compensation_per_K === undefined) return reading_S_m
  const raw = rawConductivity({ at25_S_m: reading_S_m, temperature_C, coefficient_per_K: compensation_per_K })
  const { value } = feedConstants.rows.compensation
  return compensatedConductivity({ reading_S_m: raw, temperature_C, coefficient_per_K: value })
}
