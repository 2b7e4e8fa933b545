import { readFileSync } from 'node:fs'
import { solveQP } from 'quadprog'
import { feedAmounts, mixed } from '../src/disciplines/nutrients/composition.ts'
import { conductivity } from '../src/disciplines/nutrients/equations-conductivity.ts'
import { nutrientMasses_g_m3 } from '../src/disciplines/nutrients/equations-formula.ts'
import { analysedWater, atOwnPh } from '../src/disciplines/nutrients/equations-ph.ts'
import { saltAmounts } from '../src/disciplines/nutrients/equations-salts.ts'
import { saturationIndex } from '../src/disciplines/nutrients/equations-saturation.ts'
import { nutrientsFacts } from '../src/disciplines/nutrients/index.ts'
import { predicted } from '../src/disciplines/nutrients/predicted.ts'
import { type RecipeProblem, recipe, share } from '../src/disciplines/nutrients/recipe.ts'
import { quadraticMinimum } from '../src/kernel/quadratic-program.ts'
import { parsePlan } from '../src/plan/document.ts'
import type { Salt } from '../src/tables/salts.ts'

interface Row {
  readonly label: string
  readonly agreed: boolean
  readonly detail: string
  readonly ratio: number
  readonly limit: number
}

const shelf = (
  [
    ...(['calcium-nitrate-double-salt', 'potassium-nitrate', 'monopotassium-phosphate', 'magnesium-sulfate'] as const),
    ...([
      'ammonium-nitrate',
      'potassium-sulfate',
      'iron-DTPA-monosodium',
      'manganese-sulfate',
      'zinc-sulfate',
    ] as const),
    ...(['copper-sulfate', 'boric-acid', 'sodium-molybdate'] as const),
  ] satisfies readonly Salt[]
).map((salt) => ({ id: salt, amounts_mol_kg: saltAmounts({ salt, purity: 1 }) }))

const wanted = [
  ...([
    ['N', 150],
    ['NH4-N', 13],
    ['P', 31],
    ['K', 210],
    ['Ca', 90],
    ['Mg', 24],
    ['S', 60],
    ['Na', 5],
  ] as const),
  ...([
    ['Fe', 1],
    ['Mn', 0.25],
    ['Zn', 0.13],
    ['B', 0.16],
    ['Cu', 0.023],
    ['Mo', 0.024],
  ] as const),
] as const
const problem: RecipeProblem = {
  water: { Ca: 1.2, Mg: 0.3, Na: 0.4, Cl: 0.5, SO4: 0.3, HCO3: 2.5 },
  shelf,
  targets: wanted.map(([nutrient, wanted_g_m3]) => ({ nutrient, wanted_g_m3, weight: nutrient === 'S' ? 0.05 : 1 })),
  limits: [],
  ammoniumShare: null,
  pH: null,
}

/** The same programme, each dose in units of its own column, as the solver alone would be given it. */
function programme() {
  const water = nutrientMasses_g_m3(problem.water)
  const lines = problem.targets.map(({ nutrient, wanted_g_m3: t, weight }) => ({
    ...{ weight, short: 1 - water[nutrient] / t },
    a: shelf.map((product) => share(product, nutrient) / t),
  }))
  const scale = shelf.map((_, j) => 1 / Math.sqrt(lines.reduce((sum, l) => sum + l.weight * l.a[j]! ** 2, 0)))
  const quadratic = scale.map((si, i) =>
    scale.map(
      (sj, j) => si * sj * lines.reduce((sum, l) => sum + l.weight * l.a[i]! * l.a[j]!, 0) + (i === j ? 1e-10 : 0),
    ),
  )
  const linear = scale.map((s, j) => s * lines.reduce((sum, l) => sum + l.weight * l.a[j]! * l.short, 0))
  const rows = scale.map((_, i) => ({ coefficients: scale.map((__, j) => Number(i === j)), atLeast: 0 }))
  const misfitOf = (x: readonly number[]) =>
    lines.reduce((sum, l) => sum + l.weight * (l.a.reduce((t, a, j) => t + a * scale[j]! * x[j]!, 0) - l.short) ** 2, 0)
  return { quadratic, linear, rows, misfitOf }
}

const times = (count: number, run: () => void) => {
  for (let i = 0; i < count / 4; i++) run()
  const all = Array.from({ length: count }, () => {
    const from = performance.now()
    run()
    return performance.now() - from
  }).sort((a, b) => a - b)
  return { median: all[count >> 1]!, p95: all[Math.floor(count * 0.95)]! }
}

/** CPU time that runs take, ms: what other programmes on the machine take is left out. */
const cpu = (count: number, run: () => void) => {
  for (let i = 0; i < count / 4; i++) run()
  const all = Array.from({ length: count }, () => {
    const from = process.cpuUsage()
    run()
    const { user, system } = process.cpuUsage(from)
    return (user + system) / 1000
  }).sort((a, b) => a - b)
  return { median: all[count >> 1]!, p95: all[Math.floor(count * 0.95)]! }
}

