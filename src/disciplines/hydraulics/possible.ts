/** Impossible input is our bug: names the function, the symbol and the value. Improbable input is a finding's business. */
export function positive(at: string, symbols: Readonly<Record<string, number>>): void {
  for (const symbol in symbols) {
    const value = symbols[symbol]!
    if (!(value > 0 && value < Number.POSITIVE_INFINITY))
      throw new RangeError(`${at}: ${symbol} = ${value} must be positive`)
  }
}

/** As `positive`, with zero allowed. */
export function notNegative(at: string, symbols: Readonly<Record<string, number>>): void {
  for (const symbol in symbols) {
    const value = symbols[symbol]!
    if (!(value >= 0 && value < Number.POSITIVE_INFINITY))
      throw new RangeError(`${at}: ${symbol} = ${value} must not be negative`)
  }
}

/** A share of a whole: 0 to 1, both ends allowed. */
export function share(at: string, symbols: Readonly<Record<string, number>>): void {
  for (const symbol in symbols) {
    const value = symbols[symbol]!
    if (!(value >= 0 && value <= 1)) throw new RangeError(`${at}: ${symbol} = ${value} must lie in 0 to 1`)
  }
}
