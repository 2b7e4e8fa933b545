import { type Component, components } from '../../tables/components.ts'
import { type Amounts, named } from './composition.ts'
import type { Speciation } from './speciation.ts'

/** Charge that one ion brings to a solution, pairs counted with the ion that holds them; positive for cations. */
export interface IonCharge {
  readonly ion: Component
  readonly charge_eq_m3: number
}

/**
 * The charges of a solution at its own pH, ion by ion: those of both signs are equal. Carbonate that the air holds
 * stands as HCO3, and with it the little that water itself brings.
 */
export function ionCharges(amounts: Amounts, solution: Speciation, open: boolean): readonly IonCharge[] {
  const { meanCharge, heldCharge_mol_m3 } = solution
  const order = Object.keys(components.rows) as readonly Component[]
  const present = new Set(named(amounts))
  return order.flatMap((ion): IonCharge[] => {
    const own = present.has(ion) && !(open && ion === 'HCO3') ? meanCharge[ion] * amounts[ion]! : 0
    const charge_eq_m3 = ion === 'HCO3' ? own + heldCharge_mol_m3 : own
    return charge_eq_m3 === 0 ? [] : [{ ion, charge_eq_m3 }]
  })
}
