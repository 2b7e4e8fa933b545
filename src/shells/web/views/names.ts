import { cropTargets } from '../../../tables/crop-targets.ts'
import { reportNames } from '../../../tables/report-names.ts'
import { shelfNames } from '../../../tables/shelf-names.ts'
import { fieldAt } from '../model/fields.ts'

/** Names that the description of a field lists after its colon: `Bag label: N, NO3-N, NH4-N.` */
const listed = (path: string): readonly string[] =>
  (fieldAt(path)?.about.split(':')[1] ?? '')
    .replace(/[.…]+\s*$/, '')
    .split(',')
    .map((name) => name.trim())

const reported = (plain: boolean): readonly string[] =>
  Object.entries(reportNames.rows).flatMap(([name, { basis }]) => ((basis === 'mg/L') === plain ? [name] : []))

/** Names under which one more entry of a list or map can be added; any other can be typed as well. */
export function namesFor(path: string): readonly string[] {
  switch (path.split('/').at(-1)) {
    case 'shelf':
      return Object.keys(shelfNames.rows)
    case 'crops':
      return [...new Set(Object.values(cropTargets.rows).map((row) => row.crop))].sort()
    case 'ions':
    case 'equivalents':
      return reported(true)
    case 'asElement':
      return reported(false)
    case 'limits':
      return listed('feed/targets')
    default:
      return listed(path)
  }
}
