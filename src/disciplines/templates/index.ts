import type { Point } from '../../kernel/polyline.ts'
import { isKnown, type Known, orNull } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { LayoutFacts } from '../layout/index.ts'
import { type CupFacts, cupFacts } from './cup-facts.ts'
import {
  boreContactArea,
  boreGap,
  type Extent,
  freeboard,
  freeCore,
  heelRise,
  holeSawDepth,
  type LevelSection,
  lipHeight,
  mitreDepth,
  mitreReach,
  mitreSawAngle,
  mouthCentre,
  openingExtent,
  openingOutline,
  plugVolume,
  type Section,
  type Stand,
  type StubLengths,
  type StubWrap,
  saddleArea,
  squareCutExtent,
  squareCutOutline,
  squareCutWedge,
  stubLengths,
  stubVolume,
  stubWrap,
  traceDrop,
  traceErrorMost,
  traceGap,
  wholeSection,
  worstSection,
} from './equations.ts'
import { holeCrossing } from './joint.ts'
import { type JointFacts, type JointRoom, jointFacts, jointRoom } from './joint-facts.ts'
import { type LigamentFacts, ligamentFacts } from './ligament-facts.ts'
import { type PocketFacts, pocketFacts } from './pocket-facts.ts'

/** Greatest distance of a drawn polyline from the curve it stands for. */
const DRAWN_WITHIN_m = 5e-6

/** A hole on the flat: its outline about the site's mark, x round the pipe on the paper, y up. */
export interface HoleTemplate {
  readonly outline: readonly Point[]
  readonly extent: Extent
}

export interface StubFacts {
  readonly lengths: StubLengths
  readonly wrap: StubWrap
  /** Angle on a mitre saw's scale, where 0 is a square cut; null for coped ends. */
  readonly saw_rad: number | null
  /** How far the end stands into the bore on the centre line. */
  readonly reach_m: number
  /** How far past the outside a mitre stands, and must stand so that its sides meet the whole wall; null for coped ends. */
  readonly insertion: { readonly planned_m: number; readonly seals_m: number } | null
  readonly volume_m3: number
  readonly mouthReach_m: number
  readonly mouthRise_m: number
  /** Lowest point of the lip above the crossing of the axes. */
  readonly lip_m: number
  readonly freeboard_m: number
  /** Rise of the lower line from wall to mouth. */
  readonly heelRise_m: number
}

export interface TemplatesFacts {
  readonly joint: JointFacts
  readonly holeAlong: HoleTemplate
  readonly holeSquare: HoleTemplate & { readonly wedge_m: number }
  /** Highest edge of the hole, and lowest edge of the opening in the bore, from the site's mark; down is negative. */
  readonly edges: { readonly top_m: number; readonly bottom_m: number }
  readonly stub: StubFacts
  readonly trace: {
    readonly error_m: number
    readonly gap_m: number
    readonly around_rad: number
    readonly drop_m: number | null
  }
  readonly glue: { readonly bore_m2: number; readonly saddle_m2: number; readonly plug_m3: number }
  readonly holeSawDepth_m: number
  readonly freeCore_m: number
  /** Gap in the bore between ends of one ring; null for a single site or ends that stay outside. */
  readonly boreGap_m: number | null
  readonly ligaments: LigamentFacts | null
  /** Taken with square-cut holes, whichever way they are cut: more of the wall is gone then. */
  readonly section: { readonly whole: Section; readonly worst: LevelSection } | null
  readonly cup: Known<CupFacts>
}

const about = (outline: readonly Point[], mark_m: number): Point[] =>
  outline.map(({ x_m, y_m }) => ({ x_m, y_m: y_m - mark_m }))

function stubFacts(j: JointFacts): StubFacts {
  const { stub, end, axisLength_m, mouthTilt_rad, paper_m } = j
  const mouth = mouthCentre({ axisLength_m, angle_rad: stub.angle_rad })
  return {
    lengths: stubLengths({ stub, end, axisLength_m, mouthTilt_rad }),
    wrap: stubWrap({ stub, end, axisLength_m, mouthTilt_rad, paper_m, tolerance_m: DRAWN_WITHIN_m }),
    saw_rad: end.kind === 'mitre' ? mitreSawAngle(stub) : null,
    reach_m:
      end.kind === 'mitre'
        ? mitreReach({ boreRadius_m: stub.columnRadius_m - stub.columnWall_m, depth_m: end.depth_m })
        : 0,
    insertion: insertionOf(j),
    volume_m3: stubVolume({ stub, end, axisLength_m }),
    mouthReach_m: mouth.reach_m,
    mouthRise_m: mouth.height_m,
    lip_m: lipHeight({
      axisLength_m,
      stubBoreRadius_m: stub.stubRadius_m - stub.stubWall_m,
      angle_rad: stub.angle_rad,
      mouthTilt_rad,
    }),
    freeboard_m: freeboard({ stub, axisLength_m, mouthTilt_rad }),
    heelRise_m: heelRise({ heelOutside_m: axisLength_m - endHeel(j), angle_rad: stub.angle_rad }),
  }
}

