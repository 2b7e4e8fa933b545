import { components } from '../../tables/components.ts'
import { feedTolerances } from '../../tables/feed-practice.ts'
import { feedConstants } from '../../tables/solvent.ts'
import type { BatchDose } from './batch.ts'
import { type Amounts, named } from './composition.ts'
import { alkalinity } from './equations-ph.ts'
import type { Predicted } from './predicted.ts'
import { chargeAgainstPh } from './speciation.ts'

interface Range {
  readonly low: number
  readonly high: number
}

/** What the pens may show of a batch that was mixed as planned, and what makes the bands as wide as they are. */
export interface Expected {
  readonly conductivity_S_m: Range
  /** Just mixed, and once it stands in balance with the air. */
  readonly pHNow: Range
  readonly pHLater: Range
  /** Half-widths of the conductivity, as shares of it. */
  readonly conductivityBy: {
    readonly model: number
    readonly labels: number
    readonly scale: number
    readonly pen: number
  }
  /** Half-widths of the later pH; what the pen may be off is not known where nothing tells of it. */
  readonly pHBy: { readonly model: number; readonly alkalinity: number; readonly pen: number | null }
}

/** Independent errors add up by their squares. */
const together = (parts: readonly number[]): number => Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0))

/** Charge of both signs that a kilogram of a product brings. */
const carried = (amounts: Amounts): number =>
  named(amounts).reduce((sum, id) => sum + Math.abs(components.rows[id].charge * amounts[id]!), 0)

interface Given {
  readonly amounts: Amounts
  readonly water: Amounts
  readonly doses: readonly BatchDose[]
  readonly volume_m3: number | null
  readonly predicted: Predicted
  readonly temperature_C: number
  readonly air_Pa: number | null
  readonly pen_pH: number | null
}

/** How wrong a dose may be: what the bag holds against its label, and half a step of the scale or syringe. */
function doseErrors({ doses, volume_m3 }: Given) {
  const { label, formula, liquid } = feedTolerances.rows
  return doses
    .filter(({ mass_kg }) => mass_kg > 0)
    .map(({ product, mass_kg, step_kg, weakStock }) => {
      const held = product.density_kg_m3 !== null ? liquid : product.nitrogenBy === 'formula' ? formula : label
      // A weak stock is weighed in at least twenty steps, whatever is drawn of it.
      const half = weakStock === null ? step_kg / 2 / mass_kg : 0.5 / feedConstants.rows.weighable.value
      const perVolume = volume_m3 === null ? 0 : mass_kg / volume_m3
      return { product, perVolume, byLabel: held.share, byScale: half }
    })
}

/** Bands of the readings of a batch from model, labels, scale and pens. */
export function expectedReadings(given: Given): Expected {
  const { amounts, water, predicted, temperature_C, air_Pa, pen_pH } = given
  const { analysis, conductivityPen } = feedTolerances.rows
  const errors = doseErrors(given)
  const all = Math.max(Number.MIN_VALUE, carried(amounts))
  const part = (e: (typeof errors)[number]) => (carried(e.product.amounts_mol_kg) * e.perVolume) / all
  const conductivityBy = {
    model: feedConstants.rows.conductivityAccuracy.value,
    labels: together([...errors.map((e) => e.byLabel * part(e)), (analysis.share * carried(water)) / all]),
    scale: together(errors.map((e) => e.byScale * part(e))),
    pen: conductivityPen.share,
  }
  const κ = (predicted.conductivity_S_m.low + predicted.conductivity_S_m.high) / 2
  const half = κ * together(Object.values(conductivityBy))
  const setting = errors.map((e) => Math.abs(alkalinity({ amounts: e.product.amounts_mol_kg })) * e.perVolume)
  const unsure_eq_m3 = together([
    analysis.share * alkalinity({ amounts: water }),
    ...errors.map((e, i) => setting[i]! * together([e.byLabel, e.byScale])),
  ])
  const model = feedConstants.rows.phAccuracy.value
  const around = (pH: Range, carbonDioxide_Pa: number | null) => {
    const mid = (pH.low + pH.high) / 2
    const charge = chargeAgainstPh({ amounts, temperature_C, carbonDioxide_Pa })
    // The pH at which the charges miss by what is not known of them, on one side of the middle.
    const off = (side: 1 | -1) => {
      const passed = (away: number) => -side * charge(mid + side * away)
      let [near, far] = [0, FIRST_STEP_pH]
      let [at0, at1] = [0, passed(far)]
      for (let step = 0; step < SECANTS && at1 !== at0; step++) {
        const next = Math.min(MOST_pH, Math.max(0, near + ((unsure_eq_m3 - at0) * (far - near)) / (at1 - at0)))
        if (Math.abs(next - far) < PRINTED_pH) return next
        ;[near, at0] = [far, at1]
        ;[far, at1] = [next, passed(next)]
      }
      return far
    }
    const [down, up] = [off(-1), off(1)]
    const half = (alkalinity_pH: number) => together([model, alkalinity_pH, pen_pH ?? 0])
    return {
      by: { model, alkalinity: Math.max(down, up), pen: pen_pH },
      band: { low: mid - half(down), high: mid + half(up) },
    }
  }
  const later = around(predicted.pHInAir, air_Pa)
  return {
    conductivity_S_m: { low: κ - half, high: κ + half },
    pHNow: around(predicted.pHClosed, null).band,
    pHLater: later.band,
    conductivityBy,
    pHBy: later.by,
  }
}

/** Wider than this nobody can call it a prediction. */
const MOST_pH = 1.5
/** Steps of the secant: the buffer is nearly straight over some tenths of pH, and two digits are printed. */
const FIRST_STEP_pH = 0.2
const SECANTS = 4
const PRINTED_pH = 0.005
