import { isKnown, type Known, needed } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { kerfs, type SawId } from '../../tables/kerfs.ts'
import { practiceLengths } from '../../tables/practice.ts'
import type { SourceId } from '../../tables/sources.ts'
import { rowSource } from '../../tables/table.ts'
import type { LayoutFacts } from '../layout/index.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { type CutPlan, cutPlan } from './cut-plan.ts'
import { fittingPipes, kerfAlong, mitreReach, ROUNDING_M, stickCapacity } from './equations.ts'
import type { Cut, CutJob, Piece } from './job.ts'

export type MaterialKind = 'column' | 'stub' | 'hose' | 'return'

/** What is cut from one pipe or hose. */
export interface MaterialCuts {
  readonly of: MaterialKind
  /** Name of the pipe; null for hose, which goes by its bore. */
  readonly label: string | null
  readonly bore_m: number | null
  readonly pieces: readonly Piece[]
  /** All pieces end to end, without what the saw takes. */
  readonly pieces_m: number
  /** The longest piece with the wedge that it costs when it is alone on a stick. */
  readonly longest_m: number
  /** Longest stick without its trimmed ends; null where no length is stated. */
  readonly usable_m: number | null
  /** Null where no stock is stated: then the material goes by the metre. */
  readonly job: CutJob | null
  readonly plan: CutPlan | null
  /** Fields that are missing for a cutting plan. */
  readonly needs: readonly string[]
}

/** Width of the saw's cut and who says so. */
export interface Kerf {
  readonly kerf_m: number
  readonly from: 'plan' | 'saw'
  readonly source: SourceId | null
}

export interface CutsFacts {
  readonly kerf: Kerf | null
  readonly trim_m: number
  readonly trimFrom: 'plan' | 'practice'
  readonly materials: readonly MaterialCuts[]
}

const sawRows: Readonly<Record<string, SawId>> = {
  'hand saw': 'hand-saw',
  'mitre box': 'mitre-box',
  'mitre saw': 'mitre-saw',
  'band saw': 'band-saw',
  hacksaw: 'hacksaw',
  jigsaw: 'jigsaw',
}

/** The kerf as stated, else the widest of the saw that the plan names. */
export function kerfOf(plan: Plan): Kerf | null {
  const stated = plan.stock?.kerf_m
  if (stated !== undefined) return { kerf_m: stated, from: 'plan', source: null }
  const saw = plan.tools?.saw
  const row = saw === undefined ? undefined : sawRows[saw]
  if (row === undefined) return null
  return { kerf_m: kerfs.rows[row].kerfHigh_m, from: 'saw', source: rowSource(kerfs, row) }
}

interface Wanted {
  readonly of: MaterialKind
  readonly label: string | null
  readonly bore_m: number | null
  readonly pieces: readonly Piece[]
  readonly needs: readonly string[]
}

/** Ways to make a site; a plan with a stub and no word about it means glued stubs. */
export const methodOf = (plan: Plan): 'stub' | 'pocket' | 'hole' | 'fitting' | null =>
  plan.column?.sites?.method ?? (plan.column?.stub === undefined ? null : 'stub')

const columnsOf = (plan: Plan): number => plan.towers?.count ?? 1

/** Columns that one pump feeds: all of them where nothing else is said. */
export const pumpsOf = (plan: Plan): number => Math.ceil(columnsOf(plan) / (plan.towers?.perPump ?? columnsOf(plan)))

/** A column of fittings is cut into the pieces between them; nothing can be cut until the fitting is measured. */
function fittingWanted(plan: Plan, layout: Known<LayoutFacts>): Pick<Wanted, 'pieces' | 'needs'> {
  const { fitting } = plan.column ?? {}
  const given = needed({
    layingLength_m: ['column/fitting/layingLength', fitting?.layingLength_m],
    socket_m: ['column/fitting/socket', fitting?.socket_m],
    branchAt_m: ['column/fitting/branchAt', fitting?.branchAt_m],
  })
  if (!isKnown(layout)) return { pieces: [], needs: layout.needs }
  if (!isKnown(given)) return { pieces: [], needs: given.needs }
  const { sites, columnLength_m } = layout.known
  const marks_m = [...new Set(sites.map((s) => s.mark_m))].sort((a, b) => a - b)
  const { foot_m, between_m, top_m } = fittingPipes({ ...given.known, marks_m, columnLength_m })
  const alike = [...new Set(between_m.map((m) => Math.round(m / ROUNDING_M)))].map((m) => m * ROUNDING_M)
  const counted = alike.map((length_m) => ({
    length_m,
    count: between_m.filter((m) => Math.abs(m - length_m) < ROUNDING_M).length,
  }))
  const piece = (id: string, length_m: number, count: number): Piece => ({
    id,
    count: count * columnsOf(plan),
    length_m,
    cut: { kind: 'square' },
  })
  return {
    pieces: [
      ...(foot_m === null ? [] : [piece('foot-piece', foot_m, 1)]),
      ...counted.map((c, i) => piece(i === 0 ? 'between' : `between-${i + 1}`, c.length_m, c.count)),
      ...(top_m === null ? [] : [piece('top-piece', top_m, 1)]),
    ],
    needs: [],
  }
}

