import type { FindingWords, Words } from '../words.ts'
import { beginning } from './beginning.ts'
import { cautions } from './cautions.ts'
import { csvWords } from './csv.ts'
import { feedPhrases } from './feed-phrases.ts'
import { feedTables } from './feed-tables.ts'
import { feedViewWords } from './feed-views.ts'
import { build } from './findings/build.ts'
import { cuts } from './findings/cuts.ts'
import { hydraulics } from './findings/hydraulics.ts'
import { layout } from './findings/layout.ts'
import { nutrients } from './findings/nutrients.ts'
import { parts as partFindings } from './findings/parts.ts'
import { power } from './findings/power.ts'
import { reservoir } from './findings/reservoir.ts'
import { structure } from './findings/structure.ts'
import { templates } from './findings/templates.ts'
import { water } from './findings/water.ts'
import { issues } from './issues.ts'
import { labels } from './labels.ts'
import { parts } from './parts.ts'
import { phrases } from './phrases.ts'
import { places } from './places.ts'
import { remedies } from './remedies.ts'
import { sensitivityWords } from './sensitivity.ts'
import { standChartWords } from './stand-charts.ts'
import { steps } from './steps.ts'
import { tableWords } from './tables.ts'
import { waterPathWords } from './water-path.ts'

const findings: Readonly<Record<string, FindingWords>> = {
  ...layout,
  ...templates,
  ...hydraulics,
  ...reservoir,
  ...water,
  ...structure,
  ...power,
  ...nutrients,
  ...cuts,
  ...partFindings,
  ...build,
}

export const english: Words = {
  language: 'en',
  decimal: '.',
  units: {},
  choices: {},
  abouts: {},
  findings,
  issues,
  places,
  labels,
  remedies,
  phrases: { ...phrases, ...feedPhrases },
  parts,
  steps,
  cautions,
  tables: { ...tableWords, ...feedTables },
  csv: csvWords,
  waterPath: waterPathWords,
  standCharts: standChartWords,
  sensitivity: sensitivityWords,
  feedViews: feedViewWords,
  beginning,
}
