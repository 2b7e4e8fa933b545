import { type Pipe, pipeOfRow } from '../../plan/pipe.ts'
import { pipesNear } from '../../tables/pipe-match.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { tubing } from '../../tables/tubing.ts'
import type { Substitute } from './part.ts'

const MOST = 4

/** Pipes of the same outside diameter, within what a tape can tell, that are not the planned one. */
export function pipeSubstitutes(pipe: Pipe): readonly Substitute[] {
  const reach_m = practiceLengths.rows['pipe-match'].high_m
  const { matches } = pipesNear({ outside_m: pipe.outside_m })
  return matches
    .filter((m) => m.id !== pipe.row && m.distance_m <= reach_m)
    .map((m) => ({ id: m.id, other: pipeOfRow(m.id) }))
    .sort((a, b) => Math.abs(a.other.wall_m - pipe.wall_m) - Math.abs(b.other.wall_m - pipe.wall_m))
    .slice(0, MOST)
    .map(({ id, other }) => ({ label: other.label, row: id, difference_m: other.outside_m - pipe.outside_m }))
}

/** Share of the bore by which a hose may be wider or narrower and still take the same fittings with a clamp. */
const HOSE_FITS = 0.05

/** Hose and tube of nearly the same bore. */
export function hoseSubstitutes(bore_m: number): readonly Substitute[] {
  return Object.entries(tubing.rows)
    .filter(([, row]) => Math.abs(row.bore_m - bore_m) <= HOSE_FITS * bore_m)
    .sort(([, a], [, b]) => Math.abs(a.bore_m - bore_m) - Math.abs(b.bore_m - bore_m))
    .slice(0, MOST)
    .map(([id, row]) => ({ label: `${row.kind} ${row.nominal}`, row: id, difference_m: row.bore_m - bore_m }))
}
