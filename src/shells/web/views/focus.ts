import { partOf } from '../model/parts.ts'
import type { Workbench } from '../model/workbench.ts'

/** The id of a field's input on the page. */
export const fieldId = (path: string): string => `field-${path.replace(/[^a-zA-Z0-9]/g, '-')}`

/** Chooses the part of a place of the plan and puts the caret into its field. */
export function goToField(bench: Workbench, path: string): void {
  const part = partOf(path)
  bench.setSlip(null)
  bench.setPanel(null)
  bench.setAct('draw')
  if (bench.part() !== part) {
    bench.setPart(part)
    bench.setFront(part)
  }
  bench.setWanted(path)
  queueMicrotask(() => {
    const input = document.getElementById(fieldId(path))
    if (input instanceof HTMLElement) {
      input.focus()
      input.scrollIntoView({ block: 'nearest' })
      if (input instanceof HTMLInputElement) input.select()
    }
  })
}
