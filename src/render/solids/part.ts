import type { Quantity } from '../../kernel/units.ts'
import type { SolidKey } from '../words/en/solids.ts'
import type { Scene } from './scene.ts'

/** Every solid there is, in the order in which they are listed. */
export const solidIds = ['stub', 'guide', 'gauge', 'distributor', 'base-ring', 'lid', 'column', 'tower'] as const
export type SolidId = (typeof solidIds)[number]

export interface Remark {
  readonly key: SolidKey
  readonly slots?: Readonly<Record<string, Quantity>>
}

/** One solid as a file holds it. */
export interface SolidPart {
  readonly id: SolidId
  /** Name of the file and of the sentence that names the part. */
  readonly name: SolidKey
  readonly scene: Scene
  readonly size_m: readonly [x: number, y: number, z: number]
  /** For a printer, and not only for looking at. */
  readonly printed: boolean
  /** Whether it fits the bed; null where the bed is not known or it is not for a printer. */
  readonly fits: boolean | null
  /** In touch with the water of food plants. */
  readonly wetted: boolean
  readonly remarks: readonly Remark[]
}

/** What a maker of solids gives: parts, the fields that it lacks, or why there is none. */
export type Made =
  | { readonly parts: readonly SolidPart[] }
  | { readonly needs: readonly string[] }
  | { readonly because: SolidKey }
