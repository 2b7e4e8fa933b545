import { createResource, createSignal, For, Show } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import { exampleNames, exampleOf } from '../examples.ts'
import { fieldDifferences, findingDifferences, measureDifferences, sitesDiffer } from '../model/differences.ts'
import { begun, type History, undo } from '../model/history.ts'
import { listPlans, readPlan } from '../model/plans.ts'
import { say, sayable } from '../words.ts'
import type { Told } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'
import { Differences, PanelFrame } from './PanelFrame.tsx'

/** The plan as it was before the first step that is remembered. */
function atFirst(history: History): PlanDocument {
  let h = history
  while (h.done.length > 0) h = undo(h)
  return begun(h.document).document
}

/** What two designs come to, where that differs; and a word where they are of different size. */
function Measures(props: { readonly there: Told | null }) {
  const bench = useBench()
  const measures = () => {
    const [here, there] = [bench.evaluated(), props.there]
    if (!here || !there) return { rows: [], uneven: false }
    return { rows: measureDifferences(here, there, bench.display()), uneven: sitesDiffer(here, there) }
  }
  return (
    <>
      <Show when={measures().rows.length > 0}>
        <h3>{say('compare-measures')}</h3>
        <Differences label={say('compare-measures')} rows={measures().rows} here={say('here')} there={say('there')} />
      </Show>
      <Show when={measures().uneven}>
        <p role="status">{say('compare-uneven')}</p>
      </Show>
    </>
  )
}

/** Two plans by the same metrics, differences only. */
export function Compare() {
  const bench = useBench()
  const [plans] = createResource(() => listPlans().catch(() => []))
  const [with_, setWith] = createSignal('before')
  const [other] = createResource(
    () => [with_(), with_() === 'before' ? atFirst(bench.history()) : null] as const,
    async ([name, first]): Promise<PlanDocument | null> => {
      if (first !== null) return first
      const [kind, id] = name.split(':') as [string, string]
      if (kind === 'example') return exampleOf(id)
      const file = await readPlan(id)
      return file === null ? null : (JSON.parse(file.text) as PlanDocument)
    },
  )
  const [judged] = createResource(other, (document) => bench.tryOut(document))
  const fields = () => {
    const there = other()
    return there ? fieldDifferences(bench.document(), there) : []
  }
  const findings = () => {
    const there = judged()
    return there ? findingDifferences(bench.evaluated()?.findings ?? [], there.findings, bench.display()) : []
  }
  return (
    <PanelFrame title={say('compare-title')}>
      <label class="pick">
        {say('compare-with')}{' '}
        <select onChange={(e) => setWith(e.currentTarget.value)}>
          <option value="before">{say('compare-before')}</option>
          <For each={(plans() ?? []).filter((p) => p.id !== bench.id())}>
            {(p) => <option value={`plan:${p.id}`}>{p.name || p.id}</option>}
          </For>
          <For each={exampleNames}>
            {(name) => {
              const key = `example-${name}`
              return <option value={`example:${name}`}>{sayable(key) ? say(key) : name}</option>
            }}
          </For>
        </select>
      </label>
      <Show
        when={fields().length > 0 || findings().length > 0}
        fallback={<p class="src">{say(other.loading || judged.loading ? 'computing' : 'compare-same')}</p>}
      >
        <Measures there={judged() ?? null} />
        <h3>{say('compare-findings')}</h3>
        <Show when={!judged.loading} fallback={<p role="status">{say('computing')}</p>}>
          <Differences label={say('compare-findings')} rows={findings()} here={say('here')} there={say('there')} />
        </Show>
        <h3>{say('compare-fields')}</h3>
        <Differences label={say('compare-fields')} rows={fields()} here={say('here')} there={say('there')} />
      </Show>
    </PanelFrame>
  )
}
