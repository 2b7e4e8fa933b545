import type { BuildFacts, Step } from '../../disciplines/build/index.ts'
import type { Tool } from '../../disciplines/parts/index.ts'
import type { Display } from '../display.ts'
import type { Words } from '../words/words.ts'
import type { Cell } from './csv.ts'
import { figure } from './figures.ts'
import { toolText } from './parts.ts'
import { stepTexts } from './steps.ts'

const MINUTE_s = 60
const HOUR_s = 3600

const minutes = (s: number): number => figure(s / MINUTE_s, 1)

/** The steps in their order with the times of one builder, each with what is done, minded and tested. */
export const stepCells = (facts: BuildFacts, words: Words, display: Display): readonly (readonly Cell[])[] =>
  stepTexts(facts, words, display).map((t, i) => {
    const { hands_s, stay_s, away_s } = facts.steps[i] as Step
    return [
      t.number,
      t.title,
      figure(t.starts_s / HOUR_s, 2),
      minutes(hands_s),
      minutes(stay_s),
      minutes(away_s),
      t.needs.join(' '),
      ...[t.waits, t.acts, t.cautions].map((lines) => lines.join(' ')),
      t.test,
    ]
  })

/** Tools, and whether the plan says that they are there. */
export const toolCells = (tools: readonly Tool[], words: Words): readonly (readonly Cell[])[] =>
  tools.map((tool) => {
    const { name, atHand } = toolText(tool, words)
    return [name, atHand]
  })
