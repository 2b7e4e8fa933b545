/**
 * Tables as comma-separated values (RFC 4180): header line, CRLF, quotes doubled, `.` as decimal sign, one newline at
 * the end. In a language with a decimal comma numbers have it, and cells stand between semicolons, as the spreadsheets
 * of its readers expect. Text that a spreadsheet would take for a formula gets a leading apostrophe; numbers are left as they are.
 */
export type Cell = string | number | boolean | null

/** What a spreadsheet may take for the start of a formula. */
const FORMULA = /^[=+\-@\t\r\0]/
/** Text that export escaped, and that import must give back. */
const ESCAPED = /^'(?=[=+\-@\t\r\0'])/

const escaped = (text: string): string => (FORMULA.test(text) || ESCAPED.test(text) ? `'${text}` : text)
const quoted = (text: string): string => (/[",;\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)

function cellText(cell: Cell, decimal: '.' | ','): string {
  if (cell === null) return ''
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`csv: ${cell} is no number`)
    return String(cell).replace('.', decimal)
  }
  return quoted(typeof cell === 'boolean' ? String(cell) : escaped(cell))
}

/** A table of cells under its header; every row as long as the header. */
export function csv(header: readonly string[], rows: readonly (readonly Cell[])[], decimal: '.' | ',' = '.'): string {
  const wrong = rows.findIndex((r) => r.length !== header.length)
  if (wrong >= 0) throw new RangeError(`csv: row ${wrong} has ${rows[wrong]!.length} cells, not ${header.length}`)
  const between = decimal === ',' ? ';' : ','
  return [header, ...rows].map((row) => `${row.map((c) => cellText(c, decimal)).join(between)}\r\n`).join('')
}

/** The text that a cell held before `csv` escaped it. */
export const unescaped = (text: string): string => text.replace(ESCAPED, '')
