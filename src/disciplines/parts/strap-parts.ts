import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import { GRAVITY_m_s2 } from '../../tables/constants.ts'
import { fixings } from '../../tables/consumables.ts'
import { type Part, part } from './part.ts'

/** Straps and their anchors, as they are sold: by the force or by the weight that hangs from them. */
export function strapParts(plan: Plan, given: { readonly columns: number; readonly strap_N: number | null }): Part[] {
  const { columns, strap_N } = given
  const load_N = plan.column?.base?.strapLoad_N ?? strap_N
  const screws = columns * fixings.rows['strap-screws'].each_count
  return [
    part('strap', 'fixing', {
      count: quantity(columns, 'count'),
      sizes: load_N === null ? {} : { load: quantity(load_N, 'N'), hangs: quantity(load_N / GRAVITY_m_s2, 'kg') },
      unit_money: plan.prices?.strap,
      priceAt: 'prices/strap',
    }),
    part('strap-screws', 'fixing', { count: quantity(screws, 'count'), pricedWith: 'strap' }),
  ]
}
