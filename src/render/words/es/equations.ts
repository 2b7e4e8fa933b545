import { growing } from './equations-growing.ts'
import { tower } from './equations-tower.ts'
import { water } from './equations-water.ts'

/** What an equation is, what its letters mean and where it holds, beside the English words over its code. */
export interface EquationText {
  readonly about: string
  readonly symbols: string
  readonly valid: string
}

/** In Spanish, every equation that the why of a finding or of a drawing shows. */
export const equationTexts: Readonly<Record<string, EquationText>> = { ...tower, ...water, ...growing }
