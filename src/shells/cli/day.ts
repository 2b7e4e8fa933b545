import { EXIT, type Stop, stop } from './io.ts'

/** Today by the clock of this machine, as it is printed. */
function today(): string {
  const now = new Date()
  const two = (n: number) => String(n).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** The date that was asked for, or today. */
export function dayOf(typed: unknown): string | Stop {
  const date = typed === undefined ? today() : String(typed)
  return /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/.test(date)
    ? date
    : stop(`--date ${date}: write it like 2026-05-31.`, EXIT.usage)
}
