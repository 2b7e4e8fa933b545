import { createResource, createSignal, For, onCleanup, Show } from 'solid-js'
import { exampleNames, exampleOf } from '../examples.ts'
import { downloadPlan } from '../model/files.ts'
import { listPlans } from '../model/plans.ts'
import { say, sayable } from '../words.ts'
import { useBench } from './bench.tsx'
import { PanelFrame } from './PanelFrame.tsx'
import { taken } from './taken.ts'

/** Plans of the folder. */
function Kept() {
  const bench = useBench()
  const [plans] = createResource(() => listPlans().catch(() => []))
  return (
    <>
      <h3>{say('open-plan')}</h3>
      <Show when={(plans() ?? []).length > 0} fallback={<p class="src">{say('no-plans')}</p>}>
        <ul class="list">
          <For each={plans()}>
            {(p) => (
              <li>
                <button
                  type="button"
                  class="link"
                  aria-current={p.id === bench.id() ? 'true' : undefined}
                  onClick={() => void bench.openPlan(p.id)}
                >
                  {p.name || p.id}
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </>
  )
}

function Examples() {
  const bench = useBench()
  const openExample = async (name: string): Promise<void> => {
    const plan = await exampleOf(name)
    if (plan) await bench.takeUp(plan, false)
  }
  return (
    <>
      <h3>{say('examples')}</h3>
      <ul class="list" data-why="fact:changes">
        <For each={exampleNames}>
          {(name) => {
            const key = `example-${name}`
            return (
              <li>
                <button type="button" class="link" onClick={() => void openExample(name)}>
                  {sayable(key) ? say(key) : name}
                </button>
              </li>
            )
          }}
        </For>
      </ul>
    </>
  )
}

/** Opening, keeping and passing on plans. */
export function Plans() {
  const bench = useBench()
  const [pasted, setPasted] = createSignal('')
  const takeUp = (text: string): void => taken(bench, text)
  onCleanup(() => bench.setRefused(''))
  return (
    <PanelFrame title={say('plans')}>
      <p class="choices">
        <button type="button" class="do" onClick={() => bench.setPanel('new')}>
          {say('new-plan')}
        </button>
        <button type="button" class="link" onClick={() => downloadPlan(bench.document())}>
          {say('save-copy')}
        </button>
      </p>
      <Kept />
      <Examples />
      <h3>{say('open-file')}</h3>
      <p>
        <input
          type="file"
          accept=".json,application/json"
          aria-label={say('open-file')}
          onChange={(e) => void e.currentTarget.files?.[0]?.text().then(takeUp)}
        />
      </p>
      <p class="src">{say('drop-here')}</p>
      <label class="paste">
        {say('paste-hint')}
        <textarea rows="3" spellcheck={false} onInput={(e) => setPasted(e.currentTarget.value)} />
      </label>
      <Show when={pasted() !== ''}>
        <p>
          <button type="button" class="do" onClick={() => takeUp(pasted())}>
            {say('open-pasted')}
          </button>
        </p>
      </Show>
      <p class="issue" role="alert">
        {bench.refused()}
      </p>
    </PanelFrame>
  )
}
