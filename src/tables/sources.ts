/** The one register of citations. Parts by subject stand in `sources/`. */
import { buildSources } from './sources/build.ts'
import { chemistrySources } from './sources/chemistry.ts'
import { cropsSources } from './sources/crops.ts'
import { cuttingSources } from './sources/cutting.ts'
import { feedSources } from './sources/feed.ts'
import { geometrySources } from './sources/geometry.ts'
import { heatSources } from './sources/heat.ts'
import { practiceSources } from './sources/practice.ts'
import { readingsSources } from './sources/readings.ts'
import { standSources } from './sources/stand.ts'
import { waterPathSources } from './sources/water-path.ts'

export const sources = {
  ...practiceSources,
  ...readingsSources,
  ...buildSources,
  ...cuttingSources,
  ...geometrySources,
  ...waterPathSources,
  ...heatSources,
  ...standSources,
  ...chemistrySources,
  ...feedSources,
  ...cropsSources,
}

export type SourceId = keyof typeof sources
