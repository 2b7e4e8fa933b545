import type { Check } from '../../findings/check.ts'
import type { Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along } from '../../findings/levers.ts'
import { quantity } from '../../kernel/units.ts'
import type { Plan } from '../../plan/plan.ts'
import type { FloorFacts } from './index.ts'

/** Places on the ground, where nobody has to ask. */
const GROUND: readonly string[] = ['garden', 'courtyard', 'greenhouse']

function levers(plan: Plan, f: FloorFacts): readonly Lever[] {
  const { boardLength_m, boardWidth_m } = plan.place ?? {}
  const wide_m = 2
  const side =
    boardWidth_m === undefined || boardLength_m === undefined
      ? []
      : [along('place/boardWidth', wide_m, 'm', 0.05), along('place/boardLength', wide_m, 'm', 0.05)]
  const volume_m3 = plan.reservoir?.fillVolume_m3
  const less =
    volume_m3 === undefined || f.boardNeeded_m === null ? [] : [along('reservoir/fillVolume', 0, 'm3', 0.001)]
  return [...side, ...less]
}

const floor: Check<FloorFacts> = {
  id: 'structure/floor',
  safety: true,
  at: 'place/floorLimit',
  source: 'derived.moments',
  applies: (plan) => plan.place?.floorLimit_kg_m2 !== undefined || !GROUND.includes(plan.place?.setting ?? ''),
  judged: (f, plan, terms) => {
    const limit_kg_m2 = plan.place?.floorLimit_kg_m2
    if (limit_kg_m2 === undefined) return [unknown('structure/floor', { ...terms, needs: [terms.at] })]
    return [
      judge('structure/floor', quantity(f.judged.load_kg_m2, 'kg_m2'), {
        ...terms,
        must: { max: limit_kg_m2 },
        slots: {
          mass: quantity(f.mass_kg, 'kg'),
          pressure: quantity(f.judged.pressure_Pa, 'Pa'),
          base: quantity(f.base.load_kg_m2, 'kg_m2'),
          basePressure: quantity(f.base.pressure_Pa, 'Pa'),
          side: quantity(f.boardNeeded_m ?? 0, 'm'),
        },
        levers: levers(plan, f),
      }),
    ]
  },
}

export const floorChecks: readonly Check<FloorFacts>[] = [floor]
