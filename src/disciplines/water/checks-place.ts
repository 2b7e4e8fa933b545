import type { Finding, FindingSlot } from '../../findings/finding.ts'
import { judge, unknown } from '../../findings/judge.ts'
import { atMost, together } from '../../findings/levers.ts'
import { band, quantity } from '../../kernel/units.ts'
import { isKnown, type Known } from '../../plan/known.ts'
import type { Plan } from '../../plan/plan.ts'
import { roomNoise, safetyLengths } from '../../tables/exposure.ts'
import { rootZone } from '../../tables/heat-day.ts'
import { rowSource } from '../../tables/table.ts'
import type { TrappedFacts } from './index.ts'
import { placeKind } from './sky-facts.ts'
import { pumpDuty } from './tank-day.ts'

const { frost } = rootZone.rows

function standing(trapped: Known<TrappedFacts>): FindingSlot {
  if (!isKnown(trapped)) return { phrase: 'trapped-unknown' }
  const { site_m3, sites_m3, riser_m3 } = trapped.known
  const held = riser_m3 > 0 ? { phrase: 'trapped-riser', with: { riser: quantity(riser_m3, 'm3') } } : ''
  return { phrase: 'trapped', with: { site: quantity(site_m3, 'm3'), all: quantity(sites_m3, 'm3'), held } }
}

/** Air that may freeze what stands in hose and pockets. */
function freezing(plan: Plan, trapped: Known<TrappedFacts>): readonly Finding[] {
  const airLow_C = plan.place?.airLow_C
  if (airLow_C === undefined || placeKind(plan) === 'indoors') return []
  return [
    judge('water/frost', quantity(airLow_C, 'C'), {
      at: 'place/airLow',
      source: 'common-practice',
      must: { min: frost.low_C },
      want: { min: frost.high_C },
      slots: { trapped: standing(trapped) },
    }),
  ]
}

const MEAN_OF_DAY = 1 / 86_400

/** Power of pumps and lamps that ends as warmth in the room, mean of a day. */
function warmth(plan: Plan, tanks: number): number {
  const { count = 0, power_W = 0, hours_s = 0 } = plan.lamps ?? {}
  return (plan.pump?.power_W ?? 0) * pumpDuty(plan) * tanks + count * power_W * hours_s * MEAN_OF_DAY
}

/** Water and warmth that the tower gives to a room in a day; for the reader to weigh, since rooms differ. */
function roomAir(plan: Plan, use: Known<{ readonly low: number; readonly high: number }>): readonly Finding[] {
  if (placeKind(plan) !== 'indoors' || !isKnown(use)) return []
  const columns = plan.towers?.count ?? 1
  const tanks = Math.ceil(columns / (plan.towers?.perPump ?? columns))
  return [
    judge('water/room-air', band(use.known.low * tanks, use.known.high * tanks, 'm3_d'), {
      at: 'crops',
      source: 'common-practice',
      slots: { warmth: quantity(warmth(plan, tanks), 'W') },
    }),
  ]
}

/** What the pump sounds like in a room where people live or sleep. */
function noise(plan: Plan): readonly Finding[] {
  if (placeKind(plan) !== 'indoors') return []
  const terms = { at: 'pump/noise', source: roomNoise.source }
  const noise_dB = plan.pump?.noise_dB
  if (noise_dB === undefined) return [unknown('water/room-noise', { ...terms, needs: ['pump/noise'] })]
  const { sleeping, living } = roomNoise.rows
  const room = plan.place?.setting === 'care home' ? sleeping : living
  return [
    judge('water/room-noise', quantity(noise_dB, 'dB'), {
      ...terms,
      want: { max: room.level_dB },
      slots: { bedroom: quantity(sleeping.level_dB, 'dB') },
    }),
  ]
}

/** What is open into the tank, meshed or not: mosquitoes, gnats, leaves and light come in by the widest gap. */
function openings(plan: Plan): Finding {
  const { gap_m, mesh_m } = plan.reservoir ?? {}
  const { limit_m } = safetyLengths.rows['insect-mesh']
  const terms = { at: 'reservoir/gap', source: rowSource(safetyLengths, 'insect-mesh') } as const
  if (gap_m === undefined) return unknown('water/mesh', { ...terms, needs: ['reservoir/gap'] })
  return judge('water/mesh', quantity(Math.min(gap_m, mesh_m ?? gap_m), 'm'), {
    ...terms,
    want: { max: limit_m },
    slots: { gap: quantity(gap_m, 'm') },
    levers: together([[{ set: 'reservoir/mesh', to: atMost(limit_m, 'm', 1e-4) }]]),
  })
}

/** What the place asks, whatever the day: frost, the air and quiet of a room, gaps into the tank. */
export const placeFindings = (
  plan: Plan,
  given: {
    readonly use_m3_d: Known<{ readonly low: number; readonly high: number }>
    readonly trapped: Known<TrappedFacts>
  },
): readonly Finding[] => [
  ...freezing(plan, given.trapped),
  ...roomAir(plan, given.use_m3_d),
  ...noise(plan),
  openings(plan),
]
