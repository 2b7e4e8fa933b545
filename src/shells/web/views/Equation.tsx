import { For, Match, Switch } from 'solid-js'
import { typeset } from '../model/typeset.ts'

/** An equation as in a book: symbols italic, indices low, the rest upright. */
export function Equation(props: { readonly text: string }) {
  return (
    <For each={props.text.split('\n')}>
      {(line) => (
        <p class="eq">
          <For each={typeset(line)}>
            {(run) => (
              <Switch fallback={run.text}>
                <Match when={run.kind === 'symbol'}>
                  <em>{run.text}</em>
                </Match>
                <Match when={run.kind === 'sub'}>
                  <sub>{run.text}</sub>
                </Match>
                <Match when={run.kind === 'sup'}>
                  <sup>{run.text}</sup>
                </Match>
              </Switch>
            )}
          </For>
        </p>
      )}
    </For>
  )
}
