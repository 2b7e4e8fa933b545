import { isKnown, type Known, needed } from '../../plan/known.ts'
import { asBuilt, type Pipe } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { axisLength, entryRoom, holeRadius, mitreDepth } from './equations.ts'
import type { Cut, Hole, Stub, StubEnd } from './joint.ts'

/** One joint of stub and column: all sites of a column are alike. */
export interface JointFacts {
  readonly column: Pipe
  readonly stubPipe: Pipe
  readonly stub: Stub
  /** The hole with the gap of the joint. */
  readonly hole: Hole
  readonly cut: Cut
  readonly end: StubEnd
  readonly mouthTilt_rad: number
  /** Along the stub's axis from the column's axis to the mouth. */
  readonly axisLength_m: number
  /** Height of a site's mark above the crossing of the axes: the stub's axis meets the outside there. */
  readonly markRise_m: number
  readonly paper_m: number
}

/** A joint as far as it is stated: room in the bore is known even where the stub does not fit. */
export interface JointRoom {
  readonly column: Pipe
  readonly stubPipe: Pipe
  readonly gap_m: number
  /** Room left beside the stub in the bore; negative where it does not fit. */
  readonly room_m: number
}

/** The pipes as built, and whether one fits into the other. */
export function jointRoom(plan: Plan): Known<JointRoom> {
  const given = needed({
    pipe: ['column/pipe', plan.column?.pipe],
    stub: ['column/stub/pipe', plan.column?.stub?.pipe],
  })
  if (!isKnown(given)) return given
  const tape = plan.measured
  const column = asBuilt(given.known.pipe, { circumference_m: tape?.columnCircumference_m, wall_m: tape?.columnWall_m })
  const stubPipe = asBuilt(given.known.stub, { circumference_m: tape?.stubCircumference_m, wall_m: tape?.stubWall_m })
  const gap_m = plan.column?.stub?.gap_m ?? 0
  const holeRadius_m = holeRadius({ stubRadius_m: stubPipe.outside_m / 2, clearance_m: gap_m })
  const offset_m = plan.column?.stub?.offset_m ?? 0
  const room_m = entryRoom({ boreRadius_m: column.bore_m / 2, holeRadius_m, offset_m })
  return { known: { column, stubPipe, gap_m, room_m } }
}

function endOf(kind: 'mitre' | 'saddle' | 'flush', stub: Stub, insertion_m: number | undefined): StubEnd {
  if (kind !== 'mitre') return { kind }
  if (insertion_m !== undefined) return { kind, depth_m: stub.columnRadius_m - insertion_m }
  const { columnRadius_m, columnWall_m, stubRadius_m, offset_m } = stub
  return { kind, depth_m: mitreDepth({ pipeRadius_m: columnRadius_m - columnWall_m, stubRadius_m, offset_m }) }
}

/** The joint, where the stub fits into the bore. Absent offset, gap and tilt are zero; absent insertion is as deep as seals. */
export function jointFacts(plan: Plan, room: Known<JointRoom>): Known<JointFacts> {
  if (!isKnown(room)) return room
  const s = plan.column?.stub
  const given = needed({
    angle_rad: ['column/stub/angle', s?.angle_rad],
    lowerSide_m: ['column/stub/lowerSide', s?.lowerSide_m],
    end: ['column/stub/end', s?.end],
    hole: ['column/stub/hole', s?.hole],
  })
  if (!isKnown(given)) return given
  const { column, stubPipe, gap_m, room_m } = room.known
  if (room_m < 0) return { needs: ['column/stub/pipe'] }
  const { angle_rad, lowerSide_m, end, hole: cut } = given.known
  const stub: Stub = {
    columnRadius_m: column.outside_m / 2,
    columnWall_m: (column.outside_m - column.bore_m) / 2,
    stubRadius_m: stubPipe.outside_m / 2,
    stubWall_m: (stubPipe.outside_m - stubPipe.bore_m) / 2,
    angle_rad,
    offset_m: s?.offset_m ?? 0,
  }
  const mouthTilt_rad = s?.mouthTilt_rad ?? 0
  const { columnRadius_m, columnWall_m, offset_m } = stub
  const holeRadius_m = holeRadius({ stubRadius_m: stub.stubRadius_m, clearance_m: gap_m })
  return {
    known: {
      column,
      stubPipe,
      stub,
      hole: { columnRadius_m, columnWall_m, holeRadius_m, angle_rad, offset_m },
      cut: cut === 'along the stub' ? 'axis' : 'square',
      end: endOf(end, stub, s?.insertion_m),
      mouthTilt_rad,
      axisLength_m: axisLength({ stub, heelOutside_m: lowerSide_m, mouthTilt_rad }),
      markRise_m: Math.sqrt(columnRadius_m ** 2 - offset_m ** 2) / Math.tan(angle_rad),
      paper_m: plan.tools?.paperThickness_m ?? practiceLengths.rows['paper-thickness'].high_m,
    },
  }
}