/** CPU time that a recipe may take with the chemistry of what it makes, ms. */
const TOTAL_ms = 20

/** The recipe of 14 elements and 12 salts, and what the pens will show of it. */
function totalRow(): Row {
  let shown = { pH: 0, strength: 0 }
  const { median, p95 } = cpu(200, () => {
    const { pHInAir, conductivity_S_m } = predicted({
      amounts: recipe(problem).amounts,
      temperature_C: 18,
      air_Pa: 42.6,
    })
    shown = { pH: (pHInAir.low + pHInAir.high) / 2, strength: (conductivity_S_m.low + conductivity_S_m.high) / 2 }
  })
  return {
    label: '14 elements, 12 salts: recipe with its chemistry, median of CPU time over 20 ms',
    agreed: shown.pH > 4 && shown.pH < 9 && shown.strength > 0.1 && shown.strength < 0.3,
    detail: `${median.toFixed(2)} ms, p95 ${p95.toFixed(2)} ms; pH ${shown.pH.toFixed(2)}, ${(shown.strength * 10).toFixed(2)} mS/cm`,
    ratio: median / TOTAL_ms,
    limit: 1,
  }
}

function recipeRow(): readonly Row[] {
  const { quadratic, linear, rows, misfitOf } = programme()
  const n = linear.length
  const alone = () =>
    solveQP(
      [[], ...quadratic.map((line) => [0, ...line])],
      [0, ...linear],
      [[], ...linear.map((_, i) => [0, ...rows.map((row) => row.coefficients[i]!)])],
      [0, ...Array<number>(n).fill(0)],
    )
  const ours = recipe(problem)
  const theirs = misfitOf(alone().solution.slice(1))
  const apart = Math.abs(ours.objective - theirs) / theirs
  const agreed = apart <= 1e-9 && ours.gap <= 1e-8
  const detail = `objective ${ours.objective.toPrecision(12)} and ${theirs.toPrecision(12)}, gap ${ours.gap.toExponential(1)}`
  times(400, alone)
  const base = times(400, alone).median
  const proved = times(400, () => quadraticMinimum({ quadratic, linear, rows })).median
  const whole = times(400, () => recipe(problem)).median
  return [
    {
      label: '14 elements, 12 salts: proved solve over quadprog alone',
      agreed,
      detail,
      ratio: proved / base,
      limit: 2,
    },
    {
      label: '14 elements, 12 salts: whole recipe over quadprog alone',
      agreed,
      detail,
      ratio: whole / base,
      limit: 12,
    },
  ]
}

/** p95 of the CPU time that the chemistry of one solution may take, ms. */
const CHEMISTRY_ms = 2

function chemistryRow(): Row {
  const water = analysedWater({
    amounts: { Ca: 2, Mg: 0.6, Na: 0.5, Cl: 0.5, SO4: 0.5 },
    alkalinity_mol_m3: 4.2,
    pH: 7.5,
    temperature_C: 15,
  })
  const amounts = mixed([
    { amounts: water, times: 1 },
    { amounts: feedAmounts('mattson-peters-lettuce'), times: 0.8 },
  ])
  let seen = 0
  const chemistry = () => {
    const solution = atOwnPh({ amounts, temperature_C: 18, carbonDioxide_Pa: 42.6 })
    seen = conductivity(solution)
    for (const mineral of ['gypsum', 'calcite', 'brushite', 'struvite'] as const)
      seen += 0 * saturationIndex({ solution, mineral })
  }
  const { p95 } = cpu(400, chemistry)
  return {
    label: 'whole chemistry of one solution, p95 of CPU time over 2 ms',
    agreed: seen > 0.05 && seen < 0.3,
    detail: `${p95.toFixed(2)} ms, ${(seen * 10).toFixed(2)} mS/cm`,
    ratio: p95 / CHEMISTRY_ms,
    limit: 1,
  }
}

/** CPU time that the whole feed of a plan may take, ms: recipe, chemistry, acids, bottles. */
const FEED_ms = 15

function feedRow(): Row {
  const { plan } = parsePlan(JSON.parse(readFileSync('examples/balcony.plan.json', 'utf8')))
  const tank = { fill_m3: 0.036, use_m3_d: { low: 0.002, high: 0.004 } }
  const known = 'known' in nutrientsFacts(plan, tank).batch
  const { median, p95 } = cpu(200, () => nutrientsFacts(plan, tank))
  return {
    label: 'whole feed of the balcony, median of CPU time over 15 ms',
    agreed: known,
    detail: `${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms`,
    ratio: median / FEED_ms,
    limit: 1,
  }
}

export const bench = {
  name: 'nutrients',
  run: async (): Promise<Row[]> => [...recipeRow(), totalRow(), chemistryRow(), feedRow()],
}
