import { testTimes } from '../../tables/labour.ts'
import { practiceTimes } from '../../tables/practice.ts'
import type { Situation } from './situation.ts'
import { type Need, type Step, step } from './step.ts'

const noWeeps = { id: 'weeps', unit: 'count', must: { max: 0 } } as const

/** Two fills of plain water are flushed through and thrown away. */
const FLUSHES = 2

function wetTests(s: Situation): Step[] {
  const { rows } = testTimes
  const wanted_m3_s = s.plan.riser?.neededFlow_m3_s
  return [
    step(s, 'fill', {
      after: ['stand', 'electricity', 'plumbing', ...(s.strap ? (['strap'] as const) : [])],
      actions: ['fill-plain', 'mark-levels'],
      cautions: ['lifting', 'backflow', 'drowning', 'not-drinking'],
      tools: ['measuring-jug', 'marker'],
      parts: ['reservoir'],
    }),
    step(s, 'run-low', {
      after: ['fill'],
      actions: ['unplug-first', 'throttle-low', 'paper-round-joints', 'mark-weeps'],
      cautions: s.mains ? ['mains'] : ['low-voltage'],
      test: noWeeps,
      tools: ['paper-towel', 'marker', 'watch'],
      stay_s: rows['run-low'].hold_s,
    }),
    step(s, 'run-full', {
      after: ['run-low'],
      actions: ['open-full', 'watch-cap', 'watch-splash', 'paper-round-joints'],
      test: noWeeps,
      tools: ['paper-towel', 'watch'],
      stay_s: rows['run-full'].hold_s,
    }),
    step(s, 'bucket-test', {
      after: ['run-full'],
      actions: ['time-bucket', 'enter-bucket'],
      ...(wanted_m3_s === undefined ? {} : { test: { id: 'flow', unit: 'm3_s', must: { min: wanted_m3_s } } }),
      tools: ['bucket', 'watch'],
    }),
    step(s, 'wetting', {
      after: ['run-full'],
      actions: ['strip-each-site', 'turn-distributor'],
      test: { id: 'dry-sites', unit: 'count', must: { max: 0 } },
      tools: ['paper-towel'],
      sheet: 'site-map',
    }),
    step(s, 'stop-restart', {
      after: ['wetting', 'bucket-test'],
      actions: ['stop-pump', 'watch-rise', 'restart-pump', 'watch-fall'],
      cautions: ['drowning'],
      test: { id: 'rim', unit: 'm', must: { min: s.plan.reservoir?.freeboard_m ?? 0 } },
      tools: ['ruler'],
      stay_s: rows.drainback.hold_s,
    }),
  ]
}

function longTests(s: Situation): Step[] {
  const care = s.plan.place?.setting === 'care home'
  return [
    step(s, 'run-day', {
      after: ['stop-restart'],
      actions: ['mark-level', 'run-a-day', 'read-level'],
      cautions: ['legionella', ...(care ? ['legionella-care'] : [])],
      test: noWeeps,
      tools: ['marker', 'ruler'],
      away_s: practiceTimes.rows['leak-run'].low_s,
    }),
    step(s, 'stand-night', {
      after: ['run-day'],
      actions: ['dry-outside', 'paper-under', 'stand-still'],
      test: noWeeps,
      tools: ['paper-towel'],
      away_s: testTimes.rows['stand-night'].hold_s,
    }),
    step(s, 'flush', {
      after: ['stand-night'],
      actions: ['take-off-head', 'pump-plain', 'discard', 'flush-again', 'smell'],
      cautions: ['disposal', 'lifting'],
      tools: ['bucket'],
      away_s: FLUSHES * practiceTimes.rows['flush-run'].low_s,
    }),
  ]
}

/** From the first water to the first plants. */
export function testing(s: Situation, plants: Need): Step[] {
  const care = s.plan.place?.setting
  return [
    ...wetTests(s),
    ...longTests(s),
    step(s, 'feed', {
      after: ['flush'],
      actions: ['fill-nine-tenths', 'dissolve-one-by-one', 'measure-feed', 'acid-last'],
      cautions: ['acid', 'bleach', 'separate-cups'],
      tools: ['scale', 'measuring-jug', 'ec-pen', 'ph-pen', 'goggles', 'gloves'],
      sheet: 'recipe',
    }),
    step(s, 'plant', {
      after: ['feed', plants],
      actions: ['rinse-cups', 'set-plugs', 'check-plug-wet', 'write-date'],
      cautions: ['food', 'not-drinking', ...(care === 'care home' ? ['legionella-care'] : [])],
      parts: ['cup'],
      sheet: 'site-map',
    }),
  ]
}
