import { isKnown, type Known, orNull } from '../../plan/known.ts'
import { stopWater } from '../../tables/water-path.ts'
import type { DistributorFacts } from './distributor-facts.ts'
import { drainBack } from './equations-stop.ts'
import type { FilmFacts } from './film-facts.ts'
import type { Range } from './range.ts'
import type { Tubes } from './tubes.ts'

/** Water that the tank lends to the tower while the pump runs, by part, all columns of one pump. */
export interface HeldFacts {
  readonly riser_m3: number
  readonly header_m3: number
  readonly drops_m3: number
  readonly pool_m3: Range
  readonly film_m3: Range
  readonly roots_m3: Range
  readonly checkValve: boolean
  /** What runs back when the pump stops. */
  readonly back_m3: Range
  /** What a start draws up before anything returns. */
  readonly up_m3: Range
}

export function heldFacts(given: {
  readonly tubes: Known<Tubes>
  readonly film: Known<FilmFacts>
  readonly distributor: Known<DistributorFacts | null>
  readonly sitesPerColumn: number | null
  readonly checkValve: boolean
}): Known<HeldFacts> {
  const { tubes, film, sitesPerColumn, checkValve } = given
  if (!isKnown(tubes)) return tubes
  if (!isKnown(film)) return film
  if (sitesPerColumn === null) return { needs: ['column/sites'] }
  if (!isKnown(given.distributor)) return given.distributor
  const { columns, riser_m3, header_m3, drops_m3 } = tubes.known
  const pool = orNull(given.distributor)?.pool_m3 ?? { low: 0, high: 0 }
  const { rootDrain } = stopWater.rows
  const times = (r: Range, n: number): Range => ({ low: r.low * n, high: r.high * n })
  const pool_m3 = times(pool, columns)
  const film_m3 = times(film.known.holdUp_m3, columns)
  const roots_m3 = times(rootDrain, columns * sitesPerColumn)
  const lines_m3 = riser_m3 + header_m3 + drops_m3
  const back = (end: 'low' | 'high', valve: boolean) =>
    drainBack({
      riser_m3: lines_m3,
      pool_m3: pool_m3[end],
      film_m3: film_m3[end],
      roots_m3: roots_m3[end],
      checkValve: valve,
    })
  return {
    known: {
      riser_m3,
      header_m3,
      drops_m3,
      pool_m3,
      film_m3,
      roots_m3,
      checkValve,
      back_m3: { low: back('low', checkValve), high: back('high', checkValve) },
      // A leaking check valve empties the riser all the same, so a start is reckoned with it empty.
      up_m3: { low: back('low', checkValve), high: back('high', false) },
    },
  }
}