function insertionOf({ stub, end }: JointFacts): StubFacts['insertion'] {
  if (end.kind !== 'mitre') return null
  const { columnRadius_m, columnWall_m, stubRadius_m, offset_m } = stub
  const sealing_m = mitreDepth({ pipeRadius_m: columnRadius_m - columnWall_m, stubRadius_m, offset_m })
  return { planned_m: columnRadius_m - end.depth_m, seals_m: columnRadius_m - sealing_m }
}

/** Edges from the mark; a square-cut hole has the same top and its lowest edge in the bore is that of the axis cut. */
function edgesOf({ hole, markRise_m }: JointFacts): TemplatesFacts['edges'] {
  const [outside, bore] = [openingExtent(holeCrossing(hole, 'outside')), openingExtent(holeCrossing(hole, 'bore'))]
  return { top_m: outside.top_m - markRise_m, bottom_m: bore.bottom_m - markRise_m }
}

/** Where the lower line leaves the outside of the column, along the stub's axis. */
const endHeel = ({ stub, axisLength_m, mouthTilt_rad }: JointFacts): number =>
  axisLength_m - stubLengths({ stub, end: { kind: 'saddle' }, axisLength_m, mouthTilt_rad }).heel_m

function holeTemplates(j: JointFacts): Pick<TemplatesFacts, 'holeAlong' | 'holeSquare'> {
  const { hole, paper_m, markRise_m } = j
  const drawn = { paper_m, tolerance_m: DRAWN_WITHIN_m }
  const outside = holeCrossing(hole, 'outside')
  return {
    holeAlong: { outline: about(openingOutline({ ...outside, ...drawn }), markRise_m), extent: openingExtent(outside) },
    holeSquare: {
      outline: about(squareCutOutline({ ...hole, ...drawn }), markRise_m),
      extent: squareCutExtent(hole),
      wedge_m: squareCutWedge(hole),
    },
  }
}

/** Rings after which a pattern of sites has shown every way in which its holes can stand to each other. */
const PERIOD = 2

/** The lowest sites, as many as show every section of the column: above them the pattern repeats, turned or not. */
function sectionSites(j: JointFacts, layout: LayoutFacts | null): readonly Stand[] {
  if (layout === null) return []
  const rise_m = layout.rings > 1 ? (layout.lastMark_m - layout.firstMark_m) / (layout.rings - 1) : 0
  const top_m = layout.firstMark_m + PERIOD * rise_m + squareCutExtent(j.hole).height_m
  const low = layout.sites.filter((s) => s.mark_m <= top_m)
  return low.map((s) => ({ turn_rad: s.turn_rad, height_m: s.mark_m - j.markRise_m }))
}

/** Room, joint and templates of the one joint that all sites share. */
export function templatesFacts(
  plan: Plan,
  joint: Known<JointFacts>,
  layout: LayoutFacts | null,
): Known<TemplatesFacts> {
  if (!isKnown(joint)) return joint
  const j = joint.known
  const { stub, hole, end } = j
  const trace = {
    columnRadius_m: stub.columnRadius_m,
    stubRadius_m: stub.stubRadius_m,
    angle_rad: stub.angle_rad,
    offset_m: stub.offset_m,
  }
  const sites = sectionSites(j, layout)
  const perRing = layout?.perRing ?? 1
  return {
    known: {
      joint: j,
      ...holeTemplates(j),
      edges: edgesOf(j),
      stub: stubFacts(j),
      trace: {
        error_m: traceErrorMost(trace),
        ...traceGap(trace),
        drop_m: end.kind === 'mitre' ? traceDrop({ ...trace, depth_m: end.depth_m }) : null,
      },
      glue: { bore_m2: boreContactArea(hole), saddle_m2: saddleArea(stub), plug_m3: plugVolume(hole) },
      holeSawDepth_m: holeSawDepth(hole),
      freeCore_m: freeCore({ boreRadius_m: stub.columnRadius_m - stub.columnWall_m, end }),
      boreGap_m: perRing >= 2 ? boreGap({ stub, end, count: perRing }) : null,
      ligaments: layout ? ligamentFacts(j, layout) : null,
      section:
        sites.length > 0 ? { whole: wholeSection(hole), worst: worstSection({ hole, cut: 'square', sites }) } : null,
      cup: cupFacts(plan, j),
    },
  }
}

export {
  type CupFacts,
  type JointFacts,
  type JointRoom,
  jointFacts,
  jointRoom,
  type LigamentFacts,
  orNull,
  type PocketFacts,
  pocketFacts,
}
