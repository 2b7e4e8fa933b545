/** A column of a table of plain text: figures stand on a right edge. */
export interface TextColumn {
  readonly heading: string
  readonly align: 'words' | 'figures'
}

/** Characters as a terminal shows them: what combines with its neighbour takes no room. */
const width = (text: string): number => [...text.normalize('NFC').replace(/\p{M}/gu, '')].length

/** A table for a terminal: headings, then rows, columns two spaces apart, no trailing blanks. */
export function textTable(columns: readonly TextColumn[], rows: readonly (readonly string[])[]): string {
  const all = [columns.map((c) => c.heading), ...rows]
  const widths = columns.map((_, i) => Math.max(...all.map((row) => width(row[i] ?? ''))))
  const line = (row: readonly string[]): string =>
    columns
      .map((c, i) => {
        const text = row[i] ?? ''
        const pad = ' '.repeat(Math.max(0, widths[i]! - width(text)))
        return c.align === 'figures' ? pad + text : text + pad
      })
      .join('  ')
      .trimEnd()
  return all.map(line).join('\n')
}
