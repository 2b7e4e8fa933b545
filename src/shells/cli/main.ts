import { Command, CommanderError } from 'commander'
import { isLanguage, languageNames } from '../../render/words/language.ts'
import { bookletCommand } from './commands/booklet.ts'
import { check } from './commands/check.ts'
import { correct } from './commands/correct.ts'
import { cuts } from './commands/cuts.ts'
import { evaluateCommand } from './commands/evaluate.ts'
import { explain } from './commands/explain.ts'
import { mix } from './commands/mix.ts'
import { fresh } from './commands/new.ts'
import { parts } from './commands/parts.ts'
import { schema } from './commands/schema.ts'
import { sensitivityCommand } from './commands/sensitivity.ts'
import { serve } from './commands/serve.ts'
import { sheets } from './commands/sheets.ts'
import { solids } from './commands/solids.ts'
import { steps } from './commands/steps.ts'
import { tables } from './commands/tables.ts'
import { EXIT, isStop, type Stop, say, stop } from './io.ts'
import { speak } from './language.ts'

/** What a command gives back: an exit code, or a sentence with one. */
export type Outcome = number | Stop

/** One command: its name, its arguments, its work. */
export interface CommandOf {
  readonly name: string
  readonly summary: string
  readonly describe: (command: Command) => Command
  readonly run: (args: readonly string[], options: Readonly<Record<string, unknown>>) => Outcome | Promise<Outcome>
}

const commands: readonly CommandOf[] = [
  fresh,
  check,
  explain,
  sensitivityCommand,
  cuts,
  parts,
  steps,
  mix,
  correct,
  evaluateCommand,
  sheets,
  tables,
  solids,
  bookletCommand,
  schema,
  serve,
]

const tags = Object.keys(languageNames)

const HELP = `
Data goes to standard output, messages to standard error. "-" reads a plan from standard input.
Exit codes: 0 all holds, 1 a finding fails, 2 the command was not understood, 3 the plan cannot be read, 4 our mistake.`

function program(done: (outcome: Outcome) => void): Command {
  const root = new Command('rootfall')
    .description('Workbench for vertical growing towers built from ordinary plumbing pipe.')
    .version('0.1.0')
    .showSuggestionAfterError(true)
    .exitOverride()
    .addHelpText('after', HELP)
    .configureOutput({ writeOut: (s) => process.stdout.write(s), writeErr: (s) => process.stderr.write(s) })
  for (const c of commands) {
    const command = c.describe(root.command(c.name).summary(c.summary).description(c.summary)).exitOverride()
    command.option('--json', 'print data as JSON')
    command.option('--language <tag>', `language of what is said: ${tags.join(', ')}`, 'en')
    command.action(async (...given: unknown[]) => {
      const self = given.at(-1) as Command
      const { language, ...options } = self.opts<Readonly<Record<string, unknown>>>()
      const tag = String(language)
      if (!isLanguage(tag)) return done(stop(`--language ${tag}: write one of ${tags.join(', ')}.`, EXIT.usage))
      speak(tag)
      done(await c.run(self.args, options))
    })
  }
  return root
}

/** Runs the command line and sets the exit code. */
export async function main(argv: readonly string[]): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0)
    throw error
  })
  let outcome: Outcome = EXIT.holds
  try {
    await program((o) => {
      outcome = o
    }).parseAsync(argv.length > 2 ? [...argv] : [...argv, '--help'])
  } catch (error) {
    if (error instanceof CommanderError) outcome = error.exitCode === 0 ? EXIT.holds : EXIT.usage
    else {
      say(
        `This is a mistake of rootfall, not yours. Please report it with the plan.\n${error instanceof Error ? error.stack : String(error)}`,
      )
      outcome = EXIT.bug
    }
  }
  const end = outcome as Outcome
  if (typeof end === 'object' && isStop(end)) say(end.stop)
  process.exitCode = typeof end === 'number' ? end : end.code
}
