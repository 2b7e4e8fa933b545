/**
 * Refuses numbers that no thing can have: what reaches an equation with them is a bug of ours, not a choice of the user.
 *
 * Throws RangeError naming the function, the symbol and the value.
 */
export function requirePositive(of: string, symbols: Readonly<Record<string, number>>): void {
  for (const symbol in symbols) {
    const given = symbols[symbol]!
    if (!(given > 0 && given < Number.POSITIVE_INFINITY))
      throw new RangeError(`${of}: ${symbol} = ${given} is not positive`)
  }
}

/** Refuses negative numbers and what is no number; zero passes. Throws as `requirePositive`. */
export function requireNotNegative(of: string, symbols: Readonly<Record<string, number>>): void {
  for (const symbol in symbols) {
    const given = symbols[symbol]!
    if (!(given >= 0 && given < Number.POSITIVE_INFINITY))
      throw new RangeError(`${of}: ${symbol} = ${given} is negative`)
  }
}
