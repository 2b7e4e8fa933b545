import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { GRAVITY_m_s2 } from '../../tables/constants.ts'
import { boardSide, floorLoad, footLoad } from './equations-floor.ts'
import { centreOfGravity } from './equations-mass.ts'
import { type SectionFacts, sectionFacts } from './section-facts.ts'
import { type Level, type StandFacts, type StandNeeds, standFacts } from './stand.ts'
import { baseWidth, bodiesAt, oldestWeek, type TippingCell, type TippingFacts, tippingFacts } from './tipping-facts.ts'

/** One line of the weighing: a part, a level of water, the plants. */
export interface Mass {
  readonly name: string
  readonly mass_kg: number
  readonly height_m: number
}

export interface MassFacts {
  readonly parts: readonly Mass[]
  readonly full_kg: number
  readonly low_kg: number
  readonly centreFull_m: number
  readonly centreLow_m: number
}

export interface Load {
  readonly area_m2: number
  readonly load_kg_m2: number
  readonly pressure_Pa: number
}

export interface FloorFacts {
  readonly mass_kg: number
  /** Under the base alone, and under the board where there is one. */
  readonly base: Load
  readonly board: Load | null
  /** What the floor's limit is held against. */
  readonly judged: Load
  /** Under the worst foot in the gust; null without feet. */
  readonly foot_N: number | null
  /** Side of a square board that would spread the tower to the limit; null without a limit. */
  readonly boardNeeded_m: number | null
}

/** What a flange on a lid asks of the lid: it must be carried by the rim or by feet, not by a thin sheet. */
export interface LidFacts {
  readonly load_N: number
  readonly moment_N_m: number
}

export interface StructureFacts {
  readonly stand: Known<StandFacts>
  readonly mass: Known<MassFacts>
  readonly tipping: Known<TippingFacts>
  readonly section: Known<SectionFacts>
  readonly floor: Known<FloorFacts>
  readonly lid: Known<LidFacts | null>
}

/** Air and sun that push and warm. */
export interface SkyNeeds {
  readonly air_kg_m3: number
  readonly outdoors: boolean
  readonly wall_W_m2: readonly number[]
}

function massFacts(stand: StandFacts, week: number): MassFacts {
  const full = bodiesAt(stand, stand.fill, week)
  const low = bodiesAt(stand, stand.low, week)
  const plants = full.filter((b) => b.name === 'site')
  const all = plants.length === 0 ? null : centreOfGravity({ bodies: plants })
  const [a, b] = [centreOfGravity({ bodies: full }), centreOfGravity({ bodies: low })]
  return {
    parts: [
      ...full.filter((x) => x.name !== 'site' && x.mass_kg > 0),
      ...(all === null ? [] : [{ name: 'plants', ...all }]),
    ],
    full_kg: a.mass_kg,
    low_kg: b.mass_kg,
    centreFull_m: a.height_m,
    centreLow_m: b.height_m,
  }
}

function floorFacts(plan: Plan, stand: StandFacts, mass: MassFacts, tipping: Known<TippingFacts>): Known<FloorFacts> {
  const { boardLength_m, boardWidth_m, floorLimit_kg_m2 } = plan.place ?? {}
  const r = plan.reservoir
  const foot_m = plan.column?.base?.footWidth_m
  const round = r?.container?.shape === 'round'
  const width_m = stand.kind === 'own foot' ? foot_m : (r?.outsideWidth_m ?? (round ? r?.outsideLength_m : undefined))
  const length_m = stand.kind === 'own foot' ? foot_m : (r?.outsideLength_m ?? (round ? r?.outsideWidth_m : undefined))
  if (width_m === undefined)
    return { needs: [stand.kind === 'own foot' ? 'column/base/footWidth' : 'reservoir/outsideWidth'] }
  if (length_m === undefined) return { needs: ['reservoir/outsideLength'] }
  const area_m2 = stand.kind !== 'own foot' && round ? (Math.PI / 4) * width_m * length_m : width_m * length_m
  const mass_kg = mass.full_kg
  const load = (a: number): Load => ({ area_m2: a, ...floorLoad({ mass_kg, area_m2: a }) })
  const base = load(area_m2)
  // A board smaller than the base spreads nothing.
  const board =
    boardLength_m === undefined || boardWidth_m === undefined
      ? null
      : load(Math.max(area_m2, boardLength_m * boardWidth_m))
  const feet = plan.column?.base?.feet
  const overturning_N_m = isKnown(tipping) ? tipping.known.atFill.overturning_N_m : 0
  return {
    known: {
      mass_kg,
      base,
      board,
      judged: board ?? base,
      foot_N: feet === undefined ? null : footLoad({ mass_kg, feet, overturning_N_m, spread_m: width_m }),
      boardNeeded_m: floorLimit_kg_m2 === undefined ? null : boardSide({ mass_kg, limit_kg_m2: floorLimit_kg_m2 }),
    },
  }
}

function lidFacts(stand: StandFacts, mass: MassFacts, tipping: Known<TippingFacts>): LidFacts | null {
  if (stand.kind !== 'flange on the lid') return null
  const carried = mass.parts.filter((p) => !['tank', 'ballast', 'solution'].includes(p.name))
  const load_N = carried.reduce((sum, p) => sum + p.mass_kg, 0) * GRAVITY_m_s2
  const about = isKnown(tipping) ? tipping.known.pushes : []
  return {
    load_N,
    moment_N_m: about.reduce((sum, p) => sum + p.force_N * Math.max(0, p.height_m - stand.foot_m), 0),
  }
}

/** How the tower stands: what it weighs, when it tips, how hard its column bends, what the floor carries. */
export function structureFacts(plan: Plan, given: StandNeeds & { readonly sky: SkyNeeds }): StructureFacts {
  const stand = standFacts(plan, given)
  if (!isKnown(stand)) {
    // The base is asked for first: without its width no other measure helps.
    const base: Known<number> = plan.column?.base?.kind === undefined ? stand : baseWidth(plan)
    const based = { needs: [...new Set([...(isKnown(base) ? [] : base.needs), ...stand.needs])] }
    return { stand, mass: stand, tipping: based, section: based, floor: based, lid: stand }
  }
  const week = oldestWeek(plan)
  const mass = massFacts(stand.known, week)
  const tipping = tippingFacts(plan, stand.known, given.sky)
  // Without the pushes there is no bending moment to hold the column against.
  const section = isKnown(tipping)
    ? sectionFacts({
        plan,
        stand: stand.known,
        templates: given.templates,
        pushes: tipping.known.pushes,
        week,
        wallSun_W_m2: given.sky.wall_W_m2,
        strap_m: plan.column?.base?.anchored === true ? tipping.known.strap.height_m : null,
        righting_N_m: tipping.known.atFill.righting_N_m / stand.known.columns,
      })
    : tipping
  return {
    stand,
    mass: { known: mass },
    tipping,
    section,
    floor: floorFacts(plan, stand.known, mass, tipping),
    lid: { known: lidFacts(stand.known, mass, tipping) },
  }
}

export { type Level, oldestWeek, type SectionFacts, type StandFacts, type TippingCell, type TippingFacts }
