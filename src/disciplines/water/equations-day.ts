import { bodies } from '../../tables/heat.ts'
import { type HeatPaths, type SolutionCourse, type SolutionDay, throughDay } from './day.ts'
import { evaporation, evaporationHeat, streamConductance } from './equations-heat.ts'
import { heatCapacity, icedTemperature } from './equations-tank.ts'

const DAY_s = 86_400
/** Ten minutes: short against the hours in which a tank warms. */
const STEPS = 144
const STEP_s = DAY_s / STEPS
/** The daily map contracts, so that few rounds suffice; a bound in case of an input that no tank has. */
const ROUNDS = 60
const CLOSED_K = 1e-7
/** Evaporation is held at its ends outside of these: no plan with plants comes there, and one with a slip still gets a number. */
const LIQUID_C = [0, 75] as const
const PATHS = ['walls', 'sun', 'column', 'columnSun', 'sky', 'pump', 'ground'] as const

type Path = (typeof PATHS)[number]

/** Heat by one path in each step, q - G T: a conductance, and what it brings to water of 0 °C. */
interface Flow {
  readonly conductance_W_K: Float64Array
  readonly heat_W: Float64Array
}

/** What the steps have whatever the temperature of the solution: heat by path, and the sum of all. */
interface Weather {
  readonly flows: Readonly<Record<Path, Flow>>
  readonly all: Flow
  readonly vapour_Pa: Float64Array
}

/** Values of series at the middle of each step; walls share air and sun, so each series is read once. */
function sampler(): (series: readonly number[]) => Float64Array {
  const known = new Map<readonly number[], Float64Array>()
  return (series) => {
    const found =
      known.get(series) ?? Float64Array.from({ length: STEPS }, (_, k) => throughDay(series, (k + 0.5) * STEP_s))
    known.set(series, found)
    return found
  }
}

const none = (): Flow => ({ conductance_W_K: new Float64Array(STEPS), heat_W: new Float64Array(STEPS) })

/** The weather of each step, taken at its middle. */
function weatherOf(day: SolutionDay): Weather {
  const at = sampler()
  const flows: Record<Path, Flow> = {
    walls: none(),
    sun: none(),
    column: none(),
    columnSun: none(),
    sky: none(),
    pump: none(),
    ground: none(),
  }
  const air = at(day.air_C)
  const add = (path: Path, k: number, G: number, heat: number) => {
    flows[path].conductance_W_K[k]! += G
    flows[path].heat_W[k]! += heat
  }
  for (const wall of day.walls) {
    const [G, sun] = [wall.conductance_W_m2_K * wall.area_m2, at(wall.sun_W_m2)]
    const through_m2 = (wall.conductance_W_m2_K / wall.outside_W_m2_K) * wall.area_m2
    const away_W = through_m2 * (wall.sky_W_m2 ?? 0)
    for (let k = 0; k < STEPS; k++) {
      add('walls', k, G, G * air[k]!)
      add('sun', k, 0, through_m2 * wall.absorptance * sun[k]!)
      add('sky', k, 0, -away_W)
    }
  }
  if (day.column !== null) {
    const { wall, flow_kg_s, running } = day.column
    const [runs, sun] = [at(running), at(wall.sun_W_m2)]
    const whole = streamConductance({ flow_kg_s, wall_W_K: wall.conductance_W_m2_K * wall.area_m2 })
    for (let k = 0; k < STEPS; k++) {
      const G = whole * runs[k]!
      add('column', k, G, G * air[k]!)
      // The wall gives the stream the air's warmth, and the sun's as if the air were warmer by α I/h.
      add('columnSun', k, 0, (G * wall.absorptance * sun[k]!) / wall.outside_W_m2_K)
      add('sky', k, 0, (-G * (wall.sky_W_m2 ?? 0)) / wall.outside_W_m2_K)
    }
  }
  const pump = at(day.pump_W)
  for (let k = 0; k < STEPS; k++) {
    add('pump', k, 0, pump[k]!)
    if (day.ground !== null)
      add('ground', k, day.ground.conductance_W_K, day.ground.conductance_W_K * day.ground.ground_C)
  }
  const all = none()
  for (const path of PATHS)
    for (let k = 0; k < STEPS; k++) {
      all.conductance_W_K[k]! += flows[path].conductance_W_K[k]!
      all.heat_W[k]! += flows[path].heat_W[k]!
    }
  return { flows, all, vapour_Pa: at(day.evaporation?.vapour_Pa ?? []) }
}

const liquid = (T: number): number => Math.min(LIQUID_C[1], Math.max(LIQUID_C[0], T))

/** Heat lost by evaporation, made linear about a temperature: loss there and its slope. */
function drying(given: {
  readonly from: NonNullable<SolutionDay['evaporation']>
  readonly vapour_Pa: number
  readonly at_C: number
}) {
  const { from, vapour_Pa, at_C } = given
  const { area_m2, convection_W_m2_K, pressure_Pa } = from
  const loss = (T: number) => {
    const water_C = liquid(T)
    return (
      area_m2 *
      evaporation({ convection_W_m2_K, pressure_Pa, water_C, vapour_Pa }) *
      evaporationHeat({ temperature_C: water_C })
    )
  }
  const width_K = 0.01
  const here = loss(at_C)
  return { loss_W: here, slope_W_K: (loss(at_C + width_K) - here) / width_K }
}

