import type { Drilled, Slot } from '../../findings/finding.ts'
import { band, type Quantity, quantity, type Unit } from '../../kernel/units.ts'
import { filletUse } from '../../tables/consumables.ts'
import { residualCurrents, safetyLengths, safetyTemperatures } from '../../tables/exposure.ts'
import { testTimes } from '../../tables/labour.ts'
import { materials } from '../../tables/materials.ts'
import {
  practiceAngles,
  practiceLengths,
  practiceRatios,
  practiceTemperatures,
  practiceTimes,
} from '../../tables/practice.ts'
import type { Situation } from './situation.ts'
import { BASE_LEVEL_m } from './steps-stand.ts'
import type { JointWaits } from './waits.ts'

/** Marks along one tape, all from its hook, so that nobody adds up a rounded step. */
export interface TapeMarks {
  readonly marks_m: readonly number[]
}

export type BuildSlots = Readonly<Record<string, Slot | TapeMarks | null>>

const known = (value: number | null | undefined, unit: Unit): Quantity | null =>
  value === null || value === undefined ? null : quantity(value, unit)

const drilled = (low: number | undefined, high = low): Drilled | null =>
  low === undefined || high === undefined ? null : { drilled: low === high ? quantity(low, 'm') : band(low, high, 'm') }

/** Names and numbers of the pipes and of what is marked on them. */
function pipeSlots({ plan, layout, templates, columns }: Situation): BuildSlots {
  const { column } = plan
  const outside_m = templates?.joint.column.outside_m ?? column?.pipe?.outside_m
  const stubOutside_m = templates?.joint.stubPipe.outside_m ?? column?.stub?.pipe?.outside_m
  const line = layout.lines[0]
  return {
    columnPipe: column?.pipe?.label ?? null,
    stubPipe: column?.stub?.pipe?.label ?? null,
    columnCircumference: known(outside_m === undefined ? null : Math.PI * outside_m, 'm'),
    stubCircumference: known(stubOutside_m === undefined ? null : Math.PI * stubOutside_m, 'm'),
    columnLength: known(column?.length_m, 'm'),
    columns,
    lines: layout.lines.length,
    linesOnTape: { marks_m: layout.lines.map((l) => l.arc.marked_m) },
    datum: layout.datum,
    firstMark: known(layout.firstMark_m, 'm'),
    sitesOnTape: line === undefined ? null : { marks_m: line.marks.map((m) => m.marked_m) },
    lastMark: known(layout.lastMark_m, 'm'),
    sitesEach: layout.sites.length,
    sites: layout.plants,
  }
}

/** The stub as it is sawn, and its hole. */
function stubSlots({ plan, templates, pocket }: Situation): BuildSlots {
  const stub = templates?.stub
  const hole = plan.column?.stub?.hole === 'square to the wall' ? templates?.holeSquare : templates?.holeAlong
  return {
    saw: known(stub?.saw_rad, 'rad'),
    heel: known(stub?.lengths.heel_m, 'm'),
    crown: known(stub?.lengths.crown_m, 'm'),
    centre: known(stub?.lengths.centre_m, 'm'),
    lowerSide: known(plan.column?.stub?.lowerSide_m, 'm'),
    angle: known(plan.column?.stub?.angle_rad, 'rad'),
    holeHeight: known(hole?.extent.height_m, 'm'),
    cupHole: known(plan.column?.cup?.body_m, 'm'),
    slit: known(pocket?.slit_m, 'm'),
    former: known(plan.column?.pocket?.former_m, 'm'),
  }
}

/** Top, lid, tank and flow. */
function loopSlots({ plan, top_m }: Situation): BuildSlots {
  const { distributor, reservoir, riser, column } = plan
  const fill_m3 = reservoir?.fillVolume_m3
  const outside_m = column?.pipe?.outside_m
  const { low_m: over_m } = practiceLengths.rows['lid-hole']
  return {
    holes: distributor?.holes ?? null,
    hole: drilled(distributor?.hole_m),
    circle: known(distributor?.circle_m, 'm'),
    drainHoles: plan.drain?.holes ?? null,
    drainHole: drilled(plan.drain?.hole_m),
    lidHole: known(outside_m === undefined ? null : outside_m + over_m, 'm'),
    ringDepth: known(column?.base?.ringDepth_m, 'm'),
    hoseBore: known(riser?.bore_m, 'm'),
    hoseLength: known(riser?.length_m, 'm'),
    fill: fill_m3 === undefined ? known(reservoir?.fillLine_m, 'm') : quantity(fill_m3, 'm3'),
    low:
      reservoir?.lowVolume_m3 === undefined ? known(reservoir?.lowLine_m, 'm') : quantity(reservoir.lowVolume_m3, 'm3'),
    flow: known(riser?.neededFlow_m3_s, 'm3_s'),
    freeboard: known(reservoir?.freeboard_m, 'm'),
    strap: known(column?.base?.strapHeight_m ?? top_m * practiceRatios.rows.strap.high, 'm'),
    batch: known(plan.feed?.batch_m3 ?? fill_m3, 'm3'),
    pH: plan.feed?.pH === undefined ? null : String(plan.feed.pH),
  }
}

