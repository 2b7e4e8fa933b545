import { nutrientMasses_g_m3 } from '../../disciplines/nutrients/equations-formula.ts'
import type { NutrientsFacts } from '../../disciplines/nutrients/index.ts'
import { isKnown } from '../../plan/known.ts'
import { choiceName } from '../words/place-names.ts'
import type { Words } from '../words/words.ts'
import type { Cell } from './csv.ts'
import { figure } from './figures.ts'

const LITRE_m3 = 1e-3
/** Grams in a kilogram, millilitres in a litre. */
const MILLI = 1000

/** Each element of a target: wanted, brought by the water alone, reached by the batch. */
export function elementCells({ batch, blend }: NutrientsFacts): readonly (readonly Cell[])[] {
  if (!isKnown(batch) || !isKnown(blend)) return []
  const water = nutrientMasses_g_m3(blend.known.amounts)
  return batch.known.problem.targets.map(({ nutrient, wanted_g_m3 }) => {
    const reached_g_m3 = batch.known.reached_g_m3[nutrient]
    return [
      nutrient,
      figure(wanted_g_m3, 4),
      figure(water[nutrient], 4),
      figure(reached_g_m3, 4),
      figure((100 * reached_g_m3) / wanted_g_m3, 1),
    ]
  })
}

/** What each stock bottle holds, by the litre and by its whole volume where the plan tells it. */
export function stockCells(
  { stock }: NutrientsFacts,
  volume_m3: number | null,
  words: Words,
): readonly (readonly Cell[])[] {
  if (!isKnown(stock)) return []
  const { bottles, factor, perFeed } = stock.known
  return bottles.flatMap(({ id, contents }) =>
    contents.map(({ id: product, mass_kg_m3 }): Cell[] => [
      choiceName(id, words),
      factor,
      figure(perFeed * MILLI, 3),
      choiceName(product, words),
      figure(mass_kg_m3, 4),
      volume_m3 === null ? null : figure(volume_m3 / LITRE_m3, 4),
      volume_m3 === null ? null : figure(mass_kg_m3 * volume_m3 * MILLI, 4),
    ]),
  )
}
