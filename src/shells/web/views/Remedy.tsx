import { For, Show } from 'solid-js'
import type { Finding, Remedy } from '../../../findings/finding.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { ofField, ofFinding } from '../model/reasons.ts'
import { say } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'
import { Bare } from './Figure.tsx'

/** A value of the plan as a person says it. */
const told = (value: string | number | boolean | null): string =>
  typeof value === 'boolean' ? say(value ? 'yes' : 'no') : String(value ?? '')

/** A proved change: what it turns, the number before and after, what else it cures; one button makes it. */
export function RemedyView(props: { readonly finding: Finding; readonly remedy: Remedy }) {
  const bench = useBench()
  const key = () => findingKey(props.finding)
  const held = () => bench.ghost()?.key === key() && bench.ghost()?.remedy === props.remedy
  const also = () => props.remedy.alsoCures.map((id) => words().findings[id]?.short ?? id)
  const revealed = () => props.remedy.reveals.map((name) => words().findings[name.split(' ')[0] ?? '']?.short ?? name)
  return (
    <div class="rem" classList={{ held: held() }}>
      <p class="rh" data-why={ofField(props.remedy.set)}>
        {placeName(props.remedy.set, words())} <s>{told(props.remedy.from)}</s> <span class="ar">→</span>{' '}
        <b>{told(props.remedy.to)}</b>
      </p>
      <For each={props.remedy.with}>
        {(change) => (
          <p class="rh" data-why={ofField(change.set)}>
            {placeName(change.set, words())} <s>{told(change.from)}</s> <span class="ar">→</span>{' '}
            <b>{told(change.to)}</b>
          </p>
        )}
      </For>
      <p class="ba" data-why={ofFinding(key())}>
        <Show when={props.finding.measured}>{(m) => <Bare of={m()} why={ofFinding(key())} />}</Show>
        <span class="ar">→</span>
        <b>
          <Show when={props.remedy.gives}>{(gives) => <Bare of={gives()} why={ofFinding(key())} />}</Show>
        </b>
        <span class="cures">
          {also().length === 0 ? say('cures-none') : say('cures-also', { list: also().join(', ') })}
        </span>
      </p>
      <Show when={props.remedy.leaves === 'watch'}>
        <p class="src">{words().phrases['leaves-watch']}</p>
      </Show>
      <Show when={revealed().length > 0}>
        <p class="src reveals">{say('reveals', { list: revealed().join(', ') })}</p>
      </Show>
      <p class="act">
        <button type="button" class="do" onClick={() => bench.take(props.remedy)}>
          {say('make-change')}
        </button>
        <button
          type="button"
          class="link"
          aria-pressed={held()}
          onClick={() => void bench.hold(key(), held() ? null : props.remedy)}
        >
          {say(held() ? 'let-go' : 'hold-change')}
        </button>
      </p>
    </div>
  )
}
