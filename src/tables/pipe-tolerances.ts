import { table } from './table.ts'

/** How far a real pipe may lie from its row. */
export const pipeTolerances = table({
  title: 'Limits of outside diameter',
  columns: {
    pipe: 'id of the pipe',
    outsideLow_m: 'lowest outside diameter that the standard allows',
    outsideHigh_m: 'highest outside diameter that the standard allows',
  },
  source: 'ASTM.D1785.limits',
  rows: {
    'astm-d1785-4in': { pipe: 'astm-d1785-4in-sch40', outsideLow_m: 0.11407, outsideHigh_m: 0.11453 },
  },
})
