import { inUnit } from '../../kernel/quantity-text.ts'
import { band, type Quantity, quantity } from '../../kernel/units.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { type Given, heading } from './input.ts'
import type { Block } from './model.ts'

const LITRE_m3 = 0.001
const GALLON_m3 = 1 / inUnit(1, 'm3', 'US gal')
const MINUTE_s = 60

/** Whole litres, or half gallons, that the wanted flow fills in about a minute. */
export function bucketOf(g: Given, flow_m3_s: number): number {
  const unit_m3 = g.display.lengths === 'in' ? GALLON_m3 / 2 : LITRE_m3
  return Math.max(1, Math.round((flow_m3_s * MINUTE_s) / unit_m3)) * unit_m3
}

type Row = readonly [what: string, must: string]

function tankRows(g: Given): readonly Row[] {
  const reservoir = orNull(g.facts.reservoir)
  if (reservoir === null) return []
  const { tank, afterStop, afterStart } = reservoir
  const line = (key: 'wet-fill' | 'wet-low', k: typeof tank.fill): readonly Row[] =>
    isKnown(k) ? [[g.tell(key), g.sheet.length(k.known.level_m)]] : []
  const range = (key: 'wet-stop' | 'wet-start', k: typeof afterStart): readonly Row[] =>
    isKnown(k) ? [[g.tell(key), g.sheet.shown(band(k.known.low_m, k.known.high_m, 'm'))]] : []
  return [
    ...line('wet-fill', tank.fill),
    ...line('wet-low', tank.low),
    ...range('wet-stop', afterStop),
    ...range('wet-start', afterStart),
  ]
}

function flowRows(g: Given): readonly Row[] {
  const { flow, distributor } = g.facts.hydraulics
  const shown = (q: Quantity) => g.sheet.shown(q)
  const wanted = g.plan.riser?.neededFlow_m3_s
  const rows: Row[] = []
  if (isKnown(flow)) {
    const { low, high } = flow.known.least_m3_s
    rows.push([g.tell('wet-flow'), shown(band(low, high, 'm3_s'))])
  }
  if (wanted !== undefined && wanted > 0) {
    const bucket_m3 = bucketOf(g, wanted)
    const volume = shown(quantity(bucket_m3, 'm3'))
    rows.push([g.tell('wet-bucket', { volume }), `≤ ${shown(quantity(bucket_m3 / wanted, 's'))}`])
  }
  const known = orNull(distributor)
  if (known !== null) rows.push([g.tell('wet-head'), shown(band(known.head_m.low, known.head_m.high, 'm'))])
  return rows
}

/** What is read in the wet test, what is expected, and room to write it. */
export function wetRecord(g: Given): readonly Block[] {
  const none = g.tell('wet-none')
  const rows: readonly Row[] = [
    ...tankRows(g),
    ...flowRows(g),
    [g.tell('wet-weeps'), none],
    [g.tell('wet-dry-sites'), none],
    [g.tell('wet-night'), none],
    [g.tell('wet-by'), ''],
  ]
  return [
    heading(g.tell('wet-record')),
    {
      kind: 'form',
      id: 'wet',
      columns: [g.tell('wet-what'), g.tell('wet-must'), g.tell('wet-read')],
      rows: rows.map(([what, must]) => [what, must === '' ? '–' : must, '']),
    },
  ]
}
