import type { Plan } from '../../plan/plan.ts'
import type { EcScale } from '../../tables/ec-scales.ts'
import { penBand, penDrifts } from '../../tables/feed-practice.ts'
import { sanitisers } from '../../tables/sanitisers.ts'
import { sanitiserVolume } from './equations-running.ts'

/** What the pens can be trusted with. */
export interface PenFacts {
  /** Half-width of the pH reading; null where nothing tells. */
  readonly pH: number | null
  /** Whether acid may be dosed by it. */
  readonly doses: boolean
  /** Scale of the conductivity pen; `unmarked` for ppm of an unknown kind; null where it is not told. */
  readonly scale: EcScale | 'unmarked' | null
}

const scales: Readonly<Record<string, EcScale | 'unmarked'>> = {
  ...{ 'mS/cm': 'mS/cm', 'uS/cm': 'uS/cm', 'dS/m': 'dS/m', CF: 'CF' },
  ...{ 'ppm 500': 'ppm-500', 'ppm 640': 'ppm-640', 'ppm 700': 'ppm-700', 'ppm, not marked': 'unmarked' },
}

export function penFacts(plan: Plan): PenFacts {
  const { penScale, penCalibrated_d, penDrift } = plan.feed ?? {}
  const rows = Object.values(penDrifts.rows)
  const byAge = penCalibrated_d === undefined ? null : (rows.find((r) => penCalibrated_d <= r.upTo_d) ?? rows.at(-1)!)
  const widths = [...(byAge ? [byAge.drift] : []), ...(penDrift === undefined ? [] : [penDrift])]
  const pH = widths.length === 0 ? null : Math.max(...widths)
  const scale = penScale === undefined ? null : scales[penScale]!
  return { pH, doses: pH !== null && pH <= penBand.rows.pH.must, scale }
}

/** A sanitiser as labelled and the volumes to add for the strengths in use. */
export interface SanitiserFacts {
  readonly product: keyof typeof sanitisers.rows
  readonly strength: number
  readonly water_m3: number | null
  readonly add_m3: { readonly low: number; readonly high: number } | null
}

/** Grams in a cubic metre for a product of one gram a millilitre. */
const PURE_g_m3 = 1e6

export function sanitiserFacts(plan: Plan): SanitiserFacts | null {
  const { product, strength, volume_m3 } = plan.feed?.sanitiser ?? {}
  if (product === undefined || strength === undefined) return null
  const { low_g_m3, high_g_m3 } = sanitisers.rows[product]
  const product_g_m3 = strength * PURE_g_m3
  const told = { product, strength, water_m3: volume_m3 ?? null }
  if (volume_m3 === undefined || product_g_m3 <= high_g_m3) return { ...told, add_m3: null }
  const add = (wanted_g_m3: number) => sanitiserVolume({ volume_m3, wanted_g_m3, product_g_m3 })
  return { ...told, add_m3: { low: add(low_g_m3), high: add(high_g_m3) } }
}
