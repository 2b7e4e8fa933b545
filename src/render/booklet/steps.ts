import type { BuildFacts } from '../../disciplines/build/index.ts'
import { quantity } from '../../kernel/units.ts'
import { isKnown } from '../../plan/known.ts'
import type { SheetId } from '../sheets/context.ts'
import { sheetOf, stepText } from '../sheets/steps.ts'
import { type Given, text, ticks } from './input.ts'
import type { Block, Chapter, StepBlock } from './model.ts'
import { pictureOf } from './pictures.ts'
import { wetRecord } from './wet.ts'

/** Where the wet test begins and where it ends. */
const WET = 'fill'
const FEED = 'feed'

function stepBlocks(g: Given, build: BuildFacts, titles: ReadonlyMap<SheetId, string>): readonly StepBlock[] {
  return build.steps.map((s, i): StepBlock => {
    const t = stepText(g.sheet, s, i + 1, build)
    const id = s.id === 'closure' ? 'strip' : s.sheet === null ? undefined : sheetOf[s.sheet]
    const sheet = id === undefined ? undefined : titles.get(id)
    const title = g.words.steps.titles[s.id] ?? s.id
    return {
      kind: 'step',
      id: s.id,
      title: g.tell('step-title', { n: String(i + 1), title }),
      aside: sheet === undefined ? t.times : `${t.times}; ${g.tell('step-sheet', { sheet })}`,
      waits: t.waits,
      cautions: t.cautions,
      acts: ticks(s.id, t.acts),
      test: t.test === '' ? null : { id: `${s.id}-test`, text: t.test },
      picture: pictureOf(g, s.id, title),
    }
  })
}

const chapter = (id: string, title: string, blocks: readonly Block[]): readonly Chapter[] =>
  blocks.length === 0 ? [] : [{ id, title, blocks }]

/** Building, the wet test with its record, and the first planting: three chapters of one row of steps. */
export function stepChapters(g: Given, titles: ReadonlyMap<SheetId, string>): readonly Chapter[] {
  const { build } = g.facts
  if (!isKnown(build)) return []
  const b = build.known
  const blocks = stepBlocks(g, b, titles)
  const from = (id: string) => {
    const at = blocks.findIndex((s) => s.id === id)
    return at < 0 ? blocks.length : at
  }
  const [wet, feed] = [from(WET), Math.max(from(WET), from(FEED))]
  const time = (s: number) => g.sheet.shown(quantity(s, 's'))
  const sum = text(g.tell('steps-sum', { hands: time(b.hands_s), alone: time(b.elapsedAlone_s) }), 'quiet')
  const wetSteps = blocks.slice(wet, feed)
  return [
    ...chapter('steps', g.tell('steps-title'), [sum, ...blocks.slice(0, wet)]),
    ...chapter(
      'wet',
      g.tell('wet-title'),
      wetSteps.length === 0 ? [] : [text(g.tell('wet-how'), 'caution'), ...wetSteps, ...wetRecord(g)],
    ),
    ...chapter('start', g.tell('start-title'), blocks.slice(feed)),
  ]
}
