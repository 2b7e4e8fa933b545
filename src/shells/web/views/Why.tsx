import { For, Show } from 'solid-js'
import type { Finding, Remedy } from '../../../findings/finding.ts'
import { valueAt } from '../../../plan/patch.ts'
import { findingText, placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { sourceOfRow } from '../model/citations.ts'
import { fieldAt } from '../model/fields.ts'
import { ofField, ofFinding } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'
import { toNeed } from './focus.ts'
import { RelationsOf } from './Relations.tsx'
import { RemedyView } from './Remedy.tsx'
import { Ruler } from './Ruler.tsx'
import { AskWhichDecides } from './Sensitivity.tsx'
import { SourceOf } from './Source.tsx'

/** Fields that a finding rests on: those that its levers turn, those that it misses, the place it points at. */
function inputsOf(finding: Finding): readonly string[] {
  const all = [...finding.needs, ...finding.levers.map((l) => l.set), finding.at]
  return [...new Set(all)].filter((path) => {
    const kind = fieldAt(path)?.kind
    const whole = kind === 'section' || kind === 'list' || kind === 'map'
    return kind !== undefined && (!whole || finding.needs.includes(path))
  })
}

/** Why a finding says what it says: ruler, sentence and remedies; then reason and source, inputs, equations. */
export function Why(props: { readonly finding: Finding }) {
  const bench = useBench()
  const key = () => findingKey(props.finding)
  const text = () => findingText(props.finding, words(), bench.display())
  const remedies = (): readonly Remedy[] => bench.remedies()[key()] ?? []
  const held = (): Remedy | null => (bench.ghost()?.key === key() ? bench.ghost()!.remedy : null)
  const looked = (): boolean => bench.remedies()[key()] !== undefined
  return (
    <div class="why" data-why={ofFinding(key())}>
      <Show when={props.finding.measured}>
        <Ruler finding={props.finding} gives={held()?.gives ?? remedies()[0]?.gives ?? null} />
      </Show>
      <p class="says">{text().sentence}</p>
      <For each={remedies()}>{(remedy) => <RemedyView finding={props.finding} remedy={remedy} />}</For>
      <Show when={looked() && remedies().length === 0 && props.finding.levers.length > 0}>
        <p class="src">{say('no-remedy')}</p>
      </Show>
      <Show when={bench.searching()}>
        {(s) => (
          <p class="src">
            {say('searching', s())}{' '}
            <button type="button" class="link" onClick={() => bench.stopSearch()}>
              {say('stop')}
            </button>
          </p>
        )}
      </Show>
      <p class="src">
        {text().because} <SourceOf id={props.finding.source} />
      </p>
      <Inputs paths={inputsOf(props.finding)} />
      <AskWhichDecides finding={props.finding} />
      <RelationsOf id={props.finding.id} said={props.finding.source} />
    </div>
  )
}

/** The inputs of a number, each a link to its field. */
export function Inputs(props: { readonly paths: readonly string[] }) {
  const bench = useBench()
  const shown = (path: string): string => {
    const value = valueAt(bench.document(), path)
    if (value === undefined) return ''
    return typeof value === 'object' && value !== null ? say('by-measure') : String(value)
  }
  /** Inputs that name a row of a table, with its source. */
  const cited = () =>
    props.paths.flatMap((path) => {
      const field = fieldAt(path)
      const id = field === null ? null : sourceOfRow(field, valueAt(bench.document(), path))
      return id === null ? [] : [{ path, id }]
    })
  return (
    <Show when={props.paths.length > 0}>
      <ul class="in">
        <For each={props.paths}>
          {(path) => (
            <li data-why={ofField(path)}>
              <button type="button" class="link" onClick={() => toNeed(bench, path)} title={placeName(path, words())}>
                {label(path, fieldAt(path))}
              </button>
              <span classList={{ blank: shown(path) === '' }}>{shown(path)}</span>
            </li>
          )}
        </For>
      </ul>
      <For each={cited()}>
        {({ path, id }) => (
          <p class="src" data-why={ofField(path)}>
            {label(path, fieldAt(path))}. <SourceOf id={id} />
          </p>
        )}
      </For>
    </Show>
  )
}
