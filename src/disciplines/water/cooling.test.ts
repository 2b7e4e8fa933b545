import { describe, expect, it } from 'vitest'
import { balcony, hours } from '../../../test/hot-balcony.ts'
import { bodies, films } from '../../tables/heat.ts'
import { shades, surfaces } from '../../tables/surfaces.ts'
import { iced, painted, rankedCooling, refilled, shaded, wrapped } from './cooling.ts'
import { solutionCourse } from './equations-day.ts'
import { radiationFilm } from './equations-heat.ts'
import { heatCapacity } from './equations-tank.ts'

describe('what helps against heat', () => {
  const foam = 0.02 / 0.036
  const calm = films.rows['outdoors-calm'].film_W_m2_K
  const foilFilm = calm - radiationFilm({ emittance: 0.9 - surfaces.rows['bright-foil'].emittance, temperature_C: 30 })

  it('shade, white paint, foam and ice all cool a black box in the sun; more water only delays', () => {
    const before = solutionCourse(balcony)
    const choices = rankedCooling({
      base: balcony,
      choices: [
        {
          id: 'shade',
          day: shaded({ day: balcony, transmittance: shades.rows['board-or-skirt'].transmittance }),
          price_money: 10,
        },
        {
          id: 'white',
          day: painted({ day: balcony, absorptance: surfaces.rows['white-new'].absorptance }),
          price_money: 12,
        },
        {
          id: 'foam',
          day: wrapped({ day: balcony, resistance_m2_K_W: foam, absorptance: 0.95, outside_W_m2_K: calm }),
          price_money: 20,
        },
        { id: 'ice', day: iced({ day: balcony, ice: [{ at_s: hours(12), mass_kg: 2, ice_C: -18 }] }), price_money: 0 },
      ],
    })
    expect(choices[0]!.id).toBe('ice')
    for (const { cooler_K } of choices) expect(cooler_K).toBeGreaterThan(0.5)
    for (let i = 2; i < choices.length; i++)
      expect(choices[i]!.perMoney!).toBeLessThanOrEqual(choices[i - 1]!.perMoney!)
    const large = solutionCourse(refilled({ day: balcony, volume_m3: 0.2 }))
    expect(large.highest_C).toBeLessThan(before.highest_C)
    expect(large.mean_C).toBeCloseTo(before.mean_C, 0)
  })

  it('in the sun bright foil is warmer than white paint', () => {
    const white = painted({ day: balcony, absorptance: 0.2 })
    const foil = wrapped({ day: balcony, resistance_m2_K_W: 0, absorptance: 0.192, outside_W_m2_K: foilFilm })
    const onlyTank = { ...foil, column: white.column }
    expect(solutionCourse(onlyTank).heat.sun_J).toBeGreaterThan(0.9 * solutionCourse(white).heat.sun_J)
    expect(solutionCourse(onlyTank).highest_C).toBeGreaterThan(solutionCourse(white).highest_C)
  })

  it('water is what the table says', () => {
    expect(heatCapacity({ volume_m3: 1 })).toBe(bodies.rows.water.density_kg_m3 * bodies.rows.water.specificHeat_J_kg_K)
  })
})
