/** The tree of tubes that a plan describes. */
import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { fittingLosses } from '../../tables/hydraulic-fittings.ts'
import { walls } from '../../tables/hydraulic-walls.ts'
import { barbLoss, lossOnBore } from './equations-minor.ts'
import type { Run } from './network-tree.ts'

/** An open end over a column, or over several that share it. */
export interface OpenEnd {
  readonly id: string
  /** Columns that its water is divided among by what spreads it. */
  readonly columns: number
}

export interface Tubes {
  readonly riser: Run
  readonly ends: readonly OpenEnd[]
  readonly highest_m: number
  readonly lowest_m: number
  readonly columns: number
  /** Branches that hang on no other and on no riser. */
  readonly loose: readonly string[]
  /** Volume of the tubes by part, all columns of the pump. */
  readonly riser_m3: number
  readonly header_m3: number
  readonly drops_m3: number
}

type Riser = NonNullable<Plan['riser']>
type Fittings = Riser['fittings']

/** No tube is of no length: a hundredth of a millimetre keeps the law of friction defined. */
const SHORTEST_m = 1e-5
const ROUGHNESS_m = walls.rows.plastic.roughness_m

const rowOf = {
  'elbow 90': 'elbow90',
  'elbow 45': 'elbow45',
  'tee run': 'teeRun',
  'tee branch': 'teeBranch',
  'ball valve': 'ballValveOpen',
  'check valve': 'swingCheck',
  entrance: 'entranceSharp',
  exit: 'exit',
} as const

/** Sum of the losses of listed fittings on the bore of their tube. */
function fittingSum(list: NonNullable<Fittings>, bore_m: number): number {
  return list.reduce((sum, f) => {
    const count = f.count ?? 1
    if (f.kind === undefined) return sum
    const from_m = Math.min(f.bore_m ?? bore_m, bore_m)
    if (f.kind === 'barb') return sum + count * barbLoss({ barb_m: from_m, tube_m: bore_m })
    const fittingLoss = fittingLosses.rows[rowOf[f.kind]].lossUsual
    return sum + count * lossOnBore({ fittingLoss, from_m, onto_m: bore_m })
  }, 0)
}

interface Piece {
  readonly bore_m?: number | undefined
  readonly length_m?: number | undefined
  readonly losses?: number | undefined
  readonly fittings?: Fittings | undefined
  readonly valveLosses?: number | undefined
}

const piece = (
  id: string,
  p: Piece & { readonly bore_m: number; readonly length_m: number },
): Omit<Run, 'branches'> => ({
  id,
  bore_m: p.bore_m,
  length_m: Math.max(p.length_m, SHORTEST_m),
  roughness_m: ROUGHNESS_m,
  fittingLoss: (p.fittings?.length ? fittingSum(p.fittings, p.bore_m) : (p.losses ?? 0)) + (p.valveLosses ?? 0),
})

const roomIn = (run: Omit<Run, 'branches'>): number => (Math.PI / 4) * run.bore_m ** 2 * run.length_m

/** Columns that one pump feeds. */
export const columnsOf = (plan: Plan): number => {
  const count = plan.towers?.count ?? 1
  return Math.min(plan.towers?.perPump ?? count, Math.max(count, 1))
}

interface Tree {
  readonly branches: readonly Run[]
  readonly ends: readonly OpenEnd[]
  readonly loose: readonly string[]
  readonly header_m3: number
  readonly drops_m3: number
}

function dropsOf(r: Riser, columns: number, outlet_m: number): Known<readonly Run[]> {
  const given = needed({
    bore_m: ['riser/drops/bore', r.drops?.bore_m],
    length_m: ['riser/drops/length', r.drops?.length_m],
  })
  if (!isKnown(given)) return given
  const own = new Map((r.columns ?? []).map((c) => [c.column, c]))
  return {
    known: Array.from({ length: columns }, (_, i): Run => {
      const c = own.get(i + 1)
      const tube = {
        bore_m: c?.dropBore_m ?? given.known.bore_m,
        length_m: c?.dropLength_m ?? given.known.length_m,
        losses: c?.dropLosses ?? r.drops?.losses,
        valveLosses: c?.valveLosses,
      }
      return { ...piece(`column ${i + 1}`, tube), outlet_m: c?.outletHeight_m ?? outlet_m }
    }),
  }
}

