/** The pump's curve between its two box figures: a reading that nobody took, from a straight line to a parabola. */
import { compiledPump } from '../disciplines/hydraulics/pump-law.ts'
import type { Plan } from '../plan/plan.ts'
import { pumpPractice } from '../tables/hydraulic-pumps.ts'

const STEPS = 32
/** Path by which the shape is told; it is no field. */
export const PUMP_SHAPE = 'pump/shape'

const { low, high } = pumpPractice.rows.curveExponent
export const shapes = { low, middle: (low + high) / 2, high } as const

/** Whether nothing but the box tells of the pump: no curve by its maker, no bucket test. */
export const byBoxAlone = ({ pump }: Plan): boolean =>
  pump?.maxHead_m !== undefined &&
  pump.maxFlow_m3_s !== undefined &&
  (pump.curve ?? []).length === 0 &&
  !(pump.tests ?? []).some((t) => t.volume_m3 !== undefined && t.time_s !== undefined)

/** The plan with its pump's curve settled between the box figures; as it is where more is known of it. */
export function settled(plan: Plan, exponent: number): Plan {
  const { pump } = plan
  if (!byBoxAlone(plan) || pump?.maxHead_m === undefined || pump.maxFlow_m3_s === undefined) return plan
  const runout_m3_s = pump.maxFlow_m3_s
  const head = compiledPump({ kind: 'shape', shutoff_m: pump.maxHead_m, runout_m3_s, exponent })
  const curve = Array.from({ length: STEPS + 1 }, (_, i) => {
    const flow_m3_s = (runout_m3_s * i) / STEPS
    return { flow_m3_s, head_m: head(flow_m3_s).head_m }
  })
  return { ...plan, pump: { ...pump, curve } }
}
