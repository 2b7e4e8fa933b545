import { type Check, checked } from '../../findings/check.ts'
import type { Finding, Lever } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { along, among, fewer } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { tubing } from '../../tables/tubing.ts'
import type { JointRoom, TemplatesFacts } from './index.ts'
import { narrowerPipes, widerPipes } from './pipe-choice.ts'

/** Steps that a tape shows. */
export const STEP_m = 0.001

export const perRingFewer = (plan: Plan): Lever[] => {
  const s = plan.column?.sites
  return s?.pattern === 'rings' && s.perRing !== undefined ? [fewer('column/sites/perRing', s.perRing)] : []
}

/** Step in which a remedy moves a stub toward the middle. */
const OFFSET_STEP_m = 0.001

/** Whether the stub goes into the column at all. */
const stubFits: Check<JointRoom> = {
  id: 'templates/stub-fits',
  at: 'column/stub/pipe',
  source: 'Geometry.bore',
  judged: ({ column, stubPipe, gap_m, room_m }, plan, terms) => {
    const offset_m = Math.abs(plan.column?.stub?.offset_m ?? 0)
    const widest_m = column.bore_m - 2 * (gap_m + offset_m)
    return [
      judge(stubFits.id, quantity(room_m, 'm'), {
        ...terms,
        must: { min: 0 },
        want: { min: (practiceRatios.rows.ovality.high * column.bore_m) / 4 },
        slots: {
          stub: quantity(stubPipe.outside_m, 'm'),
          column: quantity(column.outside_m, 'm'),
          bore: quantity(column.bore_m, 'm'),
          widest: quantity(Math.max(0, widest_m), 'm'),
          offset: quantity(offset_m, 'm'),
        },
        levers: () => [
          ...(offset_m > 0 ? [along('column/stub/offset', 0, 'm', OFFSET_STEP_m)] : []),
          among('column/stub/pipe', narrowerPipes(stubPipe, widest_m)),
          among('column/pipe', widerPipes(column, stubPipe.outside_m)),
        ],
      }),
    ]
  },
}

export const fitFindings = (plan: Plan, room: Known<JointRoom>): readonly Finding[] => checked([stubFits], room, plan)

/** Ends of one ring in the bore. */
const stubsMeet: Check<TemplatesFacts> = {
  id: 'templates/stubs-meet',
  at: 'column/sites/perRing',
  source: 'Geometry.bore',
  applies: (plan) => (plan.column?.sites?.perRing ?? 2) >= 2 && plan.column?.stub?.end !== 'saddle',
  judged: ({ boreGap_m, joint }, plan, terms) =>
    boreGap_m === null
      ? []
      : [
          judge(stubsMeet.id, quantity(boreGap_m, 'm'), {
            ...terms,
            must: { min: 0 },
            slots: { count: plan.column?.sites?.perRing ?? 0, bore: quantity(joint.column.bore_m, 'm') },
            levers: () => [
              ...shallower(joint.stub.columnRadius_m - (joint.end.kind === 'mitre' ? joint.end.depth_m : 0)),
              among('column/stub/end', ['saddle']),
              ...perRingFewer(plan),
              among('column/stub/pipe', narrowerPipes(joint.stubPipe)),
            ],
          }),
        ],
}

/** A stub that goes in less far; where the plan leaves it out, from as deep as it stands. */
const shallower = (now_m: number): Lever[] => [along('column/stub/insertion', 0, 'm', STEP_m, now_m)]

/** Outside diameters of the hoses of the table whose bore is nearest to that of the riser. */
function hoseOutside(bore_m: number): readonly [number, number] {
  const rows = Object.values(tubing.rows)
  const off = (row: { readonly bore_m: number }) => Math.abs(row.bore_m - bore_m)
  const least_m = Math.min(...rows.map(off))
  const walls_m = rows.filter((r) => off(r) <= least_m + 1e-9).map((r) => r.outside_m - r.bore_m)
  return [bore_m + Math.min(...walls_m), bore_m + Math.max(...walls_m)]
}

/** The core that the ends leave free, where the riser runs up in it. */
const freeCore: Check<TemplatesFacts> = {
  id: 'templates/free-core',
  at: 'riser/bore',
  source: tubing.source,
  applies: (plan) => plan.riser?.inside !== 'outside the column',
  judged: ({ freeCore_m, joint }, plan, terms) => {
    const { riser } = plan
    const needs = [
      ...(riser?.inside === undefined ? ['riser/inside'] : []),
      ...(riser?.bore_m === undefined ? ['riser/bore'] : []),
    ]
    if (riser?.bore_m === undefined || needs.length > 0) return [unknown(freeCore.id, { ...terms, needs })]
    const [low_m, high_m] = hoseOutside(riser.bore_m)
    return [
      judge(freeCore.id, quantity(freeCore_m, 'm'), {
        ...terms,
        must: { min: high_m },
        slots: { hose: low_m === high_m ? quantity(high_m, 'm') : band(low_m, high_m, 'm') },
        levers: () => [
          ...shallower(joint.stub.columnRadius_m - freeCore_m / 2),
          among('riser/inside', ['outside the column']),
          among('column/stub/pipe', narrowerPipes(joint.stubPipe)),
        ],
      }),
    ]
  },
}

/** Whether the sides of a mitred end meet the whole wall. */
const mitreSeals: Check<TemplatesFacts> = {
  id: 'templates/mitre-seals',
  at: 'column/stub/insertion',
  source: 'Geometry.stub-end',
  applies: (plan) => (plan.column?.stub?.end ?? 'mitre') === 'mitre',
  judged: ({ stub, joint }, _plan, terms) =>
    stub.insertion === null
      ? []
      : [
          judge(mitreSeals.id, quantity(stub.insertion.planned_m, 'm'), {
            ...terms,
            must: { min: stub.insertion.seals_m },
            slots: { into: quantity(stub.reach_m, 'm') },
            levers: [
              along(
                'column/stub/insertion',
                Math.min(joint.stub.columnRadius_m, stub.insertion.seals_m + STEP_m),
                'm',
                STEP_m,
              ),
              among('column/stub/end', ['saddle', 'flush']),
            ],
          }),
        ],
}

export const boreChecks: readonly Check<TemplatesFacts>[] = [stubsMeet, freeCore, mitreSeals]
