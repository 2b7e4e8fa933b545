import type { Display } from '../display.ts'

/** Reductions that a ruler knows: decimal ones, and for inches those at which a fraction of an inch is a foot. */
const metric = [1, 2, 5, 10, 15, 20, 25, 50, 100, 200]
const inch = [1, 2, 4, 8, 12, 16, 24, 48, 96, 192]

export interface Scale {
  /** The n of 1 : n. */
  readonly reduction: number
  /** Millimetres of paper for a metre. */
  readonly ratio: number
}

/** The largest standard scale at which a thing fits; what it needs beside its own size stays as it is. */
export function fittingScale(given: {
  readonly width_m: number
  readonly height_m: number
  readonly room: { readonly width_mm: number; readonly height_mm: number }
  readonly display: Display
}): Scale {
  const { width_m, height_m, room, display } = given
  const series = display.lengths === 'in' ? inch : metric
  const fits = (n: number) => (width_m * 1000) / n <= room.width_mm && (height_m * 1000) / n <= room.height_mm
  const reduction = series.find(fits) ?? series.at(-1)!
  return { reduction, ratio: 1000 / reduction }
}
