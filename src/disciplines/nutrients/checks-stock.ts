import type { Check } from '../../findings/check.ts'
import { judge } from '../../findings/judge.ts'
import { among } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Mineral } from '../../tables/equilibria.ts'
import { feedConstants } from '../../tables/solvent.ts'
import { stockClashes } from '../../tables/stock-clashes.ts'
import { weakerStock } from './levers.ts'
import type { StockFacts } from './stock-facts.ts'

/** Stronger than this no one measures by the millilitre. */
const STRONGEST = 1000

/** Solubility in use at the coldest place. */
const load: Check<StockFacts> = {
  id: 'nutrients/stock-load',
  at: 'feed/stock/strength',
  source: 'CRC.solubility',
  judged: ({ bottles, factor, strongest, coldest_C }, _, terms) => {
    if (bottles.length === 0) return []
    const worst = bottles.reduce((a, b) => (b.load > a.load ? b : a))
    return [
      judge(load.id, quantity(worst.load, '1'), {
        ...terms,
        must: { max: 1 },
        want: { max: feedConstants.rows.stockShare.value },
        slots: {
          ...{ bottle: worst.id, by: worst.loadedBy ?? '', factor, coldest: quantity(coldest_C, 'C') },
          strongest: Math.floor(Math.min(STRONGEST, strongest)),
        },
        levers: [weakerStock(factor)],
      }),
    ]
  },
}

/** Products that the grower put into one bottle and that must not meet there. */
const clash: Check<StockFacts> = {
  id: 'nutrients/bottle-clash',
  at: 'feed/shelf',
  source: stockClashes.source,
  judged: ({ clashes, bottles }, _, terms) => {
    const [first] = clashes
    if (!first) return bottles.length > 0 ? [judge(clash.id, quantity(0, 'count'), { ...terms, must: { max: 0 } })] : []
    const { one, other, bottle, at } = first
    const slots = { one, other, bottle, gives: { phrase: `clash-${first.clash}` } }
    const levers = [among(`${at}/bottle`, bottle === 'A' ? ['B'] : ['A', 'B'])]
    return [judge(clash.id, quantity(clashes.length, 'count'), { ...terms, at, must: { max: 0 }, slots, levers })]
  },
}

/** Solids whose two sides meet in a bottle, by an estimate at stock strength. */
const solids: Check<StockFacts> = {
  id: 'nutrients/bottle-solids',
  at: 'feed/stock/strength',
  source: 'USGS.minteq.v4.dat',
  judged: ({ bottles, factor }, _, terms) => {
    const all = bottles.flatMap((b) => b.solids.map((s) => ({ ...s, bottle: b.id })))
    const finite = all.filter(({ saturation }) => Number.isFinite(saturation))
    if (finite.length === 0) return []
    const worst = finite.reduce((a, b) => (b.saturation > a.saturation ? b : a))
    const slots = { bottle: worst.bottle, mineral: { phrase: `mineral-${worst.mineral satisfies Mineral}` } }
    const levers = [weakerStock(factor)]
    return [judge(solids.id, quantity(worst.saturation, '1'), { ...terms, want: { max: 0 }, slots, levers })]
  },
}

export const stockChecks: readonly Check<StockFacts>[] = [load, clash, solids]
