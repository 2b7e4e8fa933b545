import { evaluateDocument } from '../../../evaluate.ts'
import { EXIT, isStop, json } from '../io.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

export const evaluateCommand: CommandOf = {
  name: 'evaluate',
  summary: 'every fact and finding of a plan, as JSON in the engine’s units',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .option('--no-remedies', 'leave out the search for remedies'),
  run: ([path], options) => {
    const read = planFile(path!)
    if (isStop(read)) return read
    const evaluation = evaluateDocument(read.document, { remedies: options['remedies'] !== false })
    json(evaluation)
    if (evaluation.issues.length > 0) return EXIT.input
    return evaluation.findings.some((f) => f.verdict === 'fail') ? EXIT.fails : EXIT.holds
  },
}
