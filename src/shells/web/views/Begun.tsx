import { For, Show } from 'solid-js'
import { shownText, telling } from '../../../render/display.ts'
import { fill } from '../../../render/words/fill.ts'
import { actsText } from '../../../render/words/remedies.ts'
import { words } from '../language.ts'
import type { Chosen } from '../model/chosen.ts'
import { choiceName, say, short } from '../words.ts'
import { useBench } from './bench.tsx'

const told = (key: string): string => words().beginning[key] ?? key

/** One thing that was chosen, in words. */
function chosenText(c: Chosen, bench: ReturnType<typeof useBench>): string {
  if (c.kind === 'changed')
    return fill(told('changed'), { acts: actsText(c.change, words()), finding: short(c.finding) })
  if (c.kind === 'fails') return fill(told('fails'), { finding: short(c.finding) })
  const slot = (v: (typeof c.slots)[string]): string =>
    typeof v === 'object' ? shownText(v, telling('head', bench.display())) : choiceName(String(v))
  return fill(told(c.key), Object.fromEntries(Object.entries(c.slots).map(([k, v]) => [k, slot(v)])))
}

/** What the program chose in a plan that it drew, a sentence each. */
export function Beginning(props: { readonly chosen: readonly Chosen[] }) {
  const bench = useBench()
  return (
    <div class="beginning">
      <h3>{told('title')}</h3>
      <ul data-why="fact:changes">
        <For each={props.chosen}>{(c) => <li>{chosenText(c, bench)}</li>}</For>
      </ul>
    </div>
  )
}

/** The same right after landing, over the findings, until it is put away; and the name, to be changed at once. */
export function Begun() {
  const bench = useBench()
  return (
    <Show when={bench.landed() ? bench.history().beginning : undefined}>
      {(chosen) => (
        <section class="panel begun" aria-label={told('title')}>
          <label class="ask entry">
            <span>{say('new-name')}</span>
            <input
              type="text"
              autocomplete="off"
              value={String(bench.document()['name'] ?? '')}
              onChange={(e) => bench.set('name', e.currentTarget.value.trim())}
            />
          </label>
          <Beginning chosen={chosen()} />
          <p class="act">
            <span class="src">{told('kept')}</span>{' '}
            <button type="button" class="link" onClick={() => bench.setLanded(false)}>
              {told('close')}
            </button>
          </p>
        </section>
      )}
    </Show>
  )
}
