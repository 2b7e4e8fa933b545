import { printedSizes } from '../../tables/printing.ts'
import type { SolidKey } from '../words/en/solids.ts'
import { cupPart, gaugePart, guideParts, lidPart, ringPart, type SolidInput, stubPart } from './makers.ts'
import { type Made, type SolidId, type SolidPart, solidIds } from './part.ts'
import { columnPart, towerPart } from './tower.ts'

const makers: Readonly<Record<SolidId, (given: SolidInput) => Made>> = {
  stub: stubPart,
  guide: guideParts,
  gauge: gaugePart,
  distributor: cupPart,
  'base-ring': ringPart,
  lid: lidPart,
  column: columnPart,
  tower: towerPart,
}

/** A solid that was not made: the fields that are missing, or why there is none. */
export interface Absent {
  readonly id: SolidId
  readonly needs: readonly string[]
  readonly because: SolidKey | null
}

export interface SolidSet {
  readonly parts: readonly SolidPart[]
  readonly absent: readonly Absent[]
}

/** Solids of a plan: all of them, or those that are asked for. */
export function solidSet(
  given: Omit<SolidInput, 'error_m'> & { readonly error_m?: number; readonly only?: readonly SolidId[] },
): SolidSet {
  const input = { ...given, error_m: given.error_m ?? printedSizes.rows['chord-error'].length_m }
  const parts: SolidPart[] = []
  const absent: Absent[] = []
  for (const id of solidIds) {
    if (given.only !== undefined && given.only.length > 0 && !given.only.includes(id)) continue
    const made = makers[id](input)
    if ('parts' in made) parts.push(...made.parts)
    else if ('needs' in made) absent.push({ id, needs: made.needs, because: null })
    else absent.push({ id, needs: [], because: made.because })
  }
  return { parts, absent }
}
