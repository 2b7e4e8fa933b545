import { For, Show } from 'solid-js'
import { tongue } from '../language.ts'
import { equationsOf, type ToldEquation } from '../model/equations.ts'
import { say } from '../words.ts'
import { Equation } from './Equation.tsx'
import { SourceLine } from './Source.tsx'

/** The equations behind a finding or fact, with their symbols, range and source; a source said above is not repeated. */
export function RelationsOf(props: { readonly id: string; readonly said?: string }) {
  const docs = equationsOf(() => props.id)
  const source = (doc: ToldEquation): string | undefined =>
    doc.source === props.said || docs()?.find((d) => d.source === doc.source) !== doc ? undefined : doc.source
  return (
    <For each={docs()}>
      {(doc) => (
        <div class="rel" lang={doc.language}>
          <p class="about">{doc.about}</p>
          <Equation text={doc.equation} />
          <p class="src" lang={tongue()}>
            {say('where-symbols')} <span lang={doc.language}>{doc.symbols}</span>.
            <Show when={doc.valid}>
              {' '}
              {say('valid-for')} <span lang={doc.language}>{doc.valid}</span>.
            </Show>
          </p>
          <Show when={source(doc)}>
            {(line) => (
              <div lang={tongue()}>
                <SourceLine line={line()} />
              </div>
            )}
          </Show>
        </div>
      )}
    </For>
  )
}
