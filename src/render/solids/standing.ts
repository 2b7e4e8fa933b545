import type { TankFacts } from '../../disciplines/reservoir/index.ts'
import type { Facts } from '../../evaluate.ts'
import { isKnown, orNull } from '../../plan/known.ts'
import { levels } from '../views/elevation.ts'
import { anglesOf, level, loft, type Outline, oblong, round, tube } from './loft.ts'
import type { SolidInput } from './makers.ts'
import { moved } from './measure.ts'
import type { Mesh, Place } from './mesh.ts'

/** A part that stands with the column, and the places at which it does. */
export interface Stood {
  readonly name: 'reservoir' | 'lid' | 'water' | 'pump' | 'riser' | 'cup' | 'base' | 'strap'
  readonly mesh: Mesh
  readonly places: readonly { readonly turn_rad: number; readonly rise_m: number }[]
}

const ROUND = 64
/** Walls, slabs and straps whose thickness the plan does not tell are drawn so thin, as shares of what they belong to. */
const WALL_SHARE = 0.012
const BAND_SHARE = 0.24
/** The pump's body and the gap beside an own foot are signs: their sizes are not in the plan. */
const PUMP_SHARE = 0.55
const GAP_SHARE = 0.6
const HOSE_SHARE = 1.2
const CUP_FOOT_SHARE = 0.7
const CUP_WALL_SHARE = 0.03

const HERE = [{ turn_rad: 0, rise_m: 0 }] as const

/** What stands with the column is made from the tank as well. */
export interface StandingInput extends Omit<SolidInput, 'facts' | 'error_m'> {
  readonly facts: Pick<Facts, 'layout' | 'templates' | 'tank'>
}

interface Setting {
  readonly given: StandingInput
  readonly radius_m: number
  readonly foot_m: number
  readonly length_m: number
  readonly lid_m: number | null
}

/** The tank in the coordinates of the column, whose foot is the origin. */
interface Tank {
  readonly facts: TankFacts
  readonly bottom: Outline
  readonly top: Outline
  readonly angles: readonly number[]
  readonly at: readonly [x_m: number, y_m: number]
  readonly floor_m: number
  readonly half_m: number
  readonly wall_m: number
}

function tankOf(s: Setting): Tank | null {
  const facts = orNull(s.given.facts.tank)
  if (facts === null) return null
  const v = facts.vessel
  const c = s.given.plan.reservoir?.container
  // A measured or lying vessel is drawn by the outer sizes that the plan gives.
  const box =
    v.shape === 'box'
      ? { foot: [v.bottomLength_m, v.bottomWidth_m] as const, rim: [v.topLength_m, v.topWidth_m] as const }
      : v.shape !== 'round' && c !== undefined && c.shape !== 'round'
        ? { foot: [c.footLength_m, c.footWidth_m] as const, rim: [c.topLength_m, c.topWidth_m] as const }
        : null
  const pail =
    v.shape === 'round'
      ? ([v.bottom_m, v.top_m] as const)
      : c !== undefined && box === null
        ? ([c.footLength_m, c.topLength_m] as const)
        : null
  if (box === null && pail === null) return null
  const half_m = (box?.rim[0] ?? pail![1]) / 2
  return {
    facts,
    bottom: box === null ? round(pail![0] / 2) : oblong(...box.foot),
    top: box === null ? round(pail![1] / 2) : oblong(...box.rim),
    angles: anglesOf(ROUND, box === null ? [] : [box.foot, box.rim]),
    at: s.lid_m === null ? [-(half_m + s.radius_m + GAP_SHARE * half_m), 0] : [0, 0],
    floor_m: facts.floor_m - s.foot_m,
    half_m,
    wall_m: WALL_SHARE * 2 * half_m,
  }
}

/** Inside outline of the tank at a level. */
const inside =
  (t: Tank, level_m: number): Outline =>
  (a) =>
    t.bottom(a) + ((t.top(a) - t.bottom(a)) * level_m) / t.facts.depth_m

const grown =
  (o: Outline, by_m: number): Outline =>
  (a) =>
    o(a) + by_m

