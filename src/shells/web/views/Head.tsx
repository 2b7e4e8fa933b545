import { For, Show } from 'solid-js'
import { quantity } from '../../../kernel/units.ts'
import { shownText } from '../../../render/display.ts'
import { ofField } from '../model/reasons.ts'
import type { Act } from '../model/state.ts'
import { tended } from '../model/tended.ts'
import { say } from '../words.ts'
import type { Told } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'

const acts: readonly Act[] = ['draw', 'make', 'tend']

/** An act without anything in it is left out. */
function filled(act: Act, e: Told | null): boolean {
  if (act !== 'tend' || e === null) return true
  return Object.values(tended(e)).some(Boolean)
}

/** Name and place of the tower, and the three acts. */
export function Head() {
  const bench = useBench()
  const name = () => String(bench.document()['name'] ?? say('plans'))
  const place = () => {
    const e = bench.evaluated()
    if (!e) return null
    const { plan, facts } = e
    const sites = 'known' in facts.layout ? facts.layout.known.plants : null
    const pipe = plan.column?.pipe
    return [
      plan.place?.name,
      sites === null ? null : say('sites', { count: sites }),
      pipe ? shownText(quantity(pipe.outside_m, 'm'), bench.display()).replace(/[.,]0(?= )/, '') : null,
    ]
      .filter((t) => t)
      .join(', ')
  }
  return (
    <header>
      <div class="who">
        <h1>{name()}</h1>
        <Show when={place()}>
          <button
            type="button"
            class="where"
            data-why={ofField('place/name')}
            onClick={() => {
              bench.setAct('draw')
              bench.choose('place')
            }}
          >
            {place()}
          </button>
        </Show>
      </div>
      <nav class="acts" aria-label={say('acts')}>
        <For each={acts.filter((act) => filled(act, bench.evaluated()))}>
          {(act) => (
            <button
              type="button"
              aria-current={bench.act() === act ? 'page' : undefined}
              onClick={() => {
                bench.setPanel(null)
                bench.setAct(act)
              }}
            >
              {say(act)}
            </button>
          )}
        </For>
      </nav>
    </header>
  )
}
