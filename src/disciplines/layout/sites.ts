import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { helixPlaces, type Place, ringPlaces } from './equations.ts'

/** One place for a plant. */
export interface Site {
  readonly number: number
  /** From 1 at the foot; on a helix each site is a ring of its own. */
  readonly ring: number
  /** Line along the pipe, from 1; sites on a helix stand on lines of their own. */
  readonly line: number
  /** Round the column from line 1. */
  readonly turn_rad: number
  /** Height of the mark above the column's foot: the stub's axis meets the outside there. */
  readonly mark_m: number
}

/** Sites as the plan orders them. */
export interface Pattern {
  readonly sites: readonly Site[]
  readonly perRing: number
  readonly rings: number
  readonly linesEvenly: boolean
}

const TURN = 2 * Math.PI

/** Angles closer than this are one line: a hundredth of a millimetre on a wide pipe. */
const ONE_LINE_rad = 1e-4

const wrapped = (angle: number): number => ((angle % TURN) + TURN) % TURN

/** Numbers the lines round the pipe, line 1 at angle 0. */
function withLines(raw: readonly Omit<Site, 'line' | 'number'>[]): Site[] {
  const angles = [...raw.map((s) => s.turn_rad)].sort((a, b) => a - b)
  const lines = angles.filter((a, i) => i === 0 || a - angles[i - 1]! > ONE_LINE_rad)
  const lineOf = (a: number): number =>
    lines.findIndex((l, i) => a >= l - ONE_LINE_rad && (i === lines.length - 1 || a < lines[i + 1]! - ONE_LINE_rad))
  return raw.map((s, i) => ({
    number: i + 1,
    ...s,
    turn_rad: lines[lineOf(s.turn_rad)]!,
    line: lineOf(s.turn_rad) + 1,
  }))
}

/** A turn that is a whole circle but for rounding is none. */
const turned = (angle: number): number => {
  const w = wrapped(angle)
  return TURN - w < ONE_LINE_rad ? 0 : w
}

const placed = (places: readonly Place[]): Omit<Site, 'line' | 'number'>[] =>
  places.map((p) => ({ ring: p.ring + 1, turn_rad: turned(p.turn_rad), mark_m: p.height_m }))

function rings(plan: Plan, first_m: number): Known<Pattern> {
  const s = plan.column?.sites
  const given = needed({
    rings: ['column/sites/rings', s?.rings],
    perRing: ['column/sites/perRing', s?.perRing],
    pitch_m: ['column/sites/pitch', s?.pitch_m],
    turn_rad: ['column/sites/turn', s?.turn_rad],
  })
  if (!isKnown(given)) return given
  const { rings: count, perRing, pitch_m, turn_rad } = given.known
  const raw = placed(ringPlaces({ rings: count, perRing, pitch_m, first_m, alternateTurn_rad: turn_rad }))
  const sites = withLines(raw)
  const lines = new Set(sites.map((x) => x.line)).size
  const half = Math.abs((wrapped(turn_rad) % (TURN / perRing)) - Math.PI / perRing) < ONE_LINE_rad
  return { known: { sites, perRing, rings: count, linesEvenly: lines === perRing || half } }
}

function helix(plan: Plan, first_m: number): Known<Pattern> {
  const s = plan.column?.sites
  const given = needed({
    count: ['column/sites/count', s?.count],
    rise_m: ['column/sites/rise', s?.rise_m],
    divergence_rad: ['column/sites/divergence', s?.divergence_rad],
  })
  if (!isKnown(given)) return given
  const { count, rise_m, divergence_rad } = given.known
  const raw = placed(helixPlaces({ count, rise_m, divergence_rad, first_m }))
  return { known: { sites: withLines(raw), perRing: 1, rings: count, linesEvenly: false } }
}

/** Where every site of a column stands, its first mark `first_m` above the foot. */
export function columnSites(plan: Plan, first_m: number): Known<Pattern> {
  const pattern = plan.column?.sites?.pattern
  if (pattern === undefined) return { needs: ['column/sites/pattern'] }
  return pattern === 'rings' ? rings(plan, first_m) : helix(plan, first_m)
}