function columnWanted(plan: Plan, layout: Known<LayoutFacts>): Wanted {
  const { length_m, pipe } = plan.column ?? {}
  if (methodOf(plan) === 'fitting') {
    const { pieces, needs } = fittingWanted(plan, layout)
    const lacks = [...needs, ...(pipe === undefined ? ['column/pipe'] : [])]
    return { of: 'column', label: pipe?.label ?? null, bore_m: pipe?.bore_m ?? null, pieces, needs: lacks }
  }
  const pieces: Piece[] =
    length_m === undefined ? [] : [{ id: 'column', count: columnsOf(plan), length_m, cut: { kind: 'square' } }]
  const needs = [...(length_m === undefined ? ['column/length'] : []), ...(pipe === undefined ? ['column/pipe'] : [])]
  return { of: 'column', label: pipe?.label ?? null, bore_m: pipe?.bore_m ?? null, pieces, needs }
}

/** How a stub's ends are cut; a tilted mouth takes a mitre of its own, which is not shared. */
function stubPiece(t: TemplatesFacts, count: number): Piece {
  const { end, stub, mouthTilt_rad } = t.joint
  const { centre_m, crown_m, heel_m, blank_m } = t.stub.lengths
  if (end.kind === 'mitre' && mouthTilt_rad === 0) {
    const cut: Cut = { kind: 'mitre', angle_rad: stub.angle_rad, radius_m: stub.stubRadius_m }
    return { id: 'stub', count, length_m: centre_m, cut }
  }
  const shortest_m = Math.min(crown_m, heel_m)
  return { id: 'stub', count, length_m: shortest_m, cut: { kind: 'cope', extent_m: blank_m - shortest_m } }
}

function stubWanted(plan: Plan, templates: Known<TemplatesFacts>, layout: Known<LayoutFacts>): Wanted[] {
  if (methodOf(plan) !== 'stub') return []
  const pipe = plan.column?.stub?.pipe
  const base = { of: 'stub' as const, label: pipe?.label ?? null, bore_m: pipe?.bore_m ?? null }
  if (!isKnown(templates) || !isKnown(layout)) {
    const needs = [...(isKnown(templates) ? [] : templates.needs), ...(isKnown(layout) ? [] : layout.needs)]
    return [{ ...base, pieces: [], needs: [...new Set(needs)] }]
  }
  return [{ ...base, pieces: [stubPiece(templates.known, layout.known.plants)], needs: [] }]
}

/** Riser, header and drops by their bore. What has the bore of the hose at the column is what `stock` calls hose. */
function hoseWanted(plan: Plan): Wanted[] {
  const { riser } = plan
  if (riser === undefined) return []
  const runs = [
    { id: 'riser', count: pumpsOf(plan), length_m: riser.length_m, bore_m: riser.bore_m },
    ...(riser.branches === undefined
      ? [
          { id: 'header', count: pumpsOf(plan), length_m: riser.header?.length_m, bore_m: riser.header?.bore_m },
          { id: 'drop', count: columnsOf(plan), length_m: riser.drops?.length_m, bore_m: riser.drops?.bore_m },
        ]
      : riser.branches.map((b, i) => ({
          id: b.name ?? `branch-${i + 1}`,
          count: pumpsOf(plan),
          length_m: b.length_m,
          bore_m: b.bore_m,
        }))),
  ]
  const known = runs.flatMap((r): (Piece & { bore_m: number | null })[] =>
    r.length_m === undefined || r.length_m === 0
      ? []
      : [{ id: r.id, count: r.count, length_m: r.length_m, cut: { kind: 'square' }, bore_m: r.bore_m ?? null }],
  )
  const bores = [...new Set(known.map((r) => r.bore_m))]
  return bores.map((bore_m) => {
    const pieces = known.filter((r) => r.bore_m === bore_m).map(({ bore_m: _, ...piece }) => piece)
    return { of: 'hose', label: null, bore_m, pieces, needs: bore_m === null ? ['riser/bore'] : [] }
  })
}

/** The return pipe, in as few equal pieces as the stock allows; couplings join them. */
function returnWanted(plan: Plan, kerf: Kerf | null, trim_m: number): Wanted[] {
  const { length_m, bore_m } = plan.drain ?? {}
  if (length_m === undefined || length_m === 0) return []
  const { purchase, offcuts } = stockOf(plan, 'return')
  const longest_m = Math.max(
    0,
    ...[...purchase, ...offcuts].map((l) => l.length_m - 2 * (trim_m + (kerf?.kerf_m ?? 0))),
  )
  const parts = longest_m > 0 ? Math.ceil(length_m / longest_m) : 1
  const piece: Piece = {
    id: 'return',
    count: parts * pumpsOf(plan),
    length_m: length_m / parts,
    cut: { kind: 'square' },
  }
  return [{ of: 'return', label: null, bore_m: bore_m ?? null, pieces: [piece], needs: [] }]
}

