import { ends, type Quantity } from '../../kernel/units.ts'

/** A number for a file: millimetres and the like without the tail of floating point. */
export const figure = (value: number, digits = 6): number => Number(value.toFixed(digits))

/** Millimetres from metres, to a thousandth. */
export const mm = (length_m: number): number => figure(length_m * 1000, 3)

/** The number that a buyer goes by: of a band the higher end. */
export const most = (q: Quantity): number => ends(q)[1]