function vessel(t: Tank): Mesh {
  const rim_m = t.floor_m + t.facts.depth_m
  return loft([
    level(t.angles, grown(t.bottom, t.wall_m), t.floor_m - t.wall_m, t.at),
    level(t.angles, grown(t.top, t.wall_m), rim_m, t.at),
    level(t.angles, t.top, rim_m, t.at),
    level(t.angles, t.bottom, t.floor_m, t.at),
  ])
}

/** A slab with a round hole in its middle where the column goes through. */
function slab(t: Tank, outline: Outline, from_m: number, to_m: number, hole_m: number): Mesh {
  const at = t.at
  const outer = [level(t.angles, outline, from_m, at), level(t.angles, outline, to_m, at)]
  if (hole_m === 0) return loft(outer)
  return loft([...outer, level(t.angles, round(hole_m), to_m, at), level(t.angles, round(hole_m), from_m, at)], true)
}

function tankParts(s: Setting, t: Tank): readonly Stood[] {
  const { plan } = s.given
  const through = s.lid_m === null ? 0 : s.radius_m + t.wall_m / 4
  const flange = plan.column?.base?.kind === 'flange on the lid'
  const sheet_m = plan.reservoir?.lidThickness_m ?? t.wall_m
  const rim_m = t.floor_m + t.facts.depth_m
  const lid_m = s.lid_m === null ? rim_m + sheet_m : Math.max(rim_m + sheet_m, s.lid_m - s.foot_m)
  const fill = orNull(t.facts.fill)
  const wet = (depth_m: number) => inside(t, depth_m)
  return [
    { name: 'reservoir', mesh: vessel(t), places: HERE },
    {
      name: 'lid',
      mesh: slab(t, grown(t.top, 2 * t.wall_m), lid_m - sheet_m, lid_m, flange ? 0 : through),
      places: HERE,
    },
    ...(fill === null
      ? []
      : [
          {
            // The water is its surface: a full body would hide all that stands in it.
            name: 'water' as const,
            mesh: slab(
              t,
              grown(wet(fill.level_m), -t.wall_m / 8),
              t.floor_m + fill.level_m - t.wall_m / 3,
              t.floor_m + fill.level_m,
              flange ? 0 : through,
            ),
            places: HERE,
          },
        ]),
  ]
}

/** Pump beside the column's foot, and the hose from it to the outlet at the top. */
function lift(s: Setting, t: Tank): readonly Stood[] {
  const { pump, riser } = s.given.plan
  if (pump === undefined) return []
  const beside = s.lid_m === null
  const room_m = beside ? t.half_m : t.half_m - s.radius_m
  const size_m = Math.min(PUMP_SHARE * room_m, t.facts.depth_m * PUMP_SHARE)
  const x_m = t.at[0] - (beside ? 0 : (t.half_m + s.radius_m) / 2)
  const angles = anglesOf(4, [[size_m, size_m * 0.9]]).filter((a) => Math.abs(Math.sin(2 * a)) > 1e-6)
  const body = (z_m: number) => level(angles, oblong(size_m, size_m * 0.9), z_m, [x_m, 0])
  const top_m = t.floor_m + size_m * 0.85
  const stood: Stood = { name: 'pump', mesh: loft([body(t.floor_m), body(top_m)]), places: HERE }
  const { outletHeight_m, bore_m } = riser ?? {}
  if (outletHeight_m === undefined || bore_m === undefined) return [stood]
  const outlet_m = outletHeight_m - s.foot_m
  const outside = beside || riser?.inside === 'outside the column'
  const up_m = outside ? -(s.radius_m + HOSE_SHARE * bore_m) : 0
  const bend_m = Math.max(top_m + bore_m, Math.min(t.floor_m + t.facts.depth_m - 2 * bore_m, top_m + 2 * size_m))
  const over: readonly Place[] = outside
    ? [
        [up_m, 0, outlet_m + bore_m],
        [0, 0, outlet_m + bore_m],
        [0, 0, outlet_m - bore_m],
      ]
    : [[up_m, 0, outlet_m]]
  // A bend is three places, so that its ends keep their roundness.
  const corner = ([x, z]: readonly [number, number], to: 1 | -1): readonly Place[] => [
    [x - to * bore_m, 0, z],
    [x, 0, z + bore_m],
  ]
  const way: readonly Place[] = [
    [x_m, 0, top_m],
    [x_m, 0, bend_m - bore_m],
    [x_m + Math.sign(up_m - x_m) * bore_m, 0, bend_m],
    ...corner([up_m, bend_m], up_m > x_m ? 1 : -1),
    ...over,
  ]
  return [stood, { name: 'riser', mesh: tube(way, (HOSE_SHARE * bore_m) / 2, bore_m / 2), places: HERE }]
}

