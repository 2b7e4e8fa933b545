/** The one register of citations. Parts by subject stand in `sources/`. */
import { buildSources } from './sources/build.ts'
import { chemistrySources } from './sources/chemistry.ts'
import { cropsSources } from './sources/crops.ts'
import { cuttingSources } from './sources/cutting.ts'
import { geometrySources } from './sources/geometry.ts'
import { physicsSources } from './sources/physics.ts'
import { practiceSources } from './sources/practice.ts'

export const sources = {
  ...practiceSources,
  ...buildSources,
  ...cuttingSources,
  ...geometrySources,
  ...physicsSources,
  ...chemistrySources,
  ...cropsSources,
}

export type SourceId = keyof typeof sources
