import { createUniqueId, For, Show } from 'solid-js'
import { nameOf } from '../model/entries.ts'
import { fieldAt } from '../model/fields.ts'
import { ofField } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { late } from './arriving.ts'
import { useBench } from './bench.tsx'
import { addTo, fieldId } from './focus.ts'

/** One more entry of a list; where entries go by a name, of a table or one's own, that is asked for. */
export function Adder(props: { readonly path: string }) {
  const bench = useBench()
  const names = createUniqueId()
  const named = () => fieldAt(props.path)?.kind === 'map' || nameOf(props.path) !== null
  const text = () => say('add-entry', { what: label(props.path) })
  return (
    <p class="adder" data-why={ofField(props.path)}>
      <Show
        when={named()}
        fallback={
          <button type="button" class="link" id={fieldId(props.path)} onClick={() => addTo(bench, props.path)}>
            {text()}
          </button>
        }
      >
        <span class="fd wide">
          <label class="lb" for={fieldId(props.path)}>
            {text()}
          </label>
          <span class="entry long blank">
            <input
              id={fieldId(props.path)}
              type="text"
              autocomplete="off"
              spellcheck={false}
              list={names}
              onChange={(e) => {
                const typed = e.currentTarget.value
                e.currentTarget.value = ''
                if (typed.trim() !== '') addTo(bench, props.path, typed)
              }}
            />
          </span>
        </span>
        <datalist id={names}>
          <For each={late()?.namesFor(props.path) ?? []}>{(name) => <option value={name} />}</For>
        </datalist>
      </Show>
    </p>
  )
}
