import { For, Show } from 'solid-js'
import type { Change } from '../../../findings/finding.ts'
import { actsText } from '../../../render/words/remedies.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { fieldAt } from '../model/fields.ts'
import type { Deed, Step } from '../model/history.ts'
import { label, say } from '../words.ts'
import { Beginning } from './Begun.tsx'
import { useBench } from './bench.tsx'
import { PanelFrame } from './PanelFrame.tsx'

const placed = (path: string): string => {
  const name = placeName(path, words())
  return name === path ? label(path, fieldAt(path)) : name
}

/** What was kept as text, as the remedy had it. */
const typed = (text: string): string | boolean | null =>
  text === '' ? null : text === 'true' || text === 'false' ? text === 'true' : text

const changeOf = (deed: Extract<Deed, { kind: 'remedy' }>): Change => ({
  set: deed.path,
  from: typed(deed.from),
  to: typed(deed.to),
})

/** A change in words. */
export function deedText(deed: Deed): string {
  switch (deed.kind) {
    case 'set':
      if (deed.to === '') return say('deed-removed', { place: placed(deed.path), from: deed.from })
      if (deed.from === '') return say('deed-set-new', { place: placed(deed.path), to: deed.to })
      return say('deed-set', { place: placed(deed.path), from: deed.from, to: deed.to })
    case 'remedy':
      return say('deed-remedy', { acts: actsText({ ...changeOf(deed), with: deed.with ?? [] }, words()) })
    default:
      return say(`deed-${deed.kind}`, { name: deed.name })
  }
}

/** Everything that was done, newest first; any state can be gone back to, and forward again. */
export function Changes() {
  const bench = useBench()
  const back = (steps: number): void => {
    for (let i = 0; i < steps; i++) bench.undo()
  }
  const done = (): readonly Step[] => bench.history().done.toReversed()
  return (
    <PanelFrame title={say('change-log')}>
      <Show when={done().length > 0} fallback={<p class="src">{say('no-changes')}</p>}>
        <ol class="log" data-why="fact:changes">
          <For each={done()}>
            {(step, i) => (
              <li>
                <span class="no">{step.number}</span>
                <span>{deedText(step.deed)}</span>
                <Show when={i() > 0}>
                  <button type="button" class="link" onClick={() => back(i())}>
                    {say('go-back-here')}
                  </button>
                </Show>
              </li>
            )}
          </For>
        </ol>
      </Show>
      <Show when={bench.history().beginning}>{(chosen) => <Beginning chosen={chosen()} />}</Show>
    </PanelFrame>
  )
}
