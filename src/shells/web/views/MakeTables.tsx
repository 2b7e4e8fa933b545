import { For, Show } from 'solid-js'
import type { BuildFacts } from '../../../disciplines/build/index.ts'
import type { CutsFacts } from '../../../disciplines/cuts/index.ts'
import type { PartsFacts } from '../../../disciplines/parts/index.ts'
import { materialText, patternTexts } from '../../../render/tables/cuts.ts'
import { partTexts, totalText } from '../../../render/tables/parts.ts'
import { stepTexts } from '../../../render/tables/steps.ts'
import { words } from '../language.ts'
import { ofFact, type Reason } from '../model/reasons.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'

/** A heading whose numbers have one why, opened beside it. */
function WhyHead(props: { readonly title: string; readonly why: Reason }) {
  const bench = useBench()
  return (
    <h2>
      {props.title}{' '}
      <button type="button" class="link src" onClick={(e) => bench.explain(props.why, e.currentTarget)}>
        {say('why')}
      </button>
    </h2>
  )
}

/** How the lengths are cut, material by material. */
export function Cuts(props: { readonly cuts: CutsFacts }) {
  const bench = useBench()
  return (
    <section data-why="fact:cuts">
      <WhyHead title={say('cuts')} why={ofFact('cuts')} />
      <For each={props.cuts.materials}>
        {(m) => (
          <>
            <p>{materialText(m, words(), bench.display())}</p>
            <ul class="patterns">
              <For each={patternTexts(m, words(), bench.display())}>
                {(p) => (
                  <li>
                    <b>{p.times} ×</b> {p.length}: {p.pieces} <span class="u">({p.rest})</span>
                  </li>
                )}
              </For>
            </ul>
          </>
        )}
      </For>
    </section>
  )
}

export function Parts(props: { readonly parts: PartsFacts }) {
  const bench = useBench()
  return (
    <section data-why="fact:parts">
      <WhyHead title={say('parts')} why={ofFact('parts')} />
      <table class="parts">
        <tbody>
          <For each={partTexts(props.parts, words(), bench.display())}>
            {(p) => (
              <tr>
                <th scope="row">
                  {p.name}
                  <Show when={p.size !== ''}>
                    <span class="src"> {p.size}</span>
                  </Show>
                </th>
                <td>{p.count}</td>
                <td>{p.price}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p class="src">{totalText(props.parts, words(), bench.display())}</p>
    </section>
  )
}

/** The steps in order, cautions at the step, the test that must hold before the next. */
export function Steps(props: { readonly build: BuildFacts }) {
  const bench = useBench()
  return (
    <section class="steps" data-why="fact:steps">
      <WhyHead title={say('steps')} why={ofFact('steps')} />
      <ol>
        <For each={stepTexts(props.build, words(), bench.display())}>
          {(s) => (
            <li>
              <h3>
                <span class="no">{s.number}</span> {s.title} <span class="u">{s.hands}</span>
              </h3>
              <For each={s.waits}>{(t) => <p class="src">{t}</p>}</For>
              <For each={s.cautions}>{(t) => <p class="caution">{t}</p>}</For>
              <ul>
                <For each={s.acts}>{(t) => <li>{t}</li>}</For>
              </ul>
              <Show when={s.test}>{(t) => <p class="test">{t()}</p>}</Show>
            </li>
          )}
        </For>
      </ol>
    </section>
  )
}
