import type { Container } from '../../plan/container.ts'
import { isKnown, type Known, needed } from '../../plan/known.ts'
import { asBuilt } from '../../plan/pipe.ts'
import type { Plan } from '../../plan/plan.ts'
import { statedPractice } from '../../tables/stated.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { grossVolume, type Standing, solutionLevel, solutionVolume, type Vessel, vesselDepth } from './vessel.ts'

/** A line on the tank as the grower has set it. */
export interface SetLine {
  readonly level_m: number
  readonly volume_m3: number
}

/** A line that cannot be: a volume or level beyond the rim. */
export interface BeyondRim {
  readonly at: string
  readonly volume_m3: number
}

/** The tank as it stands: how level and volume go together, and where the grower has set the two lines. */
export interface TankFacts {
  readonly vessel: Vessel
  readonly standing: readonly Standing[]
  readonly depth_m: number
  /** Solution up to the rim. */
  readonly brim_m3: number
  /** Inside floor of the tank above the floor on which the column or its tank stands; negative where it is buried. */
  readonly floor_m: number
  /** Share of the tank's plan that column and pump take. */
  readonly standingShare: number
  readonly fill: Known<SetLine>
  readonly low: Known<SetLine>
  readonly beyondRim: readonly BeyondRim[]
}

function vesselOf(plan: Plan, c: Container): Vessel {
  const marks = (plan.reservoir?.marks ?? []).flatMap((m) =>
    m.level_m === undefined || m.volume_m3 === undefined ? [] : [{ level_m: m.level_m, volume_m3: m.volume_m3 }],
  )
  const sorted = [...marks].sort((a, b) => a.level_m - b.level_m)
  const rising = sorted.every((m, i) => {
    const below = sorted[i - 1] ?? { level_m: 0, volume_m3: 0 }
    return m.level_m > below.level_m && m.volume_m3 > below.volume_m3
  })
  // A measured table must reach the rim to stand for the tank; what lies above it is not guessed.
  if (rising && (sorted.at(-1)?.level_m ?? 0) >= statedPractice.rows.marksReach.value * c.depth_m)
    return { shape: 'measured', marks: sorted }
  if (c.shape === 'round') return { shape: 'round', bottom_m: c.footLength_m, top_m: c.topLength_m, depth_m: c.depth_m }
  return {
    shape: 'box',
    bottomLength_m: c.footLength_m,
    bottomWidth_m: c.footWidth_m,
    topLength_m: c.topLength_m,
    topWidth_m: c.topWidth_m,
    depth_m: c.depth_m,
  }
}

/** Least plan area, where the tank is narrowest. */
function narrowest(c: Container): number {
  const length_m = Math.min(c.footLength_m, c.topLength_m)
  if (c.shape === 'round') return (Math.PI / 4) * length_m ** 2
  return length_m * Math.min(c.footWidth_m, c.topWidth_m)
}

/** The wall of a column that stands on the tank's floor, and the pump where its size is stated. */
function standingIn(plan: Plan): Standing[] {
  const out: Standing[] = []
  const pipe = plan.column?.pipe
  if (plan.column?.base?.kind === 'through the lid' && pipe) {
    const tape = { circumference_m: plan.measured?.columnCircumference_m, wall_m: plan.measured?.columnWall_m }
    const { outside_m, bore_m } = asBuilt(pipe, tape)
    const count = plan.towers?.perPump ?? plan.towers?.count ?? 1
    const area_m2 = count * (Math.PI / 4) * Math.max(0, outside_m ** 2 - bore_m ** 2)
    out.push({ from_m: 0, to_m: Math.max(plan.column?.length_m ?? 0, 1), area_m2 })
  }
  const { volume_m3, height_m } = plan.pump ?? {}
  if (volume_m3 !== undefined && height_m !== undefined && height_m > 0)
    out.push({ from_m: 0, to_m: height_m, area_m2: volume_m3 / height_m })
  return out
}

interface Set {
  readonly level: readonly [path: string, value: number | undefined]
  readonly volume: readonly [path: string, value: number | undefined]
}

/** A line by level or by volume; the level outranks, since it is what is drawn on the tank. */
function setLine(tank: { vessel: Vessel; standing: readonly Standing[]; brim_m3: number; depth_m: number }, set: Set) {
  const [levelAt, level_m] = set.level
  const [volumeAt, volume_m3] = set.volume
  const line: Known<SetLine> = { needs: [levelAt] }
  if (level_m !== undefined) {
    if (level_m <= tank.depth_m)
      return { line: { known: { level_m, volume_m3: solutionVolume({ ...tank, level_m }) } }, beyond: null }
    const wanted = tank.brim_m3 * (level_m / tank.depth_m)
    return { line, beyond: { at: levelAt, volume_m3: wanted } }
  }
  if (volume_m3 === undefined) return { line, beyond: null }
  if (volume_m3 > tank.brim_m3) return { line, beyond: { at: volumeAt, volume_m3 } }
  return { line: { known: { level_m: solutionLevel({ ...tank, volume_m3 }), volume_m3 } }, beyond: null }
}

/** The tank and the lines that the plan sets on it. */
export function tankFacts(plan: Plan): Known<TankFacts> {
  const r = plan.reservoir
  const given = needed({ container: ['reservoir/container', r?.container] })
  if (!isKnown(given)) return given
  const c = given.known.container
  const vessel = vesselOf(plan, c)
  const wanted = standingIn(plan)
  const standingShare = wanted.reduce((sum, s) => sum + s.area_m2, 0) / narrowest(c)
  // Where more stands in the tank than it has room for, a finding says so and the rest is computed without it.
  const standing = standingShare <= waterPathPractice.rows.footShare.value ? wanted : []
  const depth_m = vesselDepth(vessel)
  const brim_m3 =
    grossVolume({ vessel, level_m: depth_m }) - standing.reduce((v, s) => v + s.area_m2 * Math.min(depth_m, s.to_m), 0)
  const tank = { vessel, standing, depth_m, brim_m3 }
  const fill = setLine(tank, {
    level: ['reservoir/fillLine', r?.fillLine_m],
    volume: ['reservoir/fillVolume', r?.fillVolume_m3],
  })
  const low = setLine(tank, {
    level: ['reservoir/lowLine', r?.lowLine_m],
    volume: ['reservoir/lowVolume', r?.lowVolume_m3],
  })
  return {
    known: {
      ...tank,
      floor_m: (r?.lidHeight_m ?? c.depth_m) - c.depth_m,
      standingShare,
      fill: fill.line,
      low: low.line,
      beyondRim: [fill.beyond, low.beyond].filter((b) => b !== null),
    },
  }
}
