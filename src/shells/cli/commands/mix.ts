import type { BatchFacts, NutrientsFacts } from '../../../disciplines/nutrients/index.ts'
import { evaluate } from '../../../evaluate.ts'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import { isKnown } from '../../../plan/known.ts'
import type { Plan } from '../../../plan/plan.ts'
import type { Display } from '../../../render/display.ts'
import {
  acidTexts,
  cheapestText,
  costText,
  doseTexts,
  elementTexts,
  gainTexts,
  penText,
  stockTexts,
  waterText,
  weakTexts,
} from '../../../render/tables/feed.ts'
import { orderLines } from '../../../render/tables/feed-order.ts'
import { refillText, runningText } from '../../../render/tables/feed-running.ts'
import { lastsText } from '../../../render/tables/packs.ts'
import { textTable } from '../../../render/tables/text.ts'
import { findingText } from '../../../render/words/sentences.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, type Stop, say, stop } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { needsText, planFile } from '../plan-file.ts'

const t = (key: string): string => language().words.tables[key]!

function tables(batch: BatchFacts, display: Display): void {
  const columns = (['product', 'mass', 'volume', 'per-litre', 'bottle', 'cost'] as const).map((key, i) => ({
    heading: t(`feed-${key}`),
    align: i === 0 || key === 'bottle' ? ('words' as const) : ('figures' as const),
  }))
  const doses = doseTexts(batch, language().words, display)
  out(
    textTable(
      columns,
      doses.map((d) => [d.name, d.mass, d.volume, d.perLitre, d.bottle, d.price]),
    ),
  )
  const weak = weakTexts(batch, language().words, display)
  if (weak.length > 0) out(weak.map((line) => `* ${line}`).join('\n'))
  const heads = (['element', 'wanted', 'reached', 'share'] as const).map((key, i) => ({
    heading: t(`feed-${key}`),
    align: i === 0 ? ('words' as const) : ('figures' as const),
  }))
  const elements = elementTexts(batch, display)
  out(
    `\n${textTable(
      heads,
      elements.map((e) => [e.element, e.wanted, e.reached, e.share]),
    )}\n`,
  )
}

function sheet(plan: Plan, facts: NutrientsFacts, batch: BatchFacts, more: boolean): void {
  const display = displayOf(plan)
  out(`${waterText(facts, language().words, display)}\n`)
  tables(batch, display)
  const lines = [
    penText(facts, batch, language().words, display),
    ...acidTexts(batch, language().words, display),
    ...stockTexts(facts, plan.feed?.stock?.volume_m3 ?? null, language().words, display),
    costText(batch, language().words, display),
    cheapestText(batch, language().words, display),
    lastsText(facts, language().words, display),
    runningText(facts, language().words, display),
    refillText(batch, language().words),
    ...(more ? gainTexts(batch, language().words) : []),
  ]
  out(lines.filter((line) => line !== '').join('\n'))
  const order = orderLines(batch, language().words, display)
  if (order.length > 0) out(`\n${t('feed-order')}`)
  for (const [i, { text, cautions }] of order.entries()) {
    out(`${i + 1}. ${text}`)
    for (const caution of cautions) out(`   ! ${caution}`)
  }
}

/** The plan with the aim that the command line asks for. */
function aimed(plan: Plan, cheapest: unknown): Plan | Stop {
  if (cheapest === undefined) return plan
  const feed = { ...plan.feed, aim: 'cheapest' as const }
  if (typeof cheapest !== 'string') return { ...plan, feed }
  const read = readQuantity(cheapest, '1')
  if (!read.ok || read.value < WITHIN.low || read.value > WITHIN.high)
    return stop(`--cheapest "${cheapest}" is no share of 1 to 50 %. Write it like "10 %".`, EXIT.usage)
  return { ...plan, feed: { ...feed, within: read.value } }
}

/** Bands that the plan's own field takes. */
const WITHIN = { low: 0.01, high: 0.5 }

export const mix: CommandOf = {
  name: 'mix',
  summary: 'what to weigh for a batch from this water and this shelf, and what the pens should show',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .option('--more', 'tell what one more salt would bring')
      .option('--cheapest [share]', 'the least money with each element within this share of its target, like "10 %"'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const plan = aimed(read.plan, options['cheapest'])
    if (isStop(plan)) return plan
    const { facts, findings } = evaluate(plan, { day: false })
    const own = findings.filter((f) => f.id.startsWith('nutrients/'))
    const fails = own.some((f) => f.verdict === 'fail')
    const code = read.issues.length > 0 ? EXIT.input : fails ? EXIT.fails : EXIT.holds
    if (options['json']) {
      json({ issues: read.issues, nutrients: facts.nutrients })
      return code
    }
    const { batch } = facts.nutrients
    if (!isKnown(batch)) say(needsText([...new Set(batch.needs)]))
    else sheet(plan, facts.nutrients, batch.known, options['more'] === true)
    const display = displayOf(plan)
    const told = own.filter((f) => f.verdict === 'fail' || f.verdict === 'watch')
    if (told.length > 0) out('')
    for (const f of told)
      out(`${t(`verdict-${f.verdict}`)} ${f.id}  ${findingText(f, language().words, display).sentence}`)
    return code
  },
}
