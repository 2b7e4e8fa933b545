import type { Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { GRAVITY_m_s2 } from '../../tables/constants.ts'
import { films } from '../../tables/heat.ts'
import { practiceRatios } from '../../tables/practice.ts'
import { pipePlastics } from '../../tables/pvc-strength.ts'
import { peopleForces } from '../../tables/stability.ts'
import { colours, surfaces } from '../../tables/surfaces.ts'
import type { TemplatesFacts } from '../templates/index.ts'
import { bucklingHeight, sectionStress, topMovement, warmModulus, warmStrength } from './equations-bending.ts'
import type { Push } from './equations-tipping.ts'
import { siteAtWeek } from './site-mass.ts'
import type { StandFacts } from './stand.ts'

export interface SectionFacts {
  /** Mean of the wall round the column on the hottest day, the sun on it and the water off. */
  readonly wall_C: number
  readonly strength_Pa: number
  readonly modulus_Pa: number
  /** Moment at the lowest ring, the worse of gust and a person who leans. */
  readonly moment_N_m: number
  readonly from: 'wind' | 'people'
  readonly stress_Pa: number
  /** Strength over stress. */
  readonly reserve: number
  /** Share of the section modulus that the holes leave. */
  readonly leftShare: number
  readonly sway_m: number
  readonly height_m: number
  readonly buckling_m: number
}

const momentAbout = (pushes: readonly Push[], level_m: number): number =>
  pushes.reduce((sum, p) => sum + p.force_N * Math.max(0, p.height_m - level_m), 0)

function plasticOf(stand: StandFacts) {
  const { plastic, row, standard, foamCore } = stand.pipe
  if (!plastic.startsWith('PVC')) return null
  const pressure = row !== null && /D1785|1452|3505/.test(standard ?? '')
  const p = pipePlastics.rows[pressure ? 'pvc-u' : 'pvc-u-drain']
  const foam = foamCore ? practiceRatios.rows['foam-core-mass'].low : 1
  return { tensile_Pa: p.tensile_Pa * foam, modulus_Pa: p.modulus_Pa * foam }
}

/**
 * Moment that a leaning person puts on the lowest ring: of a free tower no more than tips it, of a strapped one that of
 * a beam on foot and strap.
 */
function leaningMoment(given: { ring_m: number; top_m: number; strap_m: number | null; righting_N_m: number }): number {
  const { ring_m, top_m, strap_m, righting_N_m } = given
  const { low_N: push_N, high_m } = peopleForces.rows['adult-lean']
  const at_m = Math.min(high_m, top_m)
  if (strap_m === null) return Math.min(push_N * Math.max(0, at_m - ring_m), righting_N_m)
  if (at_m >= strap_m) return push_N * (at_m - strap_m)
  return (push_N * at_m * (strap_m - at_m)) / strap_m
}

/** Where holes meet nothing is left of a ring; a thousandth stands in, so that the stress shows it as a number. */
function leftSection({ worst, whole }: NonNullable<TemplatesFacts['section']>): NonNullable<TemplatesFacts['section']> {
  const least = (left: number, of: number) => Math.max(left, of / 1000)
  return {
    whole,
    worst: {
      ...worst,
      area_m2: least(worst.area_m2, whole.area_m2),
      modulus_m3: least(worst.modulus_m3, whole.modulus_m3),
      inertiaLeast_m4: least(worst.inertiaLeast_m4, whole.inertiaLeast_m4),
    },
  }
}

/** Strength of the drilled column where it bends most, and how far its top moves. */
export function sectionFacts(given: {
  readonly plan: Plan
  readonly stand: StandFacts
  readonly templates: TemplatesFacts | null
  readonly pushes: readonly Push[]
  readonly week: number
  readonly wallSun_W_m2: readonly number[]
  /** Height of the strap; null where the tower stands free. */
  readonly strap_m: number | null
  /** Weight moment with a full tank, shared by the columns: a free tower tips before its column feels more. */
  readonly righting_N_m: number
}): Known<SectionFacts> {
  const { plan, stand, templates, pushes, week } = given
  if (templates === null || templates.section === null) return { needs: ['column/stub/pipe'] }
  const plastic = plasticOf(stand)
  if (plastic === null) return { needs: ['column/pipe'] }
  const air_C = plan.place?.airHigh_C
  if (air_C === undefined) return { needs: ['place/airHigh'] }
  const { worst, whole } = leftSection(templates.section)
  const sun_W_m2 = Math.max(0, ...given.wallSun_W_m2)
  const absorptance = surfaces.rows[colours[plan.column?.colour ?? 'dark']].absorptance
  const wall_C = air_C + (absorptance * sun_W_m2) / films.rows['outdoors-calm'].film_W_m2_K
  const ring_m = Math.min(...stand.siteHeights_m)
  // Pushes on the tank do not bend the column; those of several columns share.
  const own = pushes.map((p) => ({ ...p, force_N: p.force_N / stand.columns })).filter((p) => p.height_m > stand.foot_m)
  const wind_N_m = momentAbout(own, ring_m)
  const person_N_m = leaningMoment({
    ring_m,
    top_m: stand.top_m,
    strap_m: given.strap_m,
    righting_N_m: given.righting_N_m,
  })
  const moment_N_m = Math.max(wind_N_m, person_N_m)
  const site_kg = siteAtWeek({ week }).mass_kg
  const hung = stand.fixed.filter((b) => !['tank', 'ballast'].includes(b.name))
  const above_kg = hung.reduce((sum, b) => sum + b.mass_kg, 0) / stand.columns + site_kg * stand.siteHeights_m.length
  const weight_N = above_kg * GRAVITY_m_s2
  const stress_Pa = sectionStress({
    moment_N_m,
    section_m3: worst.modulus_m3,
    weight_N,
    area_m2: worst.area_m2,
    peak: 1,
  })
  const strength_Pa = warmStrength({ strength_Pa: plastic.tensile_Pa, temperature_C: wall_C })
  const modulus_Pa = warmModulus({ modulus_Pa: plastic.modulus_Pa, temperature_C: wall_C })
  const height_m = stand.top_m - stand.foot_m
  const even_N = own.reduce((sum, p) => sum + p.force_N, 0)
  const stiff = { modulus_Pa, second_m4: worst.inertiaLeast_m4 }
  return {
    known: {
      wall_C,
      strength_Pa,
      modulus_Pa,
      moment_N_m,
      from: wind_N_m >= person_N_m ? 'wind' : 'people',
      stress_Pa,
      reserve: strength_Pa / stress_Pa,
      leftShare: worst.modulus_m3 / whole.modulus_m3,
      sway_m: topMovement({ even_N, push_N: 0, pushHeight_m: 0, height_m, ...stiff }),
      height_m,
      buckling_m: bucklingHeight({ ...stiff, weight_N, length_m: height_m }),
    },
  }
}
