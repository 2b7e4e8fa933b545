import { count, number, section, text, type ValuesOf } from './field.ts'
import { column, towers } from './sections/column.ts'
import { distributor } from './sections/distributor.ts'
import { drain } from './sections/drain.ts'
import { crops, feed, lamps } from './sections/growing.ts'
import { place } from './sections/place.ts'
import { pump } from './sections/pump.ts'
import { reservoir } from './sections/reservoir.ts'
import { riser } from './sections/riser.ts'
import { water } from './sections/water.ts'
import { measured, prices, stock, tools } from './sections/workshop.ts'

/** Version of the document's form that this code writes. */
export const PLAN_VERSION = 1

/** The plan document, section by section in the order of the water. */
export const planFields = section('A tower as planned: everything by its measure, as a person types it.', {
  rootfall: number({ min: 1, max: PLAN_VERSION, about: 'Version of this form.' }),
  name: text('Name of the tower.', 80),
  note: text('What the reader should know first.', 2000),
  change: count({ min: 0, max: 1e9, about: 'Number of the last change.' }),
  place,
  water,
  reservoir,
  pump,
  riser,
  distributor,
  towers,
  column,
  drain,
  lamps,
  crops,
  feed,
  stock,
  tools,
  prices,
  measured,
})

/** The plan in memory: numbers in the engine's units, every entry possibly absent. */
export type Plan = ValuesOf<typeof planFields.fields>

/** The plan as kept and edited: JSON with quantities as typed. */
export type PlanDocument = { readonly [key: string]: unknown }
