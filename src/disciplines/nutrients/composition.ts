import { type Component, components } from '../../tables/components.ts'
import { type PublishedFeed, recipes } from '../../tables/recipes.ts'

/** Totals of a solution in mol/m³ (mmol/L); what is absent is zero. Also amounts per kilogram of a product. */
export type Amounts = Readonly<Partial<Record<Component, number>>>

const ids = Object.keys(components.rows) as readonly Component[]

/** Components that a solution names, in the order of the table. */
export const named = (amounts: Amounts): readonly Component[] => ids.filter((id) => amounts[id] !== undefined)

/** Adds parts, each times its factor. */
export function mixed(parts: readonly { readonly amounts: Amounts; readonly times: number }[]): Amounts {
  const sum: Partial<Record<Component, number>> = {}
  for (const { amounts, times } of parts)
    for (const id of ids) {
      const amount = amounts[id]
      if (amount === undefined) continue
      const before = sum[id]
      sum[id] = before === undefined ? amount * times : before + amount * times
    }
  return sum
}

/** Reads the ions of a row of the table of salts, `5 Ca + 11 NO3 + NH4`. */
export function ionsOf(text: string): Amounts {
  const amounts: Partial<Record<Component, number>> = {}
  for (const part of text.split(' + ')) {
    const [count, id] = part.includes(' ') ? part.split(' ') : ['1', part]
    if (!ids.includes(id as Component)) throw new RangeError(`ionsOf: ${id} in "${text}" is no component`)
    amounts[id as Component] = Number(count)
  }
  return amounts
}

/** Charge of the totals in their reference forms: zero for whole salts, the alkalinity of a water. */
export const referenceCharge = (amounts: Amounts): number =>
  ids.reduce((sum, id) => sum + components.rows[id].charge * (amounts[id] ?? 0), 0)

/** Nutrients and ballast as a grower counts them; nitrogen also by its two forms. */
export type Nutrient =
  | 'N'
  | 'NO3-N'
  | 'NH4-N'
  | 'P'
  | 'K'
  | 'Ca'
  | 'Mg'
  | 'S'
  | 'Na'
  | 'Cl'
  | 'Si'
  | 'Fe'
  | 'Mn'
  | 'Zn'
  | 'B'
  | 'Cu'
  | 'Mo'

export const nutrients: readonly Nutrient[] = [
  ...(['N', 'NO3-N', 'NH4-N', 'P', 'K', 'Ca', 'Mg', 'S', 'Na', 'Cl'] as const),
  ...(['Si', 'Fe', 'Mn', 'Zn', 'B', 'Cu', 'Mo'] as const),
]

const holders = Object.fromEntries(
  nutrients.map((nutrient) => [nutrient, ids.filter((id) => components.rows[id].element === nutrient)]),
) as unknown as Readonly<Record<Nutrient, readonly Component[]>>

/** Amount of a nutrient over all components that hold it. */
export function nutrientAmount(amounts: Amounts, nutrient: Nutrient): number {
  if (nutrient === 'NO3-N') return amounts.NO3 ?? 0
  if (nutrient === 'NH4-N') return amounts.NH4 ?? 0
  let sum = 0
  for (const id of holders[nutrient]) sum += amounts[id] ?? 0
  return sum
}

/** Element whose atoms a nutrient counts. */
export const elementOf = (nutrient: Nutrient) =>
  nutrient === 'NO3-N' || nutrient === 'NH4-N' ? ('N' as const) : nutrient

/** Main ions of a published feed. */
export function feedAmounts(feed: PublishedFeed): Amounts {
  const { NO3, NH4, H2PO4, K, Ca, Mg, SO4 } = recipes.rows[feed]
  return { NO3, NH4, H2PO4, K, Ca, Mg, SO4 }
}
