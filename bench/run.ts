// Races against general-purpose solvers, printed as ratios: results are compared before times, never as a timed test.

import { readdirSync } from 'node:fs'
import { loadavg } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

interface Lap {
  readonly label: string
  readonly agreed: boolean
  readonly detail: string
  readonly ratio: number
  readonly limit: number
}

interface Bench {
  readonly name: string
  readonly run: () => Promise<readonly Lap[]>
}

const only = process.argv[2]
const files = readdirSync(import.meta.dirname).filter(
  (f) => f.endsWith('.bench.ts') && (only === undefined || f.startsWith(only)),
)
let missed = 0
process.stdout.write(
  `load average ${loadavg()
    .map((x) => x.toFixed(2))
    .join(' ')}\n`,
)
for (const file of files) {
  const { bench } = (await import(pathToFileURL(join(import.meta.dirname, file)).href)) as { bench: Bench }
  process.stdout.write(`\n${bench.name}\n`)
  for (const lap of await bench.run()) {
    const within = lap.ratio <= lap.limit
    if (!lap.agreed || !within) missed++
    const results = lap.agreed ? 'results agree' : 'RESULTS DIFFER'
    process.stdout.write(
      `  ${lap.label}: ${results}; ratio ${lap.ratio.toPrecision(3)}, goal at most ${lap.limit}${within ? '' : ' MISSED'}\n      ${lap.detail}\n`,
    )
  }
}
process.stdout.write(`\n${missed === 0 ? 'every goal met' : `${missed} goals missed`}\n`)
process.exit(missed === 0 ? 0 : 1)
