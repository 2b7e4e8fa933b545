import { For, Show } from 'solid-js'
import { makeList } from '../makes.tsx'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'

/** What exists to be made from; nothing else is promised. */
export function Make() {
  const bench = useBench()
  const shown = () => {
    const e = bench.evaluated()
    return e?.whole ? makeList.filter((m) => m.exists(e)) : []
  }
  return (
    <div class="make">
      <Show when={shown().length > 0} fallback={<p class="src">{say('make-empty')}</p>}>
        <For each={shown()}>{(m) => <Show when={bench.evaluated()}>{(e) => m.view(e())}</Show>}</For>
      </Show>
    </div>
  )
}
