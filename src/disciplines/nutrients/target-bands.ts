import { targetBands } from '../../tables/feed-practice.ts'
import type { Nutrient } from './composition.ts'

const traces: readonly Nutrient[] = ['Fe', 'Mn', 'Zn', 'B', 'Cu', 'Mo']

export const isTrace = (nutrient: Nutrient): boolean => traces.includes(nutrient)

/** Shares of its target between which a nutrient is good, and between which it feeds without harm. */
export const targetBand = (nutrient: Nutrient) =>
  targetBands.rows[isTrace(nutrient) ? 'trace' : nutrient === 'S' ? 'sulfur' : 'main']
