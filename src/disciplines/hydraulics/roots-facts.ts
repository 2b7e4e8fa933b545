import { piecewiseLinear } from '../../kernel/interpolate.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { siteMasses } from '../../tables/canopy.ts'
import { cropTargets } from '../../tables/crop-targets.ts'
import { cropNames } from '../../tables/feed-practice.ts'
import { rootLengths, rootPractice, rootVigourOf, rootVigours } from '../../tables/roots.ts'
import type { LayoutFacts } from '../layout/index.ts'
import { boreForRoots, matArea, matVolume } from './equations-roots.ts'
import { columnPipe, type FilmFacts } from './film-facts.ts'
import { type Range, range } from './range.ts'

/** Share of the bore that roots take at one age of the plants. */
export interface RootWeek {
  readonly week: number
  readonly share: Range
}

export interface RootFacts {
  readonly bore_m: number
  /** Bore less the riser, where it runs up inside. */
  readonly free_m2: number
  /** Share of that which the film of water needs. */
  readonly filmShare: number
  readonly weeks: readonly RootWeek[]
  /** Age at which the plants are cut, and the share that their roots take then. */
  readonly oldest_d: number
  readonly atOldest: Range
  /** Age at which half of the bore is taken; at its end where that takes longer than anything is said of. */
  readonly halfFull_d: Range
  readonly longest_d: number
  /** First ring from above below which roots of several rings hang side by side, counted from the foot. */
  readonly ring: number
  /** Bore in which roots of that age leave half free. */
  readonly boreNeeded_m: number
  /** Crop with most root, where the crops differ. */
  readonly heaviest: string | null
}

const DAYS_OF_WEEK = 7
const WATER_kg_m3 = 1000
const masses = Object.values(siteMasses.rows)
const lengths = Object.values(rootLengths.rows)
const { packing, boreTaken, hoseWall, longest } = rootPractice.rows

const massTo = piecewiseLinear({ x: masses.map((r) => r.week), y: masses.map((r) => r.wetRoot_kg) })
const lengthTo = {
  low: piecewiseLinear({ x: lengths.map((r) => r.week), y: lengths.map((r) => r.low_m) }),
  high: piecewiseLinear({ x: lengths.map((r) => r.week), y: lengths.map((r) => r.high_m) }),
}

/** Beyond the table roots go on as in its last weeks. */
function goingOn(table: (week: number) => number, last: number): (week: number) => number {
  const slope = table(last) - table(last - 1)
  return (week) => (week <= last ? table(week) : table(last) + slope * (week - last))
}

const wetRoot_kg = goingOn(massTo, masses.at(-1)!.week)
const LAST_LENGTH = lengths.at(-1)!.week
const rootLength_m = {
  low: goingOn(lengthTo.low, LAST_LENGTH),
  high: goingOn(lengthTo.high, LAST_LENGTH),
}

/** Room and length of the roots of one plant of common vigour at either end of their band. */
interface Root {
  readonly low: RootEnd
  readonly high: RootEnd
}

interface RootEnd {
  readonly volume_m3: number
  readonly length_m: number
}

/** Few roots, long and packed at the low end; many, short and loose at the high one. */
function rootAt(week: number): Root {
  const end = (length_m: number, packed: number): RootEnd => ({
    volume_m3: matVolume({ wetRoot_kg: wetRoot_kg(week), density_kg_m3: WATER_kg_m3, packing: packed }),
    length_m,
  })
  return { low: end(rootLength_m.high(week), packing.high), high: end(rootLength_m.low(week), packing.low) }
}

/** Root of each day up to the last of which anything is said, worked out once. */
const DAYS = Array.from({ length: longest.high * DAYS_OF_WEEK + 1 }, (_, day) => rootAt(day / DAYS_OF_WEEK))

/** Week from which the roots of a plant hang as far as asked: long and short roots; null where they never do. */
export function weekOfLength(reach_m: number): Range {
  const week = (end: 'low' | 'high') => {
    const day = DAYS.findIndex((d) => d[end].length_m >= reach_m)
    return day < 0 ? longest.high : day / DAYS_OF_WEEK
  }
  return range(week('low'), week('high'))
}

function vigourOf(crop: string): Range {
  const name = crop.toLowerCase().trim()
  if (!Object.hasOwn(cropNames.rows, name)) return rootVigours.rows.unlisted
  const { target } = cropNames.rows[name as keyof typeof cropNames.rows]
  const kind = cropTargets.rows[target as keyof typeof cropTargets.rows].crop
  return rootVigours.rows[rootVigourOf[kind] ?? 'leafy']
}

interface Mixture {
  readonly vigour: Range
  readonly heaviest: string | null
}

