import { For, Show } from 'solid-js'
import { equationsOf } from '../model/equations.ts'
import { say } from '../words.ts'
import { Equation } from './Equation.tsx'

/** The equations behind a finding or fact, with their symbols, range and source. */
export function RelationsOf(props: { readonly id: string }) {
  const docs = equationsOf(() => props.id)
  return (
    <For each={docs()}>
      {(doc) => (
        <div class="rel">
          <p class="about">{doc.about}</p>
          <Equation text={doc.equation} />
          <p class="src">
            {say('where-symbols')} {doc.symbols}.
            <Show when={doc.valid}>
              {' '}
              {say('valid-for')} {doc.valid}.
            </Show>
          </p>
        </div>
      )}
    </For>
  )
}