/** Header with a drop at each column; its losses sit before the first one, where the whole flow passes. */
function headerTree(r: Riser, drops: readonly Run[]): Known<Tree> {
  const ends = drops.map((d) => ({ id: d.id, columns: 1 }))
  const drops_m3 = drops.reduce((sum, d) => sum + roomIn(d), 0)
  const h = r.header
  if (h === undefined) return { known: { branches: drops, ends, loose: [], header_m3: 0, drops_m3 } }
  const given = needed({ bore_m: ['riser/header/bore', h.bore_m], length_m: ['riser/header/length', h.length_m] })
  if (!isKnown(given)) return given
  const { bore_m, length_m } = given.known
  const between_m = Math.min(h.spacing_m ?? length_m / drops.length, length_m / drops.length)
  const first_m = length_m - (drops.length - 1) * between_m
  let chain: readonly Run[] = []
  for (let i = drops.length - 1; i >= 0; i--) {
    const tube = i === 0 ? { bore_m, length_m: first_m, losses: h.losses } : { bore_m, length_m: between_m }
    chain = [{ ...piece(`header ${i + 1}`, tube), branches: [drops[i]!, ...chain] }]
  }
  return { known: { branches: chain, ends, loose: [], header_m3: (Math.PI / 4) * bore_m ** 2 * length_m, drops_m3 } }
}

/** Any tree: each branch names the one that it leaves. What hangs on none of them is loose. */
function freeTree(r: Riser, columns: number): Known<Tree> {
  const list = (r.branches ?? []).map((b, i) => ({ ...b, id: b.name ?? `branch ${i + 1}`, at: `riser/branches/${i}` }))
  const missing = list.flatMap((b) => [
    ...(b.bore_m === undefined ? [`${b.at}/bore`] : []),
    ...(b.length_m === undefined ? [`${b.at}/length`] : []),
  ])
  if (missing.length > 0) return { needs: missing }
  const laid = new Set<number>()
  const ends: { id: string; columns: number }[] = []
  let room = 0
  const under = (parent: string | undefined): Run[] =>
    list.flatMap((b, i) => {
      if (laid.has(i) || (b.from === '' ? undefined : b.from) !== parent) return []
      laid.add(i)
      const run = piece(b.id, { ...b, bore_m: b.bore_m!, length_m: b.length_m! })
      room += roomIn(run)
      const branches = under(b.id)
      if (branches.length > 0) return [{ ...run, branches }]
      if (b.outletHeight_m === undefined) return [run]
      ends.push({ id: b.id, columns: 1 })
      return [{ ...run, outlet_m: b.outletHeight_m }]
    })
  const branches = under(undefined)
  if (ends.length === 0) return { needs: ['riser/branches/0/outletHeight'] }
  const shared = columns / ends.length
  const loose = list.filter((_, i) => !laid.has(i)).map((b) => b.id)
  return {
    known: { branches, ends: ends.map((e) => ({ ...e, columns: shared })), loose, header_m3: 0, drops_m3: room },
  }
}

const outlets = (run: Run): number[] =>
  run.outlet_m === undefined ? (run.branches ?? []).flatMap(outlets) : [run.outlet_m]

/** Tubes from pump to open ends. With neither header, drops nor branches the riser itself ends over the columns. */
export function tubesOf(plan: Plan): Known<Tubes> {
  const r = plan.riser ?? {}
  const columns = columnsOf(plan)
  const given = needed({ bore_m: ['riser/bore', r.bore_m], length_m: ['riser/length', r.length_m] })
  if (!isKnown(given)) return given
  const own = piece('riser', { ...r, ...given.known })
  const tree = ((): Known<Tree | null> => {
    if (r.branches !== undefined && r.branches.length > 0) return freeTree(r, columns)
    const outlet = needed({ outlet_m: ['riser/outletHeight', r.outletHeight_m] })
    if (!isKnown(outlet)) return outlet
    if (r.header === undefined && r.drops === undefined) return { known: null }
    const drops = dropsOf(r, columns, outlet.known.outlet_m)
    return isKnown(drops) ? headerTree(r, drops.known) : drops
  })()
  if (!isKnown(tree)) return tree
  const t = tree.known
  const riser: Run = t === null ? { ...own, outlet_m: r.outletHeight_m! } : { ...own, branches: t.branches }
  const heights = outlets(riser)
  return {
    known: {
      riser,
      ends: t?.ends ?? [{ id: 'riser', columns }],
      highest_m: Math.max(...heights),
      lowest_m: Math.min(...heights),
      columns,
      loose: t?.loose ?? [],
      riser_m3: roomIn(own),
      header_m3: t?.header_m3 ?? 0,
      drops_m3: t?.drops_m3 ?? 0,
    },
  }
}

/** Whether something keeps the riser full when the pump stops. */
export const hasCheckValve = (plan: Plan): boolean =>
  plan.riser?.checkValve === true || (plan.riser?.fittings ?? []).some((f) => f.kind === 'check valve')
