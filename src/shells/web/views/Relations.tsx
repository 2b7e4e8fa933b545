import { For, Show } from 'solid-js'
import { equationDocs } from '../model/equations.ts'
import { relations } from '../model/relations.ts'
import { say } from '../words.ts'
import { Equation } from './Equation.tsx'

/** The equations behind a finding or fact, with their symbols and range. */
export function RelationsOf(props: { readonly id: string }) {
  const names = () => relations[props.id] ?? []
  const docs = equationDocs(() => names().length > 0)
  return (
    <For each={names()}>
      {(name) => (
        <Show when={docs()?.[name]}>
          {(doc) => (
            <div class="rel">
              <p class="about">{doc().about}</p>
              <Equation text={doc().equation} />
              <p class="src">
                {say('where-symbols')} {doc().symbols}.
                <Show when={doc().valid}>
                  {' '}
                  {say('valid-for')} {doc().valid}.
                </Show>
              </p>
            </div>
          )}
        </Show>
      )}
    </For>
  )
}
