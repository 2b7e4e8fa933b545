import { For, Show } from 'solid-js'
import type { BuildFacts } from '../../../disciplines/build/index.ts'
import type { CutsFacts } from '../../../disciplines/cuts/index.ts'
import type { NutrientsFacts } from '../../../disciplines/nutrients/index.ts'
import type { PartsFacts } from '../../../disciplines/parts/index.ts'
import { materialText, patternTexts } from '../../../render/tables/cuts.ts'
import { packsText, packTexts } from '../../../render/tables/packs.ts'
import { partTexts, totalText } from '../../../render/tables/parts.ts'
import { stepTexts } from '../../../render/tables/steps.ts'
import { words } from '../language.ts'
import { fieldAt } from '../model/fields.ts'
import { ofFact, ofField, type Reason } from '../model/reasons.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { Numbered, NumberTable } from './Grid.tsx'
import { roving } from './roving.ts'

/** How the lengths are cut, material by material. */
export function Cuts(props: { readonly cuts: CutsFacts }) {
  const bench = useBench()
  return (
    <section ref={roving}>
      <h2>{say('cuts')}</h2>
      <For each={props.cuts.materials}>
        {(m) => (
          <>
            <p>
              <Numbered text={materialText(m, words(), bench.display())} why={ofFact('cuts')} />
            </p>
            <ul class="patterns">
              <For each={patternTexts(m, words(), bench.display())}>
                {(p) => (
                  <li>
                    <b>
                      <Numbered text={p.times} why={ofFact('cuts')} /> ×
                    </b>{' '}
                    <Numbered text={p.length} why={ofField('stock/lengths')} />:{' '}
                    <Numbered text={p.pieces} why={ofFact('cuts')} />{' '}
                    <span class="u">
                      (<Numbered text={p.rest} why={ofFact('cuts')} />)
                    </span>
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

/** The price of a part, where the plan has a field for it. */
const priceWhy = (id: string): Reason => (fieldAt(`prices/${id}`) ? ofField(`prices/${id}`) : ofFact('parts'))

export function Parts(props: { readonly parts: PartsFacts; readonly feed: Pick<NutrientsFacts, 'packs'> }) {
  const bench = useBench()
  return (
    <section>
      <h2>{say('parts')}</h2>
      <NumberTable class="parts" label={say('parts')}>
        <tbody>
          <For each={partTexts(props.parts, words(), bench.display())}>
            {(p) => (
              <tr>
                <th scope="row">
                  {p.name}
                  <Show when={p.size !== ''}>
                    <span class="src">
                      {' '}
                      <Numbered text={p.size} why={ofFact('parts')} />
                    </span>
                  </Show>
                </th>
                <td>
                  <Numbered text={p.count} why={ofFact('parts')} />
                </td>
                <td>
                  <Numbered text={p.price} why={priceWhy(p.id)} />
                </td>
              </tr>
            )}
          </For>
          <For each={packTexts(props.feed, words(), bench.display())}>
            {(p) => (
              <tr>
                <th scope="row">
                  {p.name}{' '}
                  <span class="src">
                    <Numbered text={p.size} why={ofField('feed/shelf')} />
                  </span>
                </th>
                <td>
                  <Numbered text={p.count} why={ofField('feed/shelf')} />
                </td>
                <td>
                  <Numbered text={p.price} why={ofField('feed/shelf')} />
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </NumberTable>
      <p class="src" ref={roving}>
        <Numbered text={totalText(props.parts, words(), bench.display())} why={ofFact('parts')} />{' '}
        <Numbered text={packsText(props.feed, words(), bench.display())} why={ofField('feed/shelf')} />
      </p>
    </section>
  )
}

function Line(props: { readonly class: string; readonly text: string }) {
  return (
    <p class={props.class}>
      <Numbered text={props.text} why={ofFact('steps')} />
    </p>
  )
}

/** The steps in order, cautions at the step, the test that must hold before the next. */
export function Steps(props: { readonly build: BuildFacts }) {
  const bench = useBench()
  return (
    <section class="steps" ref={roving}>
      <h2>{say('steps')}</h2>
      <ol>
        <For each={stepTexts(props.build, words(), bench.display())}>
          {(s) => (
            <li>
              <h3>
                <span class="no">
                  <Numbered text={String(s.number)} why={ofFact('steps')} />
                </span>{' '}
                <Numbered text={s.title} why={ofFact('steps')} />{' '}
                <span class="u">
                  <Numbered text={s.hands} why={ofFact('steps')} />
                </span>
              </h3>
              <For each={s.waits}>{(t) => <Line class="src" text={t} />}</For>
              <For each={s.cautions}>{(t) => <Line class="caution" text={t} />}</For>
              <ul>
                <For each={s.acts}>
                  {(t) => (
                    <li>
                      <Numbered text={t} why={ofFact('steps')} />
                    </li>
                  )}
                </For>
              </ul>
              <Show when={s.test}>{(t) => <Line class="test" text={t()} />}</Show>
            </li>
          )}
        </For>
      </ol>
    </section>
  )
}
