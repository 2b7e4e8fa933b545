import { value } from '../../kernel/published.ts'
import { hydraulicPower, plugPower, wireToWater } from './equations.ts'

const gallon_m3 = 3.785411784e-3
const foot_m = 0.3048
const horsepower_W = 745.6999

export default [
  value(
    hydraulicPower,
    { density_kg_m3: 998.2, flow_m3_s: (100 * gallon_m3) / 60, head_m: 39.6 * foot_m },
    horsepower_W,
    {
      within: 2e-3,
      source: 'Pump.3960',
      why: 'water horsepower = US gal/min x ft/3960; the number is rounded from 3956 to 3960',
    },
  ),
  value(wireToWater, { pumpEfficiency: 0.9, motorEfficiency: 0.78 }, 0.7, {
    within: 0.005,
    absolute: true,
    source: 'Evans.Pumps',
    why: 'printed to two digits',
  }),
  value(plugPower, { hydraulic_W: 37.6, efficiency: 0.151 }, 250, {
    within: 0.005,
    source: 'SmallPump.test',
    why: 'both are printed to three digits',
  }),
]
