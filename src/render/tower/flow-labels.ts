import type { HydraulicsFacts } from '../../disciplines/hydraulics/index.ts'
import type { ReservoirFacts } from '../../disciplines/reservoir/index.ts'
import { band, type Quantity, quantity, type Unit } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import { type Display, shownText } from '../display.ts'
import type { FlowWords } from '../words/en/flow.ts'
import type { FigureReason } from './sketch.ts'

/** A number of the flow, and which place of the drawing it belongs to. */
export interface FlowLabel {
  readonly at: 'distributor' | 'column' | 'riser' | 'foot' | 'pump'
  readonly text: string
  readonly why: FigureReason
}

interface Given {
  readonly hydraulics: HydraulicsFacts
  readonly reservoir: Known<ReservoirFacts>
  readonly words: FlowWords
  readonly display: Display
}

interface Range {
  readonly low: number
  readonly high: number
}

/** What stands where the plan does not say enough: a rule, which is the field to fill in. */
export const RULE = '______'

const range = (r: Range, unit: Unit): Quantity => band(r.low, r.high, unit)

/** A number with its name, or a rule whose field is the first one missing. */
function label<F>(
  g: Given,
  at: FlowLabel['at'],
  key: keyof FlowWords,
  facts: Known<F>,
  pick: (f: F) => Quantity | null,
  fact: string,
  display = g.display,
): readonly FlowLabel[] {
  if (!isKnown(facts)) {
    const [need] = facts.needs
    return need === undefined ? [] : [{ at, text: `${g.words[key]} ${RULE}`, why: { field: need } }]
  }
  const q = pick(facts.known)
  return q === null ? [] : [{ at, text: `${g.words[key]} ${shownText(q, display)}`, why: { fact } }]
}

/** Every number of the water's way round, from the pump up and down again. */
export function flowLabels(g: Given): readonly FlowLabel[] {
  // A film is thinner than any mark of an inch tape.
  const thin: Display = { ...g.display, lengths: 'mm' }
  const { flow, distributor, film, drain, held, stop } = g.hydraulics
  return [
    ...label(g, 'distributor', 'over', distributor, (d) => d && range(d.head_m, 'm'), 'hydraulics/over'),
    ...label(g, 'distributor', 'full', distributor, (d) => d && quantity(d.full_m3_s, 'm3_s'), 'hydraulics/full'),
    ...label(g, 'column', 'column', g.hydraulics.column_m3_s, (r) => range(r, 'm3_s'), 'hydraulics/flow'),
    ...label(g, 'column', 'film', film, (f) => range(f.thickness_m, 'm'), 'hydraulics/film', thin),
    ...label(g, 'column', 'filmSpeed', film, (f) => range(f.speed_m_s, 'm_s'), 'hydraulics/film'),
    ...label(g, 'column', 'fall', film, (f) => range(f.fallTime_s, 's'), 'hydraulics/film'),
    {
      at: 'column',
      text: `${g.words.dry} ${shownText(range(stop.worst.dry_s, 's'), g.display)}`,
      why: { fact: 'hydraulics/stop' },
    },
    ...label(g, 'riser', 'speed', flow, (f) => range(f.riserSpeed_m_s, 'm_s'), 'hydraulics/riser'),
    ...label(g, 'riser', 'loss', flow, (f) => range(f.loss_m, 'm'), 'hydraulics/riser'),
    ...label(g, 'foot', 'foot', drain, (d) => range(d.head_m, 'm'), 'hydraulics/drain', thin),
    ...label(g, 'foot', 'back', held, (h) => range(h.back_m3, 'm3'), 'hydraulics/held'),
    ...label(g, 'pump', 'pump', flow, (f) => range(f.total_m3_s, 'm3_s'), 'hydraulics/flow'),
    ...label(g, 'pump', 'pumpHead', flow, (f) => range(f.pumpHead_m, 'm'), 'hydraulics/flow'),
  ]
}
