import { monotoneCubic } from '../../kernel/interpolate.ts'
import { root } from '../../kernel/solve.ts'
import { frustumLevel, frustumVolume, lyingDrumVolume, prismoidVolume } from './equations-shapes.ts'

/** Inside sizes of a reservoir, or what a person measured by pouring known volumes. */
export type Vessel =
  | { readonly shape: 'round'; readonly bottom_m: number; readonly top_m: number; readonly depth_m: number }
  | {
      readonly shape: 'box'
      readonly bottomLength_m: number
      readonly bottomWidth_m: number
      readonly topLength_m: number
      readonly topWidth_m: number
      readonly depth_m: number
    }
  | { readonly shape: 'lying-drum'; readonly bore_m: number; readonly length_m: number }
  | { readonly shape: 'measured'; readonly marks: readonly { readonly level_m: number; readonly volume_m3: number }[] }

/** A thing that stands in the solution and takes its place: column foot, pump, brick. */
export interface Standing {
  /** Height of its underside over the bottom of the vessel. */
  readonly from_m: number
  readonly to_m: number
  /** Area that it takes at each level between: for an open pipe its wall, for a closed one the whole disc. */
  readonly area_m2: number
}

/** Depth from bottom to rim; of a measured vessel up to its highest mark. */
export function vesselDepth(vessel: Vessel): number {
  if (vessel.shape === 'lying-drum') return vessel.bore_m
  if (vessel.shape === 'measured') return marksOf(vessel.marks).x.at(-1)!
  return vessel.depth_m
}

/** Marks in rising order, begun at the empty vessel. A level that holds less than a lower one is impossible. */
function marksOf(marks: readonly { readonly level_m: number; readonly volume_m3: number }[]) {
  const sorted = [{ level_m: 0, volume_m3: 0 }, ...marks.filter((m) => m.level_m !== 0)].sort(
    (a, b) => a.level_m - b.level_m,
  )
  for (let i = 1; i < sorted.length; i++) {
    const [below, above] = [sorted[i - 1]!, sorted[i]!]
    if (!(above.level_m > below.level_m && above.volume_m3 > below.volume_m3))
      throw new RangeError(
        `vessel: mark ${above.level_m} m, ${above.volume_m3} m3 does not lie above ${below.level_m} m, ${below.volume_m3} m3`,
      )
  }
  return { x: sorted.map((m) => m.level_m), y: sorted.map((m) => m.volume_m3) }
}

/** Volume of the empty vessel up to a level. */
export function grossVolume({ vessel, level_m }: { readonly vessel: Vessel; readonly level_m: number }): number {
  if (vessel.shape === 'round') return frustumVolume({ ...vessel, level_m })
  if (vessel.shape === 'box') return prismoidVolume({ ...vessel, level_m })
  if (vessel.shape === 'lying-drum') return lyingDrumVolume({ ...vessel, level_m })
  return monotoneCubic(marksOf(vessel.marks))(level_m)
}

/** Volume below a level that things in the vessel take up. */
export function displacedVolume(given: { readonly standing: readonly Standing[]; readonly level_m: number }): number {
  const { standing, level_m } = given
  return standing.reduce((sum, thing) => {
    if (!(thing.area_m2 >= 0 && thing.to_m >= thing.from_m))
      throw new RangeError(`displacedVolume: area ${thing.area_m2}, from ${thing.from_m} to ${thing.to_m} is no body`)
    return sum + thing.area_m2 * Math.max(0, Math.min(level_m, thing.to_m) - thing.from_m)
  }, 0)
}

interface Filled {
  readonly vessel: Vessel
  readonly standing: readonly Standing[]
}

/** Solution in the vessel at a level. */
export function solutionVolume({ vessel, standing, level_m }: Filled & { readonly level_m: number }): number {
  const volume = grossVolume({ vessel, level_m }) - displacedVolume({ standing, level_m })
  if (volume < -1e-9) throw new RangeError(`solutionVolume: what stands in the vessel takes more room than it has`)
  return Math.max(0, volume)
}

/** Level at which the vessel holds a volume of solution; throws where it cannot hold so much. */
export function solutionLevel({ vessel, standing, volume_m3 }: Filled & { readonly volume_m3: number }): number {
  if (vessel.shape === 'round' && standing.length === 0) return frustumLevel({ ...vessel, volume_m3 })
  const depth = vesselDepth(vessel)
  const brim = solutionVolume({ vessel, standing, level_m: depth })
  if (!(volume_m3 >= 0 && volume_m3 <= brim * (1 + 1e-9)))
    throw new RangeError(`solutionLevel: V = ${volume_m3} lies outside of 0 to ${brim}`)
  if (volume_m3 === 0) return 0
  if (volume_m3 >= brim) return depth
  const of = (level_m: number) => solutionVolume({ vessel, standing, level_m }) - volume_m3
  return root({ of, low: 0, high: depth })
}
