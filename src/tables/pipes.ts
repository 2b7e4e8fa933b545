import { asNzs } from './pipes/as-nzs.ts'
import { astmDrain } from './pipes/astm-drain.ts'
import { astmPressure } from './pipes/astm-pressure.ts'
import { enDrain } from './pipes/en-drain.ts'
import { is4985 } from './pipes/is-4985.ts'
import { iso1452 } from './pipes/iso-1452.ts'
import { jisK6741 } from './pipes/jis-k6741.ts'
import type { PipeRow } from './pipes/row.ts'
import { type Table, table } from './table.ts'

const rows = { ...astmPressure, ...astmDrain, ...iso1452, ...enDrain, ...asNzs, ...jisK6741, ...is4985 }

export type PipeId = keyof typeof rows
export type { PipeRow }

/** Plumbing pipe by standard. Fit inside a bore to the average bore, strength to the minimum wall. */
export const pipes: Table<PipeId, PipeRow> = table({
  title: 'Plumbing pipe',
  columns: {
    standard: 'standard that lists the pipe',
    nominal: 'size as the trade names it',
    series: 'schedule, class or stiffness',
    plastic: 'id of the plastic in the table of materials',
    outside_m: 'outside diameter, mean of the standard',
    wall_m: 'minimum wall',
    bore_m: 'largest bore, outside less two minimum walls',
    averageBore_m: 'average (ASTM) or approximate (JIS, whole millimetres) bore where one is printed',
    mass_kg_m: 'mass per length, printed, or computed at the minimum wall and 1420 kg/m3',
    massComputed: 'whether the mass is computed: real pipe of such a row weighs more',
  },
  source: 'ASTM.D1785',
  rows,
})