const widest = (row: keyof typeof practiceLengths.rows): Quantity =>
  quantity(practiceLengths.rows[row].high_m ?? practiceLengths.rows[row].low_m ?? 0, 'm')

/** Rules of the trade that the sentences name. */
const practiceSlots: BuildSlots = {
  barTolerance: widest('check-bar'),
  closure: widest('arc-closure'),
  markTolerance: widest('mark-height'),
  edge: widest('hole-edge'),
  starter: drilled(practiceLengths.rows['starter-drill'].low_m),
  chamfer: band(practiceLengths.rows.chamfer.low_m, practiceLengths.rows.chamfer.high_m, 'm'),
  chamferAngle: band(
    practiceAngles.rows['chamfer-angle'].low_rad,
    practiceAngles.rows['chamfer-angle'].high_rad,
    'rad',
  ),
  stopHole: drilled(practiceLengths.rows['slit-stop-hole'].low_m, practiceLengths.rows['slit-stop-hole'].high_m),
  heatedZone: band(practiceLengths.rows['heated-zone'].low_m, practiceLengths.rows['heated-zone'].high_m, 'm'),
  filler: widest('lid-filler'),
  mesh: drilled(safetyLengths.rows['insect-mesh'].limit_m),
  airGap: quantity(safetyLengths.rows['air-gap'].limit_m, 'm'),
  strapAbove: quantity(safetyLengths.rows['strap-above'].limit_m, 'm'),
  level: quantity(BASE_LEVEL_m, 'm'),
  plumb: quantity(practiceRatios.rows.plumb.high, 'm'),
  angleTolerance: quantity(practiceAngles.rows['stub-angle'].high_rad, 'rad'),
  bead: quantity(filletUse.rows.bead.leg_m, 'm'),
  sawing: quantity(practiceTemperatures.rows.sawing.low_C, 'C'),
  release: quantity(practiceTemperatures.rows['former-release'].high_C, 'C'),
  softens: known(materials.rows['PVC-U'].forming_C, 'C'),
  fumes: quantity(safetyTemperatures.rows['hydrogen-chloride'].high_C, 'C'),
  cool: quantity(safetyTemperatures.rows['solution-safe'].high_C, 'C'),
  work: band(practiceTimes.rows['cement-work'].low_s, practiceTimes.rows['cement-work'].high_s, 's'),
  hold: quantity(practiceTimes.rows['cement-hold'].low_s, 's'),
  rest: quantity(practiceTimes.rows['cement-rest'].low_s, 's'),
  heat: band(practiceTimes.rows['heat-gun'].low_s, practiceTimes.rows['heat-gun'].high_s, 's'),
  leakHold: quantity(practiceTimes.rows['leak-hold'].low_s, 's'),
  dayRun: quantity(practiceTimes.rows['leak-run'].low_s, 's'),
  flushRun: quantity(practiceTimes.rows['flush-run'].low_s, 's'),
  lowRun: quantity(testTimes.rows['run-low'].hold_s, 's'),
  fullRun: quantity(testTimes.rows['run-full'].hold_s, 's'),
  night: quantity(testTimes.rows['stand-night'].hold_s, 's'),
  trip: String(residualCurrents.rows['IEC-outdoors'].trips_A * 1000),
  tripUS: String(residualCurrents.rows['US-class-A'].trips_A * 1000),
}

/** All that a sentence of the steps may need. */
export const buildSlots = (s: Situation, w: JointWaits): BuildSlots => ({
  ...practiceSlots,
  ...pipeSlots(s),
  ...stubSlots(s),
  ...loopSlots(s),
  set: w.set_s > 0 ? quantity(w.set_s, 's') : null,
  water: w.water_s > 0 ? quantity(w.water_s, 's') : null,
  plants: w.plants_s > 0 ? quantity(w.plants_s, 's') : null,
})