/** One step under constant flows: exact exponential, and the mean over the step for the ledger. */
function stepped(T0: number, C: number, conductance_W_K: number, net_W: number) {
  const x = (conductance_W_K * STEP_s) / C
  // (1 - e^-x)/x and its mean keep their digits where nothing conducts.
  const e1 = Math.abs(x) < 1e-6 ? 1 - x / 2 : -Math.expm1(-x) / x
  const e2 = Math.abs(x) < 1e-3 ? 0.5 - x / 6 + (x * x) / 24 : (1 - e1) / x
  const rise = (net_W * STEP_s) / C
  return { end: T0 + rise * e1, mean: T0 + rise * e2, keep: 1 - x * e1 }
}

/** A day from a starting temperature: course, means, evaporation, ice, and how much of a start is left at the end. */
function walk(day: SolutionDay, weather: Weather, start_C: number) {
  const C = heatCapacity({ volume_m3: day.volume_m3 })
  const course = [start_C]
  const means: number[] = []
  let [T, keep, drying_J, evaporated_kg, ice_J] = [start_C, 1, 0, 0, 0]
  for (let k = 0; k < STEPS; k++) {
    const [conductance_W_K, heat_W] = [weather.all.conductance_W_K[k]!, weather.all.heat_W[k]!]
    const vapour_Pa = weather.vapour_Pa[k]!
    for (const { at_s, mass_kg, ice_C } of day.ice) {
      if (Math.floor(at_s / STEP_s) !== k) continue
      const cold = icedTemperature({ volume_m3: day.volume_m3, start_C: T, ice_kg: mass_kg, ice_C })
      ice_J += C * (cold - T)
      keep *= C / (C + mass_kg * bodies.rows.water.specificHeat_J_kg_K)
      T = cold
    }
    const from = day.evaporation
    const dry = from === null ? { loss_W: 0, slope_W_K: 0 } : drying({ from, vapour_Pa, at_C: T })
    const step = stepped(T, C, conductance_W_K + dry.slope_W_K, heat_W - conductance_W_K * T - dry.loss_W)
    const lost_J = (dry.loss_W + dry.slope_W_K * (step.mean - T)) * STEP_s
    drying_J += lost_J
    evaporated_kg += lost_J / evaporationHeat({ temperature_C: liquid(step.mean) })
    keep *= step.keep
    means.push(step.mean)
    T = step.end
    course.push(T)
  }
  return { course, means, keep, drying_J, evaporated_kg, ice_J }
}

/** Heat by each path over the day. */
function ledger(weather: Weather, walked: ReturnType<typeof walk>): HeatPaths {
  const heat = Object.fromEntries(PATHS.map((path) => [path, 0])) as Record<Path, number>
  for (const path of PATHS) {
    const { conductance_W_K, heat_W } = weather.flows[path]
    for (let k = 0; k < STEPS; k++) heat[path] += (heat_W[k]! - conductance_W_K[k]! * walked.means[k]!) * STEP_s
  }
  return {
    walls_J: heat.walls,
    sun_J: heat.sun,
    column_J: heat.column,
    columnSun_J: heat.columnSun,
    sky_J: heat.sky,
    pump_J: heat.pump,
    ground_J: heat.ground,
    evaporation_J: -walked.drying_J,
    ice_J: walked.ice_J,
  }
}

/** Checks what no tank can be before the loop multiplies it into nonsense. */
function checked(day: SolutionDay): void {
  const walls = day.column === null ? day.walls : [...day.walls, day.column.wall]
  for (const wall of walls)
    if (!(wall.area_m2 >= 0 && wall.conductance_W_m2_K >= 0 && wall.outside_W_m2_K > 0))
      throw new RangeError(
        `solutionCourse: wall ${wall.name} has A = ${wall.area_m2}, U = ${wall.conductance_W_m2_K}, h_o = ${wall.outside_W_m2_K}`,
      )
  const conducts =
    walls.some((wall) => wall.area_m2 * wall.conductance_W_m2_K > 0) || (day.ground?.conductance_W_K ?? 0) > 0
  if (!conducts) throw new RangeError('solutionCourse: UA = 0, a tank that passes no heat has no steady day')
}

/**
 * Temperature of the solution through a day that repeats itself, with the heat by each path.
 *
 *   C dT/dt = Σ G_i (T_i - T) + Σ q_j - L w(T)
 *   T(24 h) = T(0)
 *
 * Symbols  C heat capacity [J/K], T temperature [°C], G_i conductances of walls, column and ground [W/K], T_i
 *          temperatures of air and ground [°C], q_j heat of sun and pump less what is shone to the sky [W], L heat of evaporation [J/kg], w evaporation [kg/s]
 * Valid    stirred tank; weather the same day after day; ice melts at once
 * Source   derived.heat-balance, exact over each step; the steady day by Newton's rule on the map of one day
 * Throws   RangeError where no heat can pass, or a wall has a negative size
 */
export function solutionCourse(day: SolutionDay): SolutionCourse {
  checked(day)
  const weather = weatherOf(day)
  let start = day.air_C.length > 0 ? day.air_C.reduce((a, b) => a + b, 0) / day.air_C.length : 0
  let walked = walk(day, weather, start)
  for (let round = 0; round < ROUNDS; round++) {
    const miss = walked.course[STEPS]! - start
    if (Math.abs(miss) < CLOSED_K) break
    start += miss / (1 - walked.keep)
    walked = walk(day, weather, start)
  }
  const { course, means, evaporated_kg } = walked
  const [highest_C, lowest_C] = [Math.max(...course), Math.min(...course)]
  return {
    temperature_C: course,
    step_s: STEP_s,
    highest_C,
    highestAt_s: course.indexOf(highest_C) * STEP_s,
    lowest_C,
    lowestAt_s: course.indexOf(lowest_C) * STEP_s,
    mean_C: means.reduce((a, b) => a + b, 0) / STEPS,
    heat: ledger(weather, walked),
    evaporated_kg,
  }
}
