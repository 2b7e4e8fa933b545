import { planSchema } from '../../../plan/schema.ts'
import { EXIT, json } from '../io.ts'
import type { CommandOf } from '../main.ts'

export const schema: CommandOf = {
  name: 'schema',
  summary: 'the JSON Schema (2020-12) of a plan file',
  describe: (c) => c,
  run: () => {
    json(planSchema())
    return EXIT.holds
  },
}
