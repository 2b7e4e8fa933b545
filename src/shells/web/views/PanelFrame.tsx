import { For, type JSX, Show } from 'solid-js'
import type { Difference } from '../model/differences.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { Numbered, NumberTable } from './Grid.tsx'

/** A panel takes the place of the words; it never floats over them. */
export function PanelFrame(props: { readonly title: string; readonly children: JSX.Element }) {
  const bench = useBench()
  return (
    <section class="panel" aria-label={props.title}>
      <h2>{props.title}</h2>
      {props.children}
      <p class="act">
        <button type="button" class="link" onClick={() => bench.setPanel(null)}>
          {say('close')}
        </button>
      </p>
    </section>
  )
}

/** Two columns of what differs. */
export function Differences(props: {
  readonly rows: readonly Difference[]
  readonly label: string
  readonly here: string
  readonly there: string
}) {
  return (
    <NumberTable class="diff" label={props.label}>
      <thead>
        <tr>
          <td />
          <th scope="col">{props.here}</th>
          <th scope="col">{props.there}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {(row) => (
            <tr>
              <th scope="row">{row.name}</th>
              <td>
                <Show when={row.here !== ''} fallback={<span class="blank" />}>
                  <Numbered text={row.here} why={row.why} />
                </Show>
              </td>
              <td>
                <Show when={row.there !== ''} fallback={<span class="blank" />}>
                  <Numbered text={row.there} why={row.why} />
                </Show>
              </td>
            </tr>
          )}
        </For>
      </tbody>
    </NumberTable>
  )
}
