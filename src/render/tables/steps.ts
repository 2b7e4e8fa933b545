import type { BuildFacts, Need, Step } from '../../disciplines/build/index.ts'
import { quantity } from '../../kernel/units.ts'
import { type Display, shownText, telling } from '../display.ts'
import { drillText } from '../drill.ts'
import { tradeSlot } from '../tape.ts'
import { fill } from '../words/fill.ts'
import { choiceName } from '../words/sentences.ts'
import type { Words } from '../words/words.ts'

/** A step as it is printed: sentences, one act a line. */
export interface StepText {
  readonly number: number
  readonly id: string
  readonly title: string
  /** What must be waited for first, in words. */
  readonly waits: readonly string[]
  readonly acts: readonly string[]
  readonly cautions: readonly string[]
  /** What must hold before the next step. */
  readonly test: string | null
  readonly tools: readonly string[]
  readonly parts: readonly string[]
  readonly sheet: string | null
  /** Time in the hands, staying and by itself. */
  readonly hands: string
  readonly stay: string | null
  readonly away: string | null
  /** From the first step, for one builder; hours and minutes. */
  readonly starts: string
  readonly starts_s: number
  readonly needs: readonly number[]
}

/** What stands where the plan does not say a number: a line to fill in by pen. */
export const BLANK = '______'

export type SlotTexts = Readonly<Record<string, string>>

const figure = (n: number, display: Display): string => String(n).replace('.', display.decimal)

/** All slots as text; unknown ones as a line to write on. */
export function slotTexts(facts: BuildFacts, words: Words, display: Display): SlotTexts {
  return Object.fromEntries(
    Object.entries(facts.slots).map(([key, slot]) => {
      if (slot === null) return [key, BLANK]
      const own = tradeSlot(key, slot, words, display)
      if (own !== null) return [key, own]
      if (typeof slot === 'object' && !('marks_m' in slot))
        return [key, 'drilled' in slot ? drillText(slot.drilled, display) : shownText(slot, telling('mark', display))]
      return [key, typeof slot === 'string' ? choiceName(slot, words) : figure(Number(slot), display)]
    }),
  )
}

const time = (s: number, display: Display): string => shownText(quantity(s, 's'), display)

function waitText(need: Need, words: Words, display: Display): string[] {
  if (need.waitFor === null) return []
  const slots = { time: time(need.wait_s, display), step: words.steps.titles[need.step] ?? need.step }
  return [fill(words.steps.waits[need.waitFor] ?? need.waitFor, slots)]
}

function testText(step: Step, slots: SlotTexts, words: Words, display: Display): string | null {
  if (step.test === null) return null
  const { id, unit, must } = step.test
  const limit = (value: number | undefined) => (value === undefined ? '' : shownText(quantity(value, unit), display))
  return fill(words.steps.tests[id] ?? id, { ...slots, min: limit(must.min), max: limit(must.max) })
}

const HOUR_s = 3600
const DAY_s = 86_400

/** Day and hour from the start: the first day is 1. */
function startText(start_s: number): string {
  const minutes = Math.round((start_s % DAY_s) / 60)
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
  return `${Math.floor(start_s / DAY_s) + 1}/${clock}`
}

/** The steps in order, every sentence filled, for page, booklet and terminal. */
export function stepTexts(facts: BuildFacts, words: Words, display: Display): readonly StepText[] {
  const slots = slotTexts(facts, words, display)
  const number = new Map(facts.steps.map((s, i) => [s.id, i + 1]))
  const starts = new Map(facts.alone.map((t) => [t.id, t.start_s]))
  const told = (sentences: Readonly<Record<string, string>>, keys: readonly string[]) =>
    keys.map((k) => fill(sentences[k] ?? k, slots))
  return facts.steps.map((s, i) => ({
    number: i + 1,
    id: s.id,
    title: words.steps.titles[s.id] ?? s.id,
    waits: s.needs.flatMap((n) => waitText(n, words, display)),
    acts: told(words.steps.acts, s.actions),
    cautions: told(words.cautions, s.cautions),
    test: testText(s, slots, words, display),
    tools: s.tools.map((t) => words.parts.tools[t] ?? t),
    parts: s.parts.map((p) => words.parts.names[p] ?? p),
    sheet: s.sheet,
    hands: time(s.hands_s, display),
    stay: s.stay_s > 0 ? time(s.stay_s, display) : null,
    away: s.away_s > 0 ? time(s.away_s, display) : null,
    starts: startText(starts.get(s.id)!),
    starts_s: starts.get(s.id)!,
    needs: s.needs.map((n) => number.get(n.step)!),
  }))
}

/** Lines to fill in by pen, over all acts and cautions. */
export const blanksIn = (texts: readonly StepText[]): number =>
  texts.reduce((sum, t) => sum + [...t.acts, ...t.cautions, t.test ?? ''].join(' ').split(BLANK).length - 1, 0)

/** Hours of a span for a summary line. */
export const hoursOf = (span_s: number): number => Math.round((span_s / HOUR_s) * 10) / 10
