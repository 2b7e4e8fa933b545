import { gaussNodes } from '../../kernel/integrate.ts'
import { squareCutExtent } from './equations-square-cut.ts'
import { type Cut, type Hole, holeCrossing } from './joint.ts'
import { type Arc, remaining, type Section, sectionOf, throughWall } from './section.ts'
import { axisSpan, squareSpan } from './span.ts'

/** Where a site stands: turn round the column, and height of the crossing of its axes. */
export interface Stand {
  readonly turn_rad: number
  readonly height_m: number
}

/** A section, the level at which it is, and how many holes that level passes through. */
export interface LevelSection extends Section {
  readonly level_m: number
  readonly count: number
}

type Spans = readonly (Arc | null)[]

/** Spans of one hole at a level over its axis, one for each radius; null where the level meets none. */
function spansAt(hole: Hole, cut: Cut, radii: readonly number[], over: number): Spans | null {
  if (cut === 'square') {
    const span = squareSpan(hole, over)
    return span === null ? null : [span]
  }
  const outside = holeCrossing(hole, 'outside')
  const spans = radii.map((pipeRadius_m) => axisSpan({ ...outside, pipeRadius_m }, over))
  return spans.some((span) => span !== null) ? spans : null
}

/** Sites that stand at one height; rings that stand alike, turned or not, share their number. */
interface Ring {
  readonly height_m: number
  readonly first_rad: number
  /** Of each site from the first of the ring. */
  readonly turns_rad: readonly number[]
  readonly alike: number
}

function ringsOf(sites: readonly Stand[]): readonly Ring[] {
  const byHeight = new Map<number, number[]>()
  for (const { turn_rad, height_m } of sites) byHeight.set(height_m, [...(byHeight.get(height_m) ?? []), turn_rad])
  const patterns: string[] = []
  return [...byHeight].map(([height_m, all_rad]) => {
    const first_rad = all_rad[0]!
    const turns_rad = all_rad.map((turn) => turn - first_rad)
    const pattern = turns_rad.map((turn) => turn.toFixed(9)).join()
    if (!patterns.includes(pattern)) patterns.push(pattern)
    return { height_m, first_rad, turns_rad, alike: patterns.indexOf(pattern) }
  })
}

/** A ring that a level passes through, turned from the first that is met, with what each of its holes takes there. */
interface Met {
  readonly ring: Ring
  readonly turn_rad: number
  readonly spans: Spans
}

const turned = (section: Section, angle_rad: number): Section => {
  const [c, s] = [Math.cos(angle_rad), Math.sin(angle_rad)]
  const { centroidX_m: x, centroidY_m: y } = section
  return { ...section, centroidX_m: c * x - s * y, centroidY_m: s * x + c * y }
}

function sectionThrough(hole: Hole, cut: Cut, radii: readonly number[], nodes: Nodes, met: readonly Met[]): Section {
  const { columnRadius_m: R, columnWall_m: T } = hole
  const left = (k: number) =>
    remaining(
      met.flatMap(({ ring, turn_rad, spans }) => {
        const arc = spans[k]
        if (!arc) return []
        const [from, to] = [arc.from_rad + turn_rad, arc.to_rad + turn_rad]
        return ring.turns_rad.map((t) => ({ from_rad: from + t, to_rad: to + t }))
      }),
    )
  if (cut === 'square') {
    const through = left(0)
    const edges = [R, R - T].map((radius_m) => ({ radius_m, left: through }))
    return sectionOf([throughWall(R, R - T, through)], edges)
  }
  const edges = radii.map((radius_m, k) => ({ radius_m, left: left(k) }))
  const layers = nodes.map(([rho, weight], i) => {
    const [first, second, third] = [weight * rho, weight * rho ** 2, weight * rho ** 3]
    return { left: edges[i + 2]!.left, first, second, third }
  })
  return sectionOf(layers, edges)
}

type Nodes = ReturnType<typeof gaussNodes>

/**
 * Sections of a column by level. Regular sites ask for the same spans and the same sections again and again: spans are
 * kept by the level over the axis, sections by the rings they are made of, however these are turned together.
 */
export function sectionsOf(hole: Hole, cut: Cut, sites: readonly Stand[]): (level_m: number) => LevelSection {
  const { columnRadius_m: R, columnWall_m: T } = hole
  const nodes = cut === 'square' ? [] : gaussNodes(R - T, R, 2)
  const radii = [R, R - T, ...nodes.map(([rho]) => rho)]
  const { top_m, bottom_m } = squareCutExtent(hole)
  const rings = ringsOf(sites)
  const spansKept = new Map<number, Spans | null>()
  const sectionsKept = new Map<string, Section>()
  return (level_m) => {
    const met: Met[] = []
    let key = ''
    for (const ring of rings) {
      const over = level_m - ring.height_m
      if (over < bottom_m || over > top_m) continue
      const rounded = Math.round(over * 1e12)
      let spans = spansKept.get(rounded)
      if (spans === undefined) {
        spans = spansAt(hole, cut, radii, over)
        spansKept.set(rounded, spans)
      }
      if (spans === null) continue
      const turn_rad = ring.first_rad - (met[0]?.ring.first_rad ?? ring.first_rad)
      met.push({ ring, turn_rad, spans })
      key += `${ring.alike}@${rounded}@${Math.round(turn_rad * 1e9)} `
    }
    const section = sectionsKept.get(key) ?? sectionThrough(hole, cut, radii, nodes, met)
    sectionsKept.set(key, section)
    return {
      ...turned(section, met[0]?.ring.first_rad ?? 0),
      level_m,
      count: met.reduce((sum, { ring }) => sum + ring.turns_rad.length, 0),
    }
  }
}

/**
 * Heights of rings about which the holes stand unlike: where two rings have the same neighbours within reach, turned or
 * not, what is left of the column about them is the same, and one of them speaks for both.
 */
export function unlikeHeights(hole: Hole, sites: readonly Stand[]): readonly number[] {
  const reach_m = squareCutExtent(hole).height_m
  const rings = ringsOf(sites)
  const seen = new Set<string>()
  return rings.flatMap(({ height_m, first_rad }) => {
    let key = ''
    for (const other of rings) {
      const rise_m = other.height_m - height_m
      if (Math.abs(rise_m) > reach_m) continue
      key += `${other.alike}@${Math.round(rise_m * 1e12)}@${Math.round((other.first_rad - first_rad) * 1e9)} `
    }
    if (seen.has(key)) return []
    seen.add(key)
    return [height_m]
  })
}
