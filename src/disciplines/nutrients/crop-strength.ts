import type { Plan } from '../../plan/plan.ts'
import { type CropTarget, cropTargets } from '../../tables/crop-targets.ts'
import { cropNames } from '../../tables/feed-practice.ts'

interface Range {
  readonly low: number
  readonly high: number
}

/** The strength and pH that a crop of the plan wants. */
export interface CropStrength {
  readonly at: string
  readonly crop: string
  readonly row: CropTarget
  readonly conductivity_S_m: Range
  readonly pH: Range | null
}

export interface CropFacts {
  readonly crops: readonly CropStrength[]
  /** Crops that the table does not have. */
  readonly unlisted: readonly string[]
  /** What all crops share; low above high where they cannot share a tank. */
  readonly shared_S_m: Range | null
  readonly sharedPh: Range | null
  /** Crops that set the two ends of the shared strength. */
  readonly strongest: string | null
  readonly weakest: string | null
}

function meet(bands: readonly Range[]): Range | null {
  if (bands.length === 0) return null
  return { low: Math.max(...bands.map((b) => b.low)), high: Math.min(...bands.map((b) => b.high)) }
}

/** Strength and pH that the crops of one tank share, and who sets the ends. */
export function cropFacts(plan: Plan): CropFacts {
  const unlisted: string[] = []
  const crops = (plan.crops ?? []).flatMap((entry, i): CropStrength[] => {
    const name = (entry.crop ?? '').toLowerCase().trim()
    if (!Object.hasOwn(cropNames.rows, name)) {
      unlisted.push(entry.crop ?? '')
      return []
    }
    const grown = cropNames.rows[name as keyof typeof cropNames.rows].target as CropTarget
    const row: CropTarget = entry.stage === 'seedling' ? 'seedling' : grown
    const { low_S_m, high_S_m, lowPh, highPh } = cropTargets.rows[row]
    const pH = lowPh === null || highPh === null ? null : { low: lowPh, high: highPh }
    return [{ at: `crops/${i}`, crop: entry.crop ?? '', row, conductivity_S_m: { low: low_S_m, high: high_S_m }, pH }]
  })
  const ends = crops.length === 0 ? null : crops
  const top = ends?.reduce((a, b) => (b.conductivity_S_m.low > a.conductivity_S_m.low ? b : a))
  const bottom = ends?.reduce((a, b) => (b.conductivity_S_m.high < a.conductivity_S_m.high ? b : a))
  return {
    ...{ crops, unlisted },
    shared_S_m: meet(crops.map((c) => c.conductivity_S_m)),
    sharedPh: meet(crops.flatMap((c) => (c.pH ? [c.pH] : []))),
    strongest: top?.crop ?? null,
    weakest: bottom?.crop ?? null,
  }
}

/** Crops whose own band leaves out a strength. */
export const losers = (facts: CropFacts, conductivity_S_m: number): readonly string[] =>
  facts.crops
    .filter(({ conductivity_S_m: { low, high } }) => conductivity_S_m < low || conductivity_S_m > high)
    .map(({ crop }) => crop)