/** A cup in each stub: an open cone, its rim on the mouth. */
function cups(s: Setting): readonly Stood[] {
  const { layout, templates } = s.given.facts
  const cup = s.given.plan.column?.cup
  if (!isKnown(layout) || !isKnown(templates) || cup === undefined) return []
  const { stub, axisLength_m, markRise_m } = templates.known.joint
  const body_m = Math.min(cup.body_m ?? Number.POSITIVE_INFINITY, 2 * (stub.stubRadius_m - stub.stubWall_m))
  // A cup of which only the mouth is known is drawn as deep as it is wide, with its sides a little in.
  const deep_m = cup.depth_m ?? body_m
  const narrow_m = cup.foot_m ?? body_m * CUP_FOOT_SHARE
  const wall_m = body_m * CUP_WALL_SHARE
  const angles = anglesOf(24, [])
  const standing = loft([
    level(angles, round(narrow_m / 2), 0),
    level(angles, round(body_m / 2), deep_m),
    level(angles, round(body_m / 2 - wall_m), deep_m),
    level(angles, round(narrow_m / 2 - wall_m), wall_m),
  ])
  const [sine, cosine] = [Math.sin(stub.angle_rad), Math.cos(stub.angle_rad)]
  const mesh = moved(standing, ([x, y, z]) => {
    const along = axisLength_m - deep_m + z
    return [along * sine + x * cosine, y, along * cosine - x * sine]
  })
  const places = layout.known.sites.map((p) => ({ turn_rad: p.turn_rad, rise_m: p.mark_m - markRise_m }))
  return [{ name: 'cup', mesh, places }]
}

function band(inner_m: number, outer_m: number, from_m: number, to_m: number): Mesh {
  const angles = anglesOf(ROUND, [])
  return loft(
    [
      level(angles, round(outer_m), from_m),
      level(angles, round(outer_m), to_m),
      level(angles, round(inner_m), to_m),
      level(angles, round(inner_m), from_m),
    ],
    true,
  )
}

/** The ring that holds the foot, and the strap that ties the column: where the plan has them. */
function fixings(s: Setting): readonly Stood[] {
  const { base } = s.given.plan.column ?? {}
  const gap_m = s.radius_m * WALL_SHARE
  const ring_m = base?.ringDepth_m ?? 0
  const ring: readonly Stood[] =
    ring_m > 0 ? [{ name: 'base', mesh: band(s.radius_m + gap_m, s.radius_m * 1.12, 0, ring_m), places: HERE }] : []
  if (base?.anchored !== true || base.strapHeight_m === undefined) return ring
  const z_m = base.strapHeight_m - s.foot_m
  const half_m = (s.radius_m * BAND_SHARE) / 2
  const strap: Stood = {
    name: 'strap',
    mesh: band(s.radius_m + gap_m, s.radius_m * 1.06, z_m - half_m, z_m + half_m),
    places: HERE,
  }
  return z_m < s.length_m ? [...ring, strap] : ring
}

/** All that stands with the column to be seen in space: reservoir, lid, water line, pump, hose, cups, ring and strap. */
export function standing(given: StandingInput): readonly Stood[] {
  const layout = orNull(given.facts.layout)
  const pipe = given.plan.column?.pipe
  if (layout === null || pipe === undefined) return []
  const { foot_m, lid_m } = levels({ plan: given.plan, layout })
  const s: Setting = { given, radius_m: pipe.outside_m / 2, foot_m, length_m: layout.columnLength_m, lid_m }
  const tank = tankOf(s)
  return [...(tank === null ? [] : [...tankParts(s, tank), ...lift(s, tank)]), ...cups(s), ...fixings(s)]
}
