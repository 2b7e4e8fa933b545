import type { FactWords } from '../../../render/words/en/page-facts.ts'
import { language } from '../language.ts'

/** A computed number that is no finding: what it is, and the fields from which it follows. */
export interface FactWhy {
  readonly name: string
  readonly about: string
  readonly inputs: readonly string[]
}

const inputs: Readonly<Record<keyof FactWords, readonly string[]>> = {
  findings: [],
  saved: [],
  scale: [],
  'layout/circumference': ['column/pipe', 'measured/columnCircumference'],
  'layout/marks': ['column/sites/first', 'column/sites/pitch', 'column/sites/rings', 'column/sites/datum'],
  'layout/lines': ['column/pipe', 'column/sites/perRing', 'column/sites/turn'],
  'templates/joint': ['column/pipe', 'column/stub/pipe', 'column/stub/angle', 'column/stub/lowerSide'],
  drawing: [],
  changes: [],
  'hydraulics/head': ['riser/neededFlow', 'distributor/holes', 'distributor/hole', 'distributor/clogged'],
  'feed/reached': ['feed/batch', 'feed/scale', 'feed/fineScale'],
  'feed/band': [],
  'feed/charge': ['feed/batch', 'feed/temperature', 'feed/pH'],
  'feed/ph': ['feed/pH', 'feed/temperature', 'feed/air', 'place/altitude'],
  'hydraulics/over': ['riser/neededFlow', 'distributor/holes', 'distributor/hole', 'pump/maxFlow', 'pump/maxHead'],
  'hydraulics/full': ['distributor/holes', 'distributor/hole', 'distributor/depth'],
  'hydraulics/flow': ['pump/maxFlow', 'pump/maxHead', 'riser/bore', 'riser/length', 'riser/outletHeight'],
  'hydraulics/lift': ['riser/outletHeight', 'reservoir/lowVolume'],
  'hydraulics/riser': ['riser/bore', 'riser/length', 'riser/losses'],
  'hydraulics/film': ['column/pipe', 'pump/maxFlow', 'place/airLow'],
  'hydraulics/drain': ['drain/holes', 'drain/hole', 'drain/clogged'],
  'hydraulics/held': ['riser/bore', 'riser/length', 'column/length', 'distributor/depth'],
  'hydraulics/stop': ['place/airHigh', 'crops'],
  'reservoir/levels': ['reservoir/fillVolume', 'reservoir/lowVolume', 'reservoir/container'],
  sensitivity: ['tools/tape', 'feed/penCalibrated'],
  tape: ['tools/tape'],
  fields: [],
  parts: ['prices/currency'],
  steps: ['tools/saw', 'column/stub/joint'],
  cuts: ['stock/lengths', 'stock/kerf', 'stock/trim'],
}

const known = (id: string): id is keyof FactWords => Object.hasOwn(inputs, id)

export function factWhy(id: string): FactWhy | null {
  if (!known(id)) return null
  const [name, about] = language().facts[id]
  return { name, about, inputs: inputs[id] }
}
