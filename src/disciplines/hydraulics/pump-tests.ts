/** Bucket tests held against each other: by day, and from the first to the last. */
import { pumpPractice } from '../../tables/hydraulic-pumps.ts'
import { waterPathPractice } from '../../tables/water-path.ts'
import { type DatedTest, type WearRecord, wearRecord } from './equations-bucket.ts'
import { pumpStrength } from './equations-pump.ts'
import type { PumpCurve, PumpPoint } from './pump-law.ts'

/** A bucket test as computed. */
export interface TestFacts {
  /** Its place in the plan's list, from 0. */
  readonly index: number
  readonly on: string
  readonly flow_m3_s: number
  /** Head that the pump gave; null where the riser's loss is not known. */
  readonly head_m: number | null
  /** False where the flow, or the height of the outlet alone, is beyond what the box says the pump can give at all. */
  readonly believable: boolean
}

/** Days of a date written year-month-day, on the proleptic calendar; null for any other text. */
export function dayNumber(text: string): number | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim())
  if (!match) return null
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])]
  if (month < 1 || month > 12 || day < 1 || day > 31) return null
  // A year that begins in March puts the leap day at its end.
  const y = month <= 2 ? year - 1 : year
  const m = (month + 9) % 12
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day
}

/** Head that the pump gave in a test at a flow; null where the riser or the height is not known. */
export type HeadAt = (index: number, flow_m3_s: number) => number | null

/** The tests were the flow off by a share: through the same hose, so that the head moves with it. */
export const misread = (tests: readonly Usable[], factor: number, at: HeadAt): readonly PumpPoint[] =>
  tests.map((t) => ({ flow_m3_s: t.flow_m3_s * factor, head_m: at(t.index, t.flow_m3_s * factor) ?? t.head_m }))

export type Usable = TestFacts & { readonly head_m: number }
export const usable = (t: TestFacts): t is Usable => t.believable && t.head_m !== null && t.head_m > 0

/** Two tests held against each other. */
export interface Apart {
  /** Strength of the one over that of the other. */
  readonly ratio: number
  /** Ratio that bucket and stopwatch would explain, each read off by what they miss. */
  readonly explained: number
}

/** Tests of one day: the weakest and the strongest. */
export interface SameDay extends Apart {
  readonly on: string
  readonly weakest: number
  readonly strongest: number
}

/** What tests say of a pump over time, and of each other. */
export interface TestHistory {
  /** Strengths against the first test; null without two. */
  readonly wear: WearRecord | null
  readonly sameDay: readonly SameDay[]
  /** The last test against the first; null without two. */
  readonly since: Apart | null
}

/** The tests of the last day: what the pump is now. */
export function lastDay(tests: readonly Usable[]): readonly Usable[] {
  const dated = tests.map((t) => ({ t, day: dayNumber(t.on) }))
  const days = dated.flatMap((d) => (d.day === null ? [] : [d.day]))
  if (days.length === 0) return tests.slice(-1)
  const last = Math.max(...days)
  return dated.filter((d) => d.day === last).map((d) => d.t)
}

function wearOf(curve: PumpCurve, tests: readonly Usable[]): WearRecord | null {
  const dated = tests.map((t, i): DatedTest => ({ ...t, at_d: dayNumber(t.on) ?? i }))
  const inDays = tests.every((t) => dayNumber(t.on) !== null)
  if (tests.length < 2) return null
  const record = wearRecord({ curve, tests: dated, leastStrength: waterPathPractice.rows.weakPump.value })
  // Without dates the order alone tells wear from noise; a trend per day would be invented.
  return inDays ? record : { ...record, trend_per_d: null, least_d: null }
}

/** How strong a test shows the pump, and how strong it might be with the flow read off. */
type Strength = (test: Usable) => { readonly low: number; readonly value: number; readonly high: number }

function strengthOf(curve: PumpCurve, at: HeadAt): Strength {
  const error = pumpPractice.rows.bucketError.high
  const of = (test: Usable, factor: number) => pumpStrength({ curve, point: misread([test], factor, at)[0]! })
  return (test) => ({ low: of(test, 1 - error), value: of(test, 1), high: of(test, 1 + error) })
}

function apart(of: Strength, weak: Usable, strong: Usable): Apart {
  const [a, b] = [of(weak), of(strong)]
  const ratio = b.value / a.value
  return { ratio, explained: (ratio * a.high) / b.low }
}

/** Days with several tests, each held against the others of its day. */
function sameDays(of: Strength, tests: readonly Usable[]): readonly SameDay[] {
  const days = new Map<string, Usable[]>()
  for (const t of tests) if (t.on !== '') days.set(t.on, [...(days.get(t.on) ?? []), t])
  return [...days].flatMap(([on, list]): SameDay[] => {
    if (list.length < 2) return []
    const sorted = [...list].sort((a, b) => of(a).value - of(b).value)
    const [weak, strong] = [sorted[0]!, sorted.at(-1)!]
    return [{ on, weakest: weak.index, strongest: strong.index, ...apart(of, weak, strong) }]
  })
}

/** Tests of a pump over time, held against each other. */
export function history(curve: PumpCurve, tests: readonly Usable[], at: HeadAt): TestHistory {
  const of = strengthOf(curve, at)
  const wear = wearOf(curve, tests)
  const sorted = tests.map((t, i) => ({ t, at_d: dayNumber(t.on) ?? i })).sort((a, b) => a.at_d - b.at_d)
  const [first, last] = [sorted[0], sorted.at(-1)]
  const since = wear === null || !first || !last ? null : apart(of, first.t, last.t)
  return { wear, sameDay: sameDays(of, tests), since }
}
