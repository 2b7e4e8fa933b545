import { Show } from 'solid-js'
import type { Finding, Remedy } from '../../../findings/finding.ts'
import { actsText, remedyTexts } from '../../../render/words/remedies.ts'
import { figureOf } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { ofFinding } from '../model/reasons.ts'
import { say } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'

/** A proved change: the act in a sentence, the number before and after, what else it cures; one button makes it. */
export function RemedyView(props: { readonly finding: Finding; readonly remedy: Remedy }) {
  const bench = useBench()
  const key = () => findingKey(props.finding)
  const held = () => bench.ghost()?.key === key() && bench.ghost()?.remedy === props.remedy
  const figure = () => figureOf(props.finding.id, bench.display())
  const told = () => remedyTexts(props.finding, props.remedy, words(), figure())
  return (
    <div class="rem" classList={{ held: held() }} data-why={ofFinding(key())}>
      <p class="rh">{told().says}</p>
      <p class="ba">
        <Show when={props.finding.measured && props.remedy.gives}>
          {(gives) => (
            <span>
              <span>{figure()(props.finding.measured!)}</span> <span class="ar">→</span> <b>{figure()(gives())}</b>
            </span>
          )}
        </Show>
        <span class="cures">{say('cures-none')}</span>
      </p>
      <Show when={told().leaves}>{(text) => <p class="src">{text()}</p>}</Show>
      <Show when={told().also}>{(text) => <p class="src">{text()}</p>}</Show>
      <Show when={told().reveals}>{(text) => <p class="src reveals">{text()}</p>}</Show>
      <p class="act">
        <button type="button" class="do" onClick={() => bench.take(props.remedy)}>
          {say('make-change')}
        </button>
        <button
          type="button"
          class="link"
          aria-pressed={held()}
          onClick={() => void bench.hold(key(), held() ? null : props.remedy, actsText(props.remedy, words()))}
        >
          {say(held() ? 'let-go' : 'hold-change')}
        </button>
      </p>
    </div>
  )
}
