import { createEffect, createSignal, createUniqueId, For, on, Show } from 'solid-js'
import type { Field } from '../../../plan/field.ts'
import type { Issue } from '../../../plan/issue.ts'
import { valueAt } from '../../../plan/patch.ts'
import { entryOf, readAs, stepped } from '../model/entry.ts'
import { fieldAt } from '../model/fields.ts'
import { ofField } from '../model/reasons.ts'
import type { Workbench } from '../model/workbench.ts'
import { choiceName, label, say } from '../words.ts'
import { late } from './arriving.ts'
import { useBench } from './bench.tsx'
import { fieldId } from './focus.ts'
import { suggestions } from './suggestions.ts'

/** A field as typed: no box, a rule below while it is in hand, doubled where it cannot be read, with the reason. */
export function FieldInput(props: { readonly path: string; readonly narrow?: boolean }) {
  const field = () => fieldAt(props.path)
  const kind = () => field()?.kind
  return (
    <Show when={kind() === 'choice' || kind() === 'flag'} fallback={<TextInput {...props} />}>
      <ChoiceInput path={props.path} />
    </Show>
  )
}

const shown = (value: unknown): string =>
  value === undefined || value === null ? '' : typeof value === 'object' ? '' : String(value)

/** What is wrong with a field of the plan as it stands. */
const issuesAt = (bench: Workbench, path: string): readonly Issue[] =>
  (bench.evaluated()?.issues ?? []).filter((i) => i.at === path)

function TextInput(props: { readonly path: string; readonly narrow?: boolean }) {
  const bench = useBench()
  const issueId = createUniqueId()
  const value = () => valueAt(bench.document(), props.path)
  const [typed, setTyped] = createSignal(shown(value()))
  const [issues, setIssues] = createSignal<readonly Issue[]>([])
  const [touched, setTouched] = createSignal(false)
  /** A figure just typed is read back; one that stood there was read long ago. */
  const [fresh, setFresh] = createSignal(false)
  createEffect(on(value, (v) => setTyped(shown(v))))
  const field = () => fieldAt(props.path)!
  const wrong = () => (issues().length > 0 ? issues() : issuesAt(bench, props.path))
  const commit = (): void => {
    if (typed() === shown(value())) {
      setIssues([])
      return
    }
    const entry = entryOf(field(), props.path, typed(), value())
    setIssues(entry.issues)
    if (entry.issues.length > 0) return
    setFresh(true)
    bench.set(props.path, entry.value)
  }
  const onKeyDown = (e: KeyboardEvent): void => {
    if (e.key === 'Enter') commit()
    if (e.key === 'Escape') {
      setTyped(shown(value()))
      setIssues([])
    }
    if (e.key !== 'ArrowUp' && e.key !== 'ArrowDown') return
    const next = stepped(field(), value(), e.key === 'ArrowUp' ? 1 : -1, e.shiftKey)
    if (next === null) return
    e.preventDefault()
    bench.set(props.path, next)
  }
  return (
    <span
      class="entry"
      classList={{
        wrong: wrong().length > 0,
        blank: typed() === '',
        long: field().kind === 'text' || field().kind === 'named',
      }}
    >
      <input
        id={props.narrow ? undefined : fieldId(props.path)}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={typed()}
        placeholder={typeof value() === 'object' ? say('by-measure') : undefined}
        list={field().kind === 'named' ? `list-${fieldId(props.path)}` : undefined}
        aria-label={label(props.path, field())}
        aria-invalid={wrong().length > 0}
        aria-describedby={wrong().length > 0 ? issueId : undefined}
        onFocus={() => setTouched(true)}
        onInput={(e) => setTyped(e.currentTarget.value)}
        onChange={commit}
        onKeyDown={onKeyDown}
      />
      <Suggested field={field()} id={`list-${fieldId(props.path)}`} wanted={touched()} />
      <Show when={wrong().length > 0}>
        <span class="issue" id={issueId} role="alert">
          {late()?.issueSentences(wrong(), bench.display())}
        </span>
      </Show>
      <ReadBack path={props.path} text={wrong().length > 0 || !fresh() ? null : value()} />
    </span>
  )
}

/** What was read of a figure in another decimal sign. */
function ReadBack(props: { readonly path: string; readonly text: unknown }) {
  const bench = useBench()
  const read = () => readAs(fieldAt(props.path)!, props.text, bench.display().decimal)
  return (
    <Show when={read()}>
      {(value) => (
        <span class="read" role="status" data-why={ofField(props.path)}>
          {say('read-as', { value: value() })}
        </span>
      )}
    </Show>
  )
}

/** Names of the table that the field chooses from, hundreds of them: there once the field has been in hand. */
function Suggested(props: { readonly field: Field; readonly id: string; readonly wanted: boolean }) {
  return (
    <Show when={props.wanted}>
      <Show when={suggestions(props.field)}>
        {(all) => (
          <datalist id={props.id}>
            <For each={all()}>{(text) => <option value={text} />}</For>
          </datalist>
        )}
      </Show>
    </Show>
  )
}

function ChoiceInput(props: { readonly path: string }) {
  const bench = useBench()
  const field = () => fieldAt(props.path)!
  const value = () => valueAt(bench.document(), props.path)
  const options = (): readonly (readonly [string, string])[] => {
    const f = field()
    if (f.kind === 'choice') return f.of.map((c) => [c, choiceName(c)])
    return [
      ['true', say('yes')],
      ['false', say('no')],
    ]
  }
  const change = (text: string): void => bench.set(props.path, entryOf(field(), props.path, text, value()).value)
  return (
    <span class="entry choice" classList={{ blank: value() === undefined }}>
      <select
        id={fieldId(props.path)}
        aria-label={label(props.path, field())}
        onChange={(e) => change(e.currentTarget.value)}
      >
        <option value="" selected={value() === undefined}>
          {value() === undefined ? '' : say('not-told')}
        </option>
        <For each={options()}>
          {([text, name]) => (
            <option value={text} selected={String(value()) === text}>
              {name}
            </option>
          )}
        </For>
      </select>
    </span>
  )
}
