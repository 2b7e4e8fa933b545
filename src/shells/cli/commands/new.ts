import { existsSync } from 'node:fs'
import { nearestWords } from '../../../kernel/nearest.ts'
import { planText } from '../../../plan/document.ts'
import { exampleNames, exampleOf } from '../examples.ts'
import { EXIT, json, out, say, stop, writeWhole } from '../io.ts'
import type { CommandOf } from '../main.ts'

export const fresh: CommandOf = {
  name: 'new',
  summary: 'write a new plan file, begun from one of the examples',
  describe: (c) =>
    c
      .argument('<file>', 'where to write it, or - for standard output')
      .option('--from <example>', `begin from: ${exampleNames.join(', ')}`, 'balcony')
      .option('--name <name>', 'name of the tower'),
  run: ([path], options) => {
    const from = String(options['from'])
    const example = exampleOf(from)
    if (!example) {
      const near = nearestWords(from, exampleNames)
      return stop(
        `There is no example “${from}”. ${near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${exampleNames.join(', ')}.`}`,
        EXIT.usage,
      )
    }
    const document = options['name'] === undefined ? example : { ...example, name: String(options['name']) }
    if (path === '-' || options['json']) {
      if (path === '-') out(planText(document))
      else json(document)
      return EXIT.holds
    }
    if (existsSync(path!))
      return stop(`${path} is there already and was left as it is. Choose another name.`, EXIT.usage)
    writeWhole(path!, planText(document))
    say(`Wrote ${path}. Next: rootfall check ${path}`)
    return EXIT.holds
  },
}
