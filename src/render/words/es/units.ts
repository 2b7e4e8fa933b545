/** Units that Spanish writes otherwise, by their usual spelling. */
export const units: Readonly<Record<string, string>> = {
  d: 'días',
  days: 'días',
  'L/day': 'L/día',
}
