import type { IssueProblem } from '../../plan/issue.ts'
import type { FeedViewWords } from './en/feed-views.ts'
import type { SensitivityWords } from './en/sensitivity.ts'
import type { StandChartWords } from './en/stand-charts.ts'
import type { WaterPathWords } from './en/water-path.ts'
import type { RemedyWords } from './remedies.ts'

/**
 * The sentences of one verdict, with slots in braces. Every finding may use {measured}, {must} and {want} (the limit
 * that was missed, or the nearer one) and {at} (the place); further slots are the finding's own.
 */
export interface FindingWords {
  /** At most 27 characters: the line in a list. */
  readonly short: string
  readonly pass: string
  readonly watch: string
  readonly fail: string
  /** What can be said while it is not known, beside what to measure; left out where a slot of it is missing too. */
  readonly unknown?: string
  /** Why the limit exists. */
  readonly because: string
}

/** Names of parts and tools, their kinds, what their sizes are called, and remarks on some. */
export interface PartWords {
  readonly names: Readonly<Record<string, string>>
  readonly remarks: Readonly<Record<string, string>>
  readonly kinds: Readonly<Record<string, string>>
  readonly sizes: Readonly<Record<string, string>>
  readonly tools: Readonly<Record<string, string>>
}

/** Titles of steps, their acts one a line, and the tests that must hold before work goes on. */
export interface StepWords {
  readonly titles: Readonly<Record<string, string>>
  readonly acts: Readonly<Record<string, string>>
  readonly tests: Readonly<Record<string, string>>
  readonly waits: Readonly<Record<string, string>>
}

/** Headings of the tables for a spreadsheet, column by column. */
export interface CsvWords {
  readonly marks: readonly string[]
  readonly fromFoot: readonly string[]
  readonly fromTop: readonly string[]
  readonly marksOnTape: readonly string[]
  readonly batch: readonly string[]
  readonly packs: readonly string[]
  readonly elements: readonly string[]
  readonly stock: readonly string[]
  readonly steps: readonly string[]
  readonly tools: readonly string[]
  readonly cuts: readonly string[]
  readonly parts: readonly string[]
  readonly findings: readonly string[]
  readonly dipStick: readonly string[]
  readonly stop: readonly string[]
  readonly day: readonly string[]
  readonly tipping: readonly string[]
  /** Kinds of the end of a piece. */
  readonly ends: Readonly<Record<string, string>>
  readonly money: string
  readonly pieces: string
}

/** Everything rootfall says, in one language. */
export interface Words {
  /** Tag of the language, as in HTML and PDF. */
  readonly language: string
  readonly decimal: '.' | ','
  /** Units that are words or abbreviations of the language, by their usual spelling. */
  readonly units: Readonly<Record<string, string>>
  /** What a choice of the plan is called; the plan itself keeps the choice's own name. */
  readonly choices: Readonly<Record<string, string>>
  /** What a field of the plan holds, by the English sentence that defines it. */
  readonly abouts: Readonly<Record<string, string>>
  readonly findings: Readonly<Record<string, FindingWords>>
  readonly issues: Readonly<Record<IssueProblem, string>>
  /** Names of places in the plan, by path; lists without their index. */
  readonly places: Readonly<Record<string, string>>
  /** Short names of fields, by path or key. */
  readonly labels: Readonly<Record<string, string>>
  readonly phrases: Readonly<Record<string, string>>
  readonly remedies: RemedyWords
  readonly parts: PartWords
  readonly steps: StepWords
  /** What to beware of at a step, by key. */
  readonly cautions: Readonly<Record<string, string>>
  /** Headings and lines of printed tables. */
  readonly tables: Readonly<Record<string, string>>
  readonly csv: CsvWords
  readonly waterPath: WaterPathWords
  readonly standCharts: StandChartWords
  readonly sensitivity: SensitivityWords
  readonly feedViews: FeedViewWords
  /** What was chosen in a plan that was drawn from answers, and what is asked before. */
  readonly beginning: Readonly<Record<string, string>>
}
