/** A check value from print: `equation(given)` must give `expected`. Rows live in each discipline's `values.ts`. */
export interface Published {
  readonly name: string
  readonly compute: () => number
  readonly expected: number
  /** Relative tolerance, or absolute where `absolute` is set. */
  readonly within: number
  readonly absolute: boolean
  readonly source: string
  /** Where the tolerance comes from: half of the last printed digit, or the accuracy that the source claims. */
  readonly why: string
  /** Reason why a tolerance above 5 % is right for this source. */
  readonly loose?: string
}

interface Terms {
  readonly within: number
  readonly absolute?: boolean
  readonly source: string
  readonly why: string
  readonly loose?: string
  /** Picks the number to compare where the equation returns an object. */
  readonly pick?: string
}

/**
 * States that an equation must reproduce a printed value.
 *
 * `value(frictionFactor, { reynolds: 1e5, … }, 0.0185, { within: 0.01, source: 'X', why: 'printed to 3 figures' })`
 */
export function value<G, R>(equation: (given: G) => R, given: G, expected: number, terms: Terms): Published {
  const { within, absolute = false, source, why, loose, pick } = terms
  const compute = () => {
    const result = equation(given)
    return (pick === undefined ? result : (result as Record<string, unknown>)[pick]) as number
  }
  const name = pick === undefined ? equation.name : `${equation.name}.${pick}`
  return { name, compute, expected, within, absolute, source, why, ...(loose === undefined ? {} : { loose }) }
}
