import { planFrom } from '../model/files.ts'
import type { Workbench } from '../model/workbench.ts'
import { say } from '../words.ts'

/** Takes up a plan from the text of a file; a text that is none leaves the open plan and says why. */
export function taken(bench: Workbench, text: string): void {
  const read = planFrom(text)
  if ('document' in read) {
    bench.setRefused('')
    void bench.takeUp(read.document, true)
    return
  }
  bench.setPanel('plans')
  bench.setRefused(say('cannot-open', { why: read.why }))
}
