type Given = Readonly<Record<string, number>>

/** Throws RangeError with function, symbol and value where a number fails; a caller's bug, never the grower's. */
function refuse(where: string, given: Given, holds: (value: number) => boolean): void {
  for (const [symbol, value] of Object.entries(given))
    if (!holds(value)) throw new RangeError(`${where}: ${symbol} is ${value}`)
}

export const finite = (where: string, given: Given): void => refuse(where, given, Number.isFinite)
export const notNegative = (where: string, given: Given): void => refuse(where, given, (value) => value >= 0)
export const positive = (where: string, given: Given): void => refuse(where, given, (value) => value > 0)
