import { batch } from 'solid-js'
import { addition, firstOf, placed } from '../model/entries.ts'
import { fieldAt } from '../model/fields.ts'
import { shownIn } from '../model/parts.ts'
import type { Workbench } from '../model/workbench.ts'

/** The id of a field's input on the page. */
export const fieldId = (path: string): string => `field-${path.replace(/[^a-zA-Z0-9]/g, '-')}`

/** Chooses the part of a place of the plan and puts the caret into its field; a list or map gets its next entry. */
export function goToField(bench: Workbench, path: string): void {
  const to = placed(path)
  const field = fieldAt(to)
  const leaf = field === null ? to : firstOf(field, to)
  const part = shownIn(to)
  bench.setSlip(null)
  bench.setPanel(null)
  bench.setAct('draw')
  if (bench.part() !== part) {
    bench.setPart(part)
    bench.setFront(part)
  }
  bench.setWanted(leaf)
  queueMicrotask(() => caretInto(leaf))
}

function caretInto(path: string): void {
  const there = document.getElementById(fieldId(path))
  if (there === null) return
  there.focus()
  there.scrollIntoView({ block: 'nearest' })
  if (there instanceof HTMLInputElement) there.select()
}

/** One more entry of a list, or of a map under a name; the caret goes into what is to be filled. */
export function addTo(bench: Workbench, path: string, typed = ''): void {
  const to = placed(path)
  const { put, fill } = addition(bench.document(), to, typed)
  batch(() => {
    if (put) bench.set(put[0], put[1])
    goToField(bench, fill)
  })
}

/** To what a finding misses: a list or map is there for its next entry, everything else is a field. */
export function toNeed(bench: Workbench, path: string): void {
  const kind = fieldAt(placed(path))?.kind
  if (kind === 'list') addTo(bench, path)
  else goToField(bench, path)
}
