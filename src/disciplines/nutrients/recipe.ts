import { type Minimum, quadraticMinimum, type Row } from '../../kernel/quadratic-program.ts'
import { components } from '../../tables/components.ts'
import { elements } from '../../tables/elements.ts'
import { type Amounts, elementOf, mixed, type Nutrient, named, nutrientAmount } from './composition.ts'
import { nutrientMasses_g_m3 } from './equations-formula.ts'
import { alkalinity } from './equations-ph.ts'
import { type Conditions, chargeAgainstAmounts } from './speciation.ts'

/** Something on the shelf: a salt, a bag, an acid. */
export interface Product {
  readonly id: string
  readonly amounts_mol_kg: Amounts
  /** Most that the grower has or that dissolves, per volume of feed. */
  readonly most_g_m3?: number
  readonly price_money_kg?: number
  /** Step of a liquid that is measured by volume and not weighed. */
  readonly step_kg?: number
}

export interface Target {
  readonly nutrient: Nutrient
  readonly wanted_g_m3: number
  /** How much a miss counts; 1 for the main nutrients. */
  readonly weight: number
}

/** A hard band. */
export interface Limit {
  readonly nutrient: Nutrient
  readonly min_g_m3?: number
  readonly max_g_m3?: number
}

export interface RecipeProblem {
  readonly water: Amounts
  readonly shelf: readonly Product[]
  readonly targets: readonly Target[]
  readonly limits: readonly Limit[]
  /** Highest share of ammonium in the nitrogen, or null for none. */
  readonly ammoniumShare: number | null
  /** Band that the pH must lie in when all is mixed, or null to leave it out. */
  readonly pH: (Conditions & { readonly low: number; readonly high: number }) | null
}

/** What a row of the programme stands for. */
export type Bound =
  | { readonly kind: 'none-left' | 'most'; readonly product: string }
  | { readonly kind: 'min' | 'max'; readonly nutrient: Nutrient }
  | { readonly kind: 'ammonium-share' | 'pH-low' | 'pH-high' }

export interface HeldBound {
  readonly bound: Bound
  /** What the objective would fall by if the bound gave way by one of its units (g/m³, mol of charge per m³). */
  readonly price: number
}

export interface Recipe {
  readonly doses_g_m3: Readonly<Record<string, number>>
  /** Water and salts together. */
  readonly amounts: Amounts
  readonly reached_g_m3: Readonly<Record<Nutrient, number>>
  /** Sum of weight × (relative miss)². */
  readonly objective: number
  /** Proof of the optimum: see `optimalityGap`. */
  readonly gap: number
  /** Bounds that hold the recipe back, dearest first. */
  readonly held: readonly HeldBound[]
  /** Bounds that nothing on the shelf can meet. */
  readonly unmet: readonly Bound[]
}

/** g of a nutrient per g of a product. */
export const share = (product: Product, nutrient: Nutrient): number =>
  nutrientAmount(product.amounts_mol_kg, nutrient) * elements.rows[elementOf(nutrient)].molarMass_kg_mol

export interface LabelledRow extends Row {
  readonly bound: Bound
}

/** Rows of hard bands and stock; a maximum that the water alone passes becomes "add none". */
export function rowsOf(problem: RecipeProblem): readonly LabelledRow[] {
  const { shelf, limits, ammoniumShare } = problem
  const water = nutrientMasses_g_m3(problem.water)
  const rows: LabelledRow[] = []
  const unit = (i: number, sign: number) => shelf.map((_, j) => (i === j ? sign : 0))
  shelf.forEach(({ id, most_g_m3 }, i) => {
    rows.push({ coefficients: unit(i, 1), atLeast: 0, bound: { kind: 'none-left', product: id } })
    if (most_g_m3 !== undefined)
      rows.push({ coefficients: unit(i, -1), atLeast: -most_g_m3, bound: { kind: 'most', product: id } })
  })
  for (const { nutrient, min_g_m3, max_g_m3 } of limits) {
    const a = shelf.map((product) => share(product, nutrient))
    if (min_g_m3 !== undefined)
      rows.push({ coefficients: a, atLeast: min_g_m3 - water[nutrient], bound: { kind: 'min', nutrient } })
    if (max_g_m3 !== undefined) {
      const room = Math.max(0, max_g_m3 - water[nutrient])
      rows.push({ coefficients: a.map((x) => -x), atLeast: -room, bound: { kind: 'max', nutrient } })
    }
  }
  if (ammoniumShare !== null) {
    const a = shelf.map((product) => ammoniumShare * share(product, 'N') - share(product, 'NH4-N'))
    const atLeast = Math.min(0, water['NH4-N'] - ammoniumShare * water.N)
    rows.push({ coefficients: a, atLeast, bound: { kind: 'ammonium-share' } })
  }
  return rows
}

