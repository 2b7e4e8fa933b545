import { evaluate } from '../../../evaluate.ts'
import { isKnown } from '../../../plan/known.ts'
import { hoursOf, type StepText, stepTexts } from '../../../render/tables/steps.ts'
import { fill } from '../../../render/words/fill.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, say, stop } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { needsText, planFile } from '../plan-file.ts'

/** Day and hour of a step on the clock of whoever asks, where a start is given. */
const clock = (start_ms: number | null, s: StepText): string =>
  start_ms === null ? s.starts : new Date(start_ms + s.starts_s * 1000).toLocaleString('sv-SE').slice(0, 16)

function printed(s: StepText, start_ms: number | null): string {
  const t = language().words.tables
  return [
    `${s.number}. ${s.title}  (${[clock(start_ms, s), s.hands, s.stay, s.away].filter((x) => x !== null).join(', ')})`,
    ...s.waits.map((w) => `   ${t['step-wait']}: ${w}`),
    ...s.cautions.map((c) => `   ${t['step-caution']}: ${c}`),
    ...s.acts.map((a) => `   - ${a}`),
    ...(s.test === null ? [] : [`   ${t['step-test']}: ${s.test}`]),
    ...(s.tools.length > 0 ? [`   ${t['step-tools']}: ${s.tools.join(', ')}.`] : []),
  ].join('\n')
}

export const steps: CommandOf = {
  name: 'steps',
  summary: 'how to build it: acts, cautions, tests and waits in order',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .option('--start <time>', 'when the first step begins, such as 2027-05-01T08:00'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const start = typeof options['start'] === 'string' ? Date.parse(options['start']) : null
    if (Number.isNaN(start))
      return stop(`“${options['start']}” is no time. Write it like 2027-05-01T08:00.`, EXIT.usage)
    const { facts, findings } = evaluate(read.plan)
    const fails = findings.some((f) => f.id.startsWith('build/') && f.verdict === 'fail')
    const code = read.issues.length > 0 ? EXIT.input : fails ? EXIT.fails : EXIT.holds
    const { build } = facts
    const texts = isKnown(build) ? stepTexts(build.known, language().words, displayOf(read.plan)) : []
    if (options['json']) json({ issues: read.issues, build, steps: texts })
    else if (!isKnown(build)) say(needsText(build.needs))
    else {
      const { hands_s, elapsedAlone_s } = build.known
      out(
        fill(language().words.tables['time-line']!, {
          hands: String(hoursOf(hands_s)),
          alone: String(hoursOf(elapsedAlone_s)),
        }),
      )
      for (const s of texts) out(`\n${printed(s, start)}`)
    }
    return code
  },
}