/** Bore of the hose that reaches the column: the one that lengths of hose in stock are for. */
const stockBore = (plan: Plan): number | null =>
  plan.riser?.branches?.at(-1)?.bore_m ?? plan.riser?.drops?.bore_m ?? plan.riser?.bore_m ?? null

/** Lengths that the shop sells, and lengths that lie there: those with a count. */
function stockOf(plan: Plan, of: MaterialKind): Pick<CutJob, 'purchase' | 'offcuts'> {
  const own = (plan.stock?.lengths ?? []).map((l, i) => ({ ...l, id: `stock/lengths/${i}` })).filter((l) => l.of === of)
  return {
    purchase: own.flatMap((l) =>
      l.count === undefined && l.length_m !== undefined
        ? [{ id: l.id, length_m: l.length_m, socket_m: 0, price_money: l.price ?? null }]
        : [],
    ),
    offcuts: own.flatMap((l) =>
      l.count !== undefined && l.length_m !== undefined
        ? [{ id: l.id, length_m: l.length_m, count: l.count, ends_count: 2 as const }]
        : [],
    ),
  }
}

/** What a piece takes when it is alone on a stick, without its last square cut. */
function aloneLength({ length_m, cut }: Piece, kerf_m: number): number {
  if (cut.kind === 'mitre') return length_m + kerfAlong({ ...cut, kerf_m }) + mitreReach(cut)
  return cut.kind === 'cope' ? length_m + cut.extent_m : length_m
}

function materialCuts(plan: Plan, wanted: Wanted, kerf: Kerf | null, trim_m: number): MaterialCuts {
  const { pieces } = wanted
  const sawn = wanted.of !== 'hose'
  const bought = wanted.of === 'column' || wanted.of === 'stub'
  const stock = !sawn && wanted.bore_m !== stockBore(plan) ? { purchase: [], offcuts: [] } : stockOf(plan, wanted.of)
  const stocked = stock.purchase.length + stock.offcuts.length > 0
  // Hose is cut with a knife, which takes nothing, and its ends are used as they come.
  const kerf_m = sawn ? (kerf?.kerf_m ?? null) : 0
  const needs = [
    ...wanted.needs,
    ...(bought && !stocked ? ['stock/lengths'] : []),
    ...(kerf_m === null ? ['stock/kerf'] : []),
  ]
  const whole = { ...stock, pieces, kerf_m: kerf_m ?? 0, trim_m: sawn ? trim_m : 0, share: sawn }
  const job = stocked && kerf_m !== null && pieces.length > 0 ? whole : null
  const room = (length_m: number) =>
    stickCapacity({ length_m, socket_m: 0, trim_m: whole.trim_m, kerf_m: whole.kerf_m, ends_count: trimmed(whole) }) -
    whole.kerf_m
  const lengths = [...stock.purchase, ...stock.offcuts].map((l) => room(l.length_m))
  return {
    of: wanted.of,
    label: wanted.label,
    bore_m: wanted.bore_m,
    pieces,
    pieces_m: pieces.reduce((sum, p) => sum + p.count * (p.length_m + (p.cut.kind === 'cope' ? p.cut.extent_m : 0)), 0),
    longest_m: Math.max(0, ...pieces.map((p) => aloneLength(p, whole.kerf_m))),
    usable_m: lengths.length === 0 || kerf_m === null ? null : Math.max(...lengths),
    job,
    plan: job === null ? null : cutPlan(job),
    needs,
  }
}

const trimmed = (job: Pick<CutJob, 'trim_m'>): 0 | 2 => (job.trim_m > 0 ? 2 : 0)

/** What must be cut, from what, and how: one cutting plan for each pipe and hose. */
export function cutsFacts(plan: Plan, templates: Known<TemplatesFacts>, layout: Known<LayoutFacts>): CutsFacts {
  const kerf = kerfOf(plan)
  const stated = plan.stock?.trim_m
  const trim_m = stated ?? practiceLengths.rows['factory-end'].low_m
  const wanted = [
    columnWanted(plan, layout),
    ...stubWanted(plan, templates, layout),
    ...hoseWanted(plan),
    ...returnWanted(plan, kerf, trim_m),
  ]
  return {
    kerf,
    trim_m,
    trimFrom: stated === undefined ? 'practice' : 'plan',
    materials: wanted.map((w) => materialCuts(plan, w, kerf, trim_m)),
  }
}
