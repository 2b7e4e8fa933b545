/** Both ends of a number that is only known to lie between them. */
export interface Range {
  readonly low: number
  readonly high: number
}

export const range = (one: number, other: number): Range => ({ low: Math.min(one, other), high: Math.max(one, other) })
