import type { Tube } from './pipe-law.ts'
import type { PumpCurve } from './pump-law.ts'

/** A tube in the tree: it ends open at a height, or in branches. With neither it is a dead end. */
export interface Run extends Tube {
  readonly id: string
  /** Height of the open end above the datum of `level_m`. */
  readonly outlet_m?: number
  readonly branches?: readonly Run[]
}

export interface Network {
  /** Height of the water in the reservoir: the low line, for the worst hour. */
  readonly level_m: number
  readonly pump: PumpCurve
  readonly riser: Run
  readonly viscosity_m2_s: number
  /** Standard gravity where absent. */
  readonly gravity_m_s2?: number
}
