import { For, type JSX, Show } from 'solid-js'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'

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
  readonly rows: readonly { readonly name: string; readonly here: string; readonly there: string }[]
  readonly here: string
  readonly there: string
}) {
  return (
    <table class="diff">
      <thead>
        <tr>
          <td />
          <th scope="col">{props.here}</th>
          <th scope="col">{props.there}</th>
        </tr>
      </thead>
      <tbody data-why="fact:changes">
        <For each={props.rows}>
          {(row) => (
            <tr>
              <th scope="row">{row.name}</th>
              <td>
                <Show when={row.here !== ''} fallback={<span class="blank" />}>
                  {row.here}
                </Show>
              </td>
              <td>
                <Show when={row.there !== ''} fallback={<span class="blank" />}>
                  {row.there}
                </Show>
              </td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  )
}
