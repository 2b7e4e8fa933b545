import { For, Show } from 'solid-js'
import { withSettings } from '../../../findings/apply.ts'
import { inUnit } from '../../../kernel/quantity-text.ts'
import type { Quantity } from '../../../kernel/units.ts'
import { valueAt } from '../../../plan/patch.ts'
import { type Display, decimals, shownText } from '../../../render/display.ts'
import { fill } from '../../../render/words/fill.ts'
import { actsText } from '../../../render/words/remedies.ts'
import { words } from '../language.ts'
import type { Chosen } from '../model/chosen.ts'
import { choiceName, say, short } from '../words.ts'
import { useBench } from './bench.tsx'

const told = (key: string): string => words().beginning[key] ?? key

/** A figure as the boxes of pumps print it. */
function onABox(q: Quantity, display: Display): string {
  const [value, inch] = ['value' in q ? q.value : q.high, display.lengths === 'in']
  const told = (digits: number, unit: string) =>
    `${decimals(inUnit(value, q.unit, unit), digits, display.decimal)} ${unit}`
  if (q.unit === 'm') return inch ? told(1, 'ft') : told(1, 'm')
  if (q.unit !== 'm3_s') return shownText(q, display)
  return inch ? told(0, 'US gph') : told(0, 'L/h')
}

const lower = (text: string): string => text.charAt(0).toLocaleLowerCase() + text.slice(1)

/** One thing that was chosen, in words. */
function chosenText(c: Chosen, bench: ReturnType<typeof useBench>): string {
  if (c.kind === 'changed')
    return fill(told('changed'), { acts: lower(actsText(c.change, words())), finding: short(c.finding) })
  if (c.kind === 'fails') return fill(told('fails'), { finding: short(c.finding) })
  const slot = (v: (typeof c.slots)[string]): string =>
    typeof v === 'object' ? onABox(v, bench.display()) : choiceName(String(v))
  return fill(told(c.key), Object.fromEntries(Object.entries(c.slots).map(([k, v]) => [k, slot(v)])))
}

/** What only the grower can say will be done, with the button that says so until the plan holds it. */
function Promised(props: { readonly of: Chosen }) {
  const bench = useBench()
  const promise = () => {
    const p = props.of.kind === 'said' ? props.of.promise : undefined
    return p && [p, ...p.with].some(({ set, to }) => valueAt(bench.document(), set) !== to) ? p : null
  }
  const take = ({ with: others, ...p }: NonNullable<ReturnType<typeof promise>>): void =>
    bench.exchange(withSettings(bench.document(), [p, ...others]), {
      kind: 'remedy',
      path: p.set,
      from: String(p.from ?? ''),
      to: String(p.to ?? ''),
      with: others,
    })
  return (
    <Show when={promise()}>
      {(p) => (
        <>
          {' '}
          <button type="button" class="link" onClick={() => take(p())}>
            {told('tie-do')}
          </button>
        </>
      )}
    </Show>
  )
}

/** What the program chose in a plan that it drew, a sentence each. */
export function Beginning(props: { readonly chosen: readonly Chosen[] }) {
  const bench = useBench()
  return (
    <div class="beginning">
      <h3>{told('title')}</h3>
      <ul data-why="fact:changes">
        <For each={props.chosen}>
          {(c) => (
            <li>
              {chosenText(c, bench)}
              <Promised of={c} />
            </li>
          )}
        </For>
      </ul>
    </div>
  )
}

/** The same right after landing, over the findings, until it is put away; and the name, to be changed at once. */
export function Begun() {
  const bench = useBench()
  return (
    <Show when={bench.landed() ? bench.history().beginning : undefined}>
      {(chosen) => (
        <section class="panel begun" aria-label={told('title')}>
          <label class="ask entry">
            <span>{say('new-name')}</span>
            <input
              type="text"
              autocomplete="off"
              value={String(bench.document()['name'] ?? '')}
              onChange={(e) => bench.set('name', e.currentTarget.value.trim())}
            />
          </label>
          <Beginning chosen={chosen()} />
          <p class="act">
            <span class="src">{told('kept')}</span>{' '}
            <button type="button" class="link" onClick={() => bench.setLanded(false)}>
              {told('close')}
            </button>
          </p>
        </section>
      )}
    </Show>
  )
}