/** Products that set the pH: acids bring no cation, bases bring alkalinity. Salts are not used for it. */
const isAcid = ({ amounts_mol_kg }: Product) =>
  named(amounts_mol_kg).every((id) => amounts_mol_kg[id] === 0 || components.rows[id].charge <= 0) &&
  named(amounts_mol_kg).some((id) => components.rows[id].charge < 0 || id === 'citrate')
const isBase = ({ amounts_mol_kg }: Product) => alkalinity({ amounts: amounts_mol_kg }) > SOME_ALKALINITY_mol_kg

/** Whether a product is there for the pH. */
export const setsPh = (product: Product): boolean => isAcid(product) || isBase(product)

/** Above what rounding on a label can feign. */
const SOME_ALKALINITY_mol_kg = 1

export interface PhRow extends LabelledRow {
  /** False where acids or bases on the shelf do not suffice; the row then asks for as much as they can do. */
  readonly enough: boolean
}

/**
 * The pH band as two linear rows: the pH lies above `low` where the charges at `low` sum to more than zero, and below
 * `high` where those at `high` sum to less. Acids and bases act on them; the rest of the charge, and all mean charges,
 * are those of the last mix, and are renewed until they stand.
 */
export function phRows(problem: RecipeProblem, doses: readonly number[]): readonly PhRow[] {
  if (problem.pH === null) return []
  const { low, high, ...conditions } = problem.pH
  const amounts = mixOf(problem, doses)
  const row = (pH: number, sign: 1 | -1, helps: (product: Product) => boolean, kind: 'pH-low' | 'pH-high'): PhRow => {
    const { meanCharge, netCharge_mol_m3 } = chargeAgainstAmounts({ ...conditions, pH })(amounts)
    const mean = meanCharge()
    const charge = (product: Product) =>
      named(product.amounts_mol_kg).reduce((sum, id) => {
        const inAir = conditions.carbonDioxide_Pa !== null && id === 'HCO3'
        return inAir ? sum : sum + (mean[id] * product.amounts_mol_kg[id]!) / 1000
      }, 0)
    const coefficients = problem.shelf.map((p) => (setsPh(p) ? sign * charge(p) : 0))
    const others = sign * netCharge_mol_m3 - coefficients.reduce((sum, c, j) => sum + c * doses[j]!, 0)
    const reach = problem.shelf.reduce(
      (sum, p, j) => (helps(p) ? sum + coefficients[j]! * (p.most_g_m3 ?? Number.POSITIVE_INFINITY) : sum),
      0,
    )
    return { coefficients, atLeast: Math.min(-others, reach), bound: { kind }, enough: -others <= reach }
  }
  return [row(low, 1, isBase, 'pH-low'), row(high, -1, isAcid, 'pH-high')]
}

/** Keeps the programme strictly convex where two salts do the same; far below any dose that could be weighed. */
const TIE_BREAK = 1e-10
/** Scale of a dose that no target sees, g/m³. */
const USUAL_DOSE = 100

interface Scaled {
  readonly found: Minimum
  readonly doses: readonly number[]
  readonly prices: readonly number[]
}

function solved(problem: RecipeProblem, rows: readonly Row[]): Scaled {
  const water = nutrientMasses_g_m3(problem.water)
  const lines = problem.targets.map(({ nutrient, wanted_g_m3, weight }) => ({
    weight,
    a: problem.shelf.map((product) => share(product, nutrient) / wanted_g_m3),
    short: 1 - water[nutrient] / wanted_g_m3,
  }))
  const norm = problem.shelf.map((_, j) => Math.sqrt(lines.reduce((sum, l) => sum + l.weight * l.a[j]! ** 2, 0)))
  const scale = norm.map((n) => (n > 0 ? 1 / n : USUAL_DOSE))
  const quadratic = scale.map((si, i) =>
    scale.map((sj, j) => {
      const sum = lines.reduce((total, l) => total + l.weight * l.a[i]! * l.a[j]!, 0)
      return sum * si * sj + (i === j ? TIE_BREAK : 0)
    }),
  )
  const linear = scale.map((s, j) => s * lines.reduce((sum, l) => sum + l.weight * l.a[j]! * l.short, 0))
  const size = rows.map(({ coefficients }) => Math.max(...coefficients.map((c, j) => Math.abs(c * scale[j]!))) || 1)
  const found = quadraticMinimum({
    quadratic,
    linear,
    rows: rows.map(({ coefficients, atLeast }, k) => ({
      coefficients: coefficients.map((c, j) => (c * scale[j]!) / size[k]!),
      atLeast: atLeast / size[k]!,
    })),
  })
  const doses = found.x.map((x, j) => Math.max(0, x * scale[j]!))
  // The programme halves the squares, so a price in its terms is half of one in the objective.
  return { found, doses, prices: found.multipliers.map((m, k) => (2 * m) / size[k]!) }
}

