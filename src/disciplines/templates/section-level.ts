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

/** Spans of one hole by level over its axis, one for each radius; kept, since regular sites ask the same again and again. */
function spansOf(hole: Hole, cut: Cut, radii: readonly number[]): (over: number) => readonly (Arc | null)[] | null {
  const { top_m, bottom_m } = squareCutExtent(hole)
  const outside = holeCrossing(hole, 'outside')
  const known = new Map<number, readonly (Arc | null)[] | null>()
  return (over) => {
    if (over < bottom_m || over > top_m) return null
    const key = Math.round(over * 1e12)
    const kept = known.get(key)
    if (kept !== undefined) return kept
    const spans =
      cut === 'square'
        ? [squareSpan(hole, over)]
        : radii.map((pipeRadius_m) => axisSpan({ ...outside, pipeRadius_m }, over))
    const found = spans.some((span) => span !== null) ? spans : null
    known.set(key, found)
    return found
  }
}

/**
 * Sections of a column by level. Sites that stand alike round the column give the same section however it is turned
 * by whole rings, so sections are kept by what they are made of.
 */
export function sectionsOf(hole: Hole, cut: Cut, sites: readonly Stand[]): (level_m: number) => LevelSection {
  const { columnRadius_m: R, columnWall_m: T } = hole
  const Ri = R - T
  const nodes = cut === 'square' ? [] : gaussNodes(Ri, R, 2)
  const radii = [R, Ri, ...nodes.map(([rho]) => rho)]
  const spans = spansOf(hole, cut, radii)
  const known = new Map<string, Section>()
  const section = (met: readonly { readonly turn_rad: number; readonly arcs: readonly (Arc | null)[] }[]): Section => {
    const left = (k: number) =>
      remaining(
        met.flatMap(({ turn_rad, arcs }) => {
          const arc = arcs[k]
          return arc ? [{ from_rad: arc.from_rad + turn_rad, to_rad: arc.to_rad + turn_rad }] : []
        }),
      )
    if (cut === 'square') {
      const through = left(0)
      return sectionOf(
        [throughWall(R, Ri, through)],
        [R, Ri].map((radius_m) => ({ radius_m, left: through })),
      )
    }
    const layers = nodes.map(([rho, weight], i) => {
      const [first, second, third] = [weight * rho, weight * rho ** 2, weight * rho ** 3]
      return { left: left(i + 2), first, second, third }
    })
    return sectionOf(
      layers,
      radii.map((radius_m, k) => ({ radius_m, left: left(k) })),
    )
  }
  return (level_m) => {
    const met = sites.flatMap(({ turn_rad, height_m }) => {
      const arcs = spans(level_m - height_m)
      return arcs === null ? [] : [{ turn_rad, arcs, key: `${turn_rad.toFixed(9)}@${(level_m - height_m).toFixed(9)}` }]
    })
    const key = met.map((site) => site.key).join()
    const found = known.get(key) ?? section(met)
    known.set(key, found)
    return { ...found, level_m, count: met.length }
  }
}
