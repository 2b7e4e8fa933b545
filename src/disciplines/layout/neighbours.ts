import type { Site } from './sites.ts'

/** How one site stands to another, near enough for their holes to matter to each other. */
export interface Neighbour {
  readonly kind: 'ring' | 'line' | 'diagonal'
  readonly turn_rad: number
  readonly rise_m: number
}

const TURN = 2 * Math.PI
const SAME = 1e-6
/** More than the different turns there are: a key holds rise and turn in one number. */
const TURNS = 1e7

const shortWay = (angle: number): number => {
  const w = ((angle % TURN) + TURN) % TURN
  return w > Math.PI ? w - TURN : w
}

/**
 * The different ways in which two sites, listed upwards, stand to each other within `reach_m` of height; mirror images count once.
 * Regular patterns have a handful of them, so that each is looked at once and not for every pair of sites.
 */
export function neighbourWays(sites: readonly Site[], reach_m: number): readonly Neighbour[] {
  const found = new Map<number, Neighbour>()
  for (let i = 0; i < sites.length; i++) {
    for (let j = i + 1; j < sites.length; j++) {
      const rise_m = sites[j]!.mark_m - sites[i]!.mark_m
      if (rise_m > reach_m) break
      const turn_rad = shortWay(sites[j]!.turn_rad - sites[i]!.turn_rad)
      const key = Math.round(Math.abs(rise_m) / SAME) * TURNS + Math.round(Math.abs(turn_rad) / SAME)
      if (found.has(key)) continue
      const kind = Math.abs(rise_m) < SAME ? 'ring' : Math.abs(turn_rad) < SAME ? 'line' : 'diagonal'
      found.set(key, { kind, turn_rad: Math.abs(turn_rad), rise_m: Math.abs(rise_m) })
    }
  }
  return [...found.values()].sort((a, b) => a.rise_m - b.rise_m || a.turn_rad - b.turn_rad)
}
