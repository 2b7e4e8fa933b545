import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'

/** Exit codes of every command. */
export const EXIT = { holds: 0, fails: 1, usage: 2, input: 3, bug: 4 } as const

/** An end of a command that is the person's to mend: one sentence, one exit code. Carried as a value, never thrown. */
export interface Stop {
  readonly stop: string
  readonly code: number
}

export const stop = (sentence: string, code: number): Stop => ({ stop: sentence, code })
export const isStop = (x: object): x is Stop => 'stop' in x

/** Data goes to stdout, messages to stderr. */
export const out = (text: string): void => {
  process.stdout.write(text.endsWith('\n') ? text : `${text}\n`)
}
export const say = (text: string): void => {
  process.stderr.write(text.endsWith('\n') ? text : `${text}\n`)
}
export const json = (value: unknown): void => out(JSON.stringify(value, null, 2))

/** The text of a file, `-` for standard input. */
export function textOf(path: string): { readonly text: string } | Stop {
  try {
    return { text: readFileSync(path === '-' ? 0 : path, 'utf8') }
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code
    const reason =
      why === 'ENOENT'
        ? 'there is no such file'
        : why === 'EISDIR'
          ? 'it is a folder'
          : why === 'EACCES'
            ? 'reading it is not allowed'
            : String(why)
    return stop(`${path}: ${reason}.`, EXIT.input)
  }
}

/** Writes a file whole or not at all. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true })
  const part = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  writeFileSync(part, content)
  renameSync(part, path)
}
