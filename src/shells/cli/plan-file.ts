import { otherSigns } from '../../plan/decimal-signs.ts'
import { type ReadPlan, readPlanText } from '../../plan/document.ts'
import { planFields } from '../../plan/plan.ts'
import { fill, oneOf } from '../../render/words/fill.ts'
import { issueText, placeName } from '../../render/words/sentences.ts'
import { displayOf } from './display.ts'
import { EXIT, isStop, type Stop, say, stop, textOf } from './io.ts'
import { language } from './language.ts'

/**
 * Reads a plan file. Issues go to stderr as sentences; a plan of which nothing could be read stops the command,
 * one with issues is computed as far as it could be read.
 */
export function planFile(path: string): ReadPlan | Stop {
  const file = textOf(path)
  if (isStop(file)) return file
  const read = readPlanText(file.text)
  const sentences = read.issues.map((issue) => {
    const sentence = issueText(issue, language().words, displayOf(read.plan))
    // The words name the place; whoever writes the file also wants its key.
    return issue.at === '' || sentence.includes(issue.at) ? sentence : `${sentence} (${issue.at})`
  })
  if (Object.keys(read.plan).length === 0 && read.issues.length > 0)
    return stop(`${path}: the plan cannot be read.\n${sentences.map((s) => `  ${s}`).join('\n')}`, EXIT.input)
  for (const sentence of sentences) say(`${path}: ${sentence}`)
  const { words } = language()
  for (const { at, typed, read: value } of otherSigns(planFields, read.document, words.decimal))
    say(`${path}: ${fill(words.phrases['read-as']!, { place: placeName(at, words), typed, value })} (${at})`)
  return read
}

/** The fields of the plan that must be filled in first, as a sentence. */
export function needsText(needs: readonly string[]): string {
  const names = needs.map((n) => placeName(n, language().words))
  return fill(language().words.phrases['unknown']!, { needs: oneOf(names, language().words.phrases['and']!) })
}