/** Optimality gap up to which an answer counts as proved; bounds that all but contradict each other exceed it. */
const PROVED = 1e-6
const proved = ({ found }: Scaled) => found.feasible && found.gap < PROVED

/** Order in which bounds give way where they contradict each other. */
const yielding: readonly Bound['kind'][] = ['pH-low', 'pH-high', 'min', 'ammonium-share', 'max']

function withoutContradiction(
  problem: RecipeProblem,
  rows: readonly LabelledRow[],
): [readonly LabelledRow[], Scaled, readonly Bound[]] {
  let kept = rows
  let answer = solved(problem, kept)
  for (const kind of yielding) {
    if (proved(answer)) break
    kept = kept.filter((row) => row.bound.kind !== kind)
    answer = solved(problem, kept)
  }
  // A bound that gave way for one that gave way later may come back.
  for (const row of rows) {
    if (kept.includes(row)) continue
    const again = solved(problem, [...kept, row])
    if (proved(again)) [kept, answer] = [[...kept, row], again]
  }
  return [kept, answer, rows.filter((row) => !kept.includes(row)).map((row) => row.bound)]
}

/** Water and doses together. */
export const mixOf = (problem: Pick<RecipeProblem, 'water' | 'shelf'>, doses: readonly number[]): Amounts =>
  mixed([
    { amounts: problem.water, times: 1 },
    ...problem.shelf.map((product, j) => ({ amounts: product.amounts_mol_kg, times: (doses[j] ?? 0) / 1000 })),
  ])

/** Sum of weight × (relative miss)². */
export function misfit(targets: readonly Target[], reached: Readonly<Record<Nutrient, number>>): number {
  return targets.reduce(
    (sum, { nutrient, wanted_g_m3, weight }) => sum + weight * (reached[nutrient] / wanted_g_m3 - 1) ** 2,
    0,
  )
}

export const PH_ROUNDS = 12
/** Change of a dose, g/m³, below which the mean charges stand. */
export const STANDS_g_m3 = 1e-5

/**
 * The doses that come nearest to the targets, salts and acid together: bounded least squares with hard bands. The
 * answer carries its proof, the bounds that hold it and their prices.
 *
 * Throws RangeError where a target is not positive or the shelf is empty.
 */
export function recipe(problem: RecipeProblem): Recipe {
  for (const { nutrient, wanted_g_m3 } of problem.targets)
    if (!(wanted_g_m3 > 0)) throw new RangeError(`recipe: target of ${nutrient} is ${wanted_g_m3} g/m³`)
  if (problem.shelf.length === 0) throw new RangeError('recipe: the shelf is empty')
  const firm = rowsOf(problem)
  let [kept, answer, unmet] = withoutContradiction(problem, firm)
  for (let turn = 0; turn < PH_ROUNDS && problem.pH !== null; turn++) {
    const asked = phRows(problem, answer.doses)
    const before = answer.doses
    ;[kept, answer, unmet] = withoutContradiction(problem, [...firm, ...asked])
    unmet = [...unmet, ...asked.filter((row) => !row.enough && kept.includes(row)).map((row) => row.bound)]
    if (answer.doses.every((dose, j) => Math.abs(dose - before[j]!) < STANDS_g_m3)) break
  }
  const amounts = mixOf(problem, answer.doses)
  const reached_g_m3 = nutrientMasses_g_m3(amounts)
  return {
    doses_g_m3: Object.fromEntries(problem.shelf.map(({ id }, j) => [id, answer.doses[j]!])),
    amounts,
    reached_g_m3,
    objective: misfit(problem.targets, reached_g_m3),
    gap: answer.found.gap,
    held: kept
      .map(({ bound }, k) => ({ bound, price: answer.prices[k]! }))
      .filter(({ price }) => price > 0)
      .sort((a, b) => b.price - a.price),
    unmet,
  }
}