/** Crops mixed evenly at the low end, the one with most root beside its own kind at the high end. */
function mixtureOf(plan: Plan): Mixture {
  const crops = (plan.crops ?? []).flatMap((c) =>
    c.crop === undefined ? [] : [{ name: c.crop, sites: c.sites ?? 1, vigour: vigourOf(c.crop) }],
  )
  if (crops.length === 0) return { vigour: rootVigours.rows.leafy, heaviest: null }
  const sites = crops.reduce((n, c) => n + c.sites, 0)
  const mean = crops.reduce((sum, c) => sum + c.sites * c.vigour.low, 0) / Math.max(1, sites)
  const most = crops.reduce((a, b) => (b.vigour.high > a.vigour.high ? b : a))
  const differ = crops.some((c) => c.vigour.high < most.vigour.high)
  return { vigour: range(mean, most.vigour.high), heaviest: differ ? most.name : null }
}

interface Column {
  readonly perRing: number
  readonly rings: number
  readonly pitch_m: number
  readonly free_m2: number
  readonly vigour: Range
}

const areaOf = (c: Column, root: Root, end: 'low' | 'high'): number =>
  matArea({
    perRing: c.perRing,
    rings: c.rings,
    pitch_m: c.pitch_m,
    volume_m3: c.vigour[end] * root[end].volume_m3,
    length_m: root[end].length_m,
  })

function areaAt(c: Column, week: number): Range {
  const root = rootAt(week)
  return { low: areaOf(c, root, 'low'), high: areaOf(c, root, 'high') }
}

/** Day from which a share of the bore is taken; the last of which anything is said where it never is. */
function dayOf(c: Column, end: 'low' | 'high', share: number): number {
  const most = longest.high * DAYS_OF_WEEK
  const day = DAYS.findIndex((root, d) => d >= DAYS_OF_WEEK && areaOf(c, root, end) >= share * c.free_m2)
  return day < 0 ? most : day
}

function columnOf(plan: Plan, layout: LayoutFacts, bore_m: number, vigour: Range): Column {
  const { rings, perRing, lastMark_m, firstMark_m } = layout
  const inside = plan.riser?.inside === 'inside the column' ? (plan.riser.bore_m ?? 0) : 0
  const tube_m = inside > 0 ? inside + 2 * hoseWall.high : 0
  return {
    perRing,
    rings,
    pitch_m: rings > 1 ? Math.max(0.001, (lastMark_m - firstMark_m) / (rings - 1)) : layout.columnLength_m,
    free_m2: (Math.PI / 4) * Math.max(1e-6, bore_m ** 2 - tube_m ** 2),
    vigour,
  }
}

/** Roots against the bore by age of the plants, a ring planted at one time. */
export function rootFacts(
  plan: Plan,
  given: { readonly layout: Known<LayoutFacts>; readonly film: Known<FilmFacts>; readonly oldest_weeks: number },
): Known<RootFacts> {
  const pipe = columnPipe(plan)
  if (pipe === null || !(pipe.bore_m > 0)) return { needs: ['column/pipe'] }
  if (!isKnown(given.layout)) return given.layout
  const layout = given.layout.known
  const { vigour, heaviest } = mixtureOf(plan)
  const c = columnOf(plan, layout, pipe.bore_m, vigour)
  const share = ({ low, high }: Range): Range => ({ low: low / c.free_m2, high: high / c.free_m2 })
  const last = Math.max(masses.at(-1)!.week, Math.ceil(given.oldest_weeks) + 2)
  const oldest = areaAt(c, given.oldest_weeks)
  const side = Math.max(1, Math.ceil(rootLength_m.high(given.oldest_weeks) / c.pitch_m))
  const bore_m2 = (Math.PI / 4) * pipe.bore_m ** 2
  const film = isKnown(given.film) ? given.film.known : null
  return {
    known: {
      bore_m: pipe.bore_m,
      free_m2: c.free_m2,
      filmShare: film === null ? 0 : (film.perimeter_m * film.thickness_m.high) / c.free_m2,
      weeks: Array.from({ length: last + 1 }, (_, week) => ({ week, share: share(areaAt(c, week)) })),
      oldest_d: given.oldest_weeks * DAYS_OF_WEEK,
      atOldest: share(oldest),
      halfFull_d: { low: dayOf(c, 'high', boreTaken.low), high: dayOf(c, 'low', boreTaken.low) },
      longest_d: longest.high * DAYS_OF_WEEK,
      ring: Math.max(1, layout.rings - side + 1),
      boreNeeded_m: boreForRoots({ roots_m2: oldest.high, share: boreTaken.low, tube_m2: bore_m2 - c.free_m2 }),
      heaviest,
    },
  }
}
