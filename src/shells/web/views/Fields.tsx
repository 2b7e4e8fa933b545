import { createMemo, createSignal, For, Show } from 'solid-js'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import { valueAt } from '../../../plan/patch.ts'
import { decimals, inchFraction } from '../../../render/display.ts'
import { fieldAt, isSet, type Leaf, leaves } from '../model/fields.ts'
import { parts } from '../model/parts.ts'
import { ofField } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'

/** The length of a field in metres; null for what is no length or cannot be read. */
function lengthOf(leaf: Leaf, typed: unknown): number | null {
  if (leaf.field.kind !== 'quantity' || leaf.field.unit !== 'm' || typeof typed !== 'string') return null
  const read = readQuantity(typed, 'm')
  return read.ok ? read.value : null
}

function Row(props: { readonly leaf: Leaf }) {
  const bench = useBench()
  const value = () => valueAt(bench.document(), props.leaf.path)
  const length = () => lengthOf(props.leaf, value())
  const inches = () => {
    const m = length()
    return m === null ? null : inchFraction(m, bench.display().inchParts)
  }
  const off = (): string => {
    const i = inches()
    return i === null ? '' : signed(i.error_m, bench.display().decimal)
  }
  const wide = () =>
    props.leaf.field.kind === 'text' || props.leaf.field.kind === 'named' || props.leaf.field.kind === 'choice'
  return (
    <div class="fd" classList={{ wide: wide() }} data-why={ofField(props.leaf.path)}>
      <button
        type="button"
        class="lb"
        title={say('why')}
        onClick={(e) => bench.explain(ofField(props.leaf.path), e.currentTarget)}
      >
        {label(props.leaf.path, props.leaf.field)}
      </button>
      <FieldInput path={props.leaf.path} />
      <Show when={!wide()}>
        <span class="in16">
          <Show when={inches()}>
            {(i) => (
              <>
                <Fraction text={i().text} /> {bench.display().units['in'] ?? 'in'}
              </>
            )}
          </Show>
        </span>
        <span class="er">{off()}</span>
      </Show>
    </div>
  )
}

const signed = (error_m: number, decimal: '.' | ','): string => {
  const text = decimals(error_m * 1000, 1, decimal)
  return error_m >= 0.00005 ? `+${text}` : text
}

/** A whole number and a true fraction: 3 1/8. */
export function Fraction(props: { readonly text: string }) {
  const cut = () => props.text.split(' ')
  const share = () => cut().find((t) => t.includes('/'))
  const whole = () => cut().find((t) => !t.includes('/'))
  return (
    <>
      {whole()}
      <Show when={share()}>
        {whole() ? ' ' : ''}
        <span class="frac">{share()}</span>
      </Show>
    </>
  )
}

/** Entries that a list may get: one more of its kind. */
function Adder(props: { readonly path: string }) {
  const bench = useBench()
  const items = () => {
    const value = valueAt(bench.document(), props.path)
    return Array.isArray(value) ? value.length : 0
  }
  const add = (): void => {
    const of = fieldAt(`${props.path}/0`)
    bench.set(props.path, [
      ...((valueAt(bench.document(), props.path) as unknown[]) ?? []),
      of?.kind === 'section' ? {} : 1,
    ])
  }
  return (
    <p class="adder">
      <button type="button" class="link" onClick={add}>
        {say('add-entry', { what: label(`${props.path}/${items()}`) })}
      </button>
    </p>
  )
}

/** The fields of the chosen part: what is told first, what else can be told on request. */
export function Fields() {
  const bench = useBench()
  const [all, setAll] = createSignal(false)
  const part = () => parts.find((p) => p.id === bench.part())!
  const every = createMemo(() => part().fields.flatMap((path) => leaves(bench.document(), path)))
  const needed = createMemo(() => new Set((bench.evaluated()?.findings ?? []).flatMap((f) => f.needs)))
  const told = createMemo(() =>
    every().filter(
      (l) =>
        isSet(bench.document(), l.path) ||
        needed().has(l.path) ||
        l.path === bench.wanted() ||
        l.field.kind === 'named',
    ),
  )
  const rows = () => (all() ? every() : told())
  const lists = () => part().fields.filter((path) => fieldAt(path)?.kind === 'list')
  return (
    <section class="fields" aria-labelledby="part-name">
      <h2 id="part-name" tabindex="-1">
        {say(part().id)}
      </h2>
      <div class="fh" aria-hidden="true" data-why="fact:tape">
        <span />
        <span>{say('as-typed')}</span>
        <span>{say('nearest', { part: `1/${bench.display().inchParts}` })}</span>
        <span>{say('off')}</span>
      </div>
      <For each={rows().map((l) => l.path)}>
        {(path) => (
          <Show when={fieldAt(path)}>
            {(field) => (
              <>
                <GroupHead path={path} first={rows().find((l) => group(l.path) === group(path))?.path === path} />
                <Row leaf={{ path, field: field() }} />
              </>
            )}
          </Show>
        )}
      </For>
      <Show when={all()}>
        <For each={lists()}>{(path) => <Adder path={path} />}</For>
      </Show>
      <Show when={every().length > told().length}>
        <p class="adder" data-why="fact:fields">
          <button type="button" class="link" aria-expanded={all()} onClick={() => setAll(!all())}>
            {all() ? say('fewer-fields') : say('more-fields', { count: every().length - told().length })}
          </button>
        </p>
      </Show>
    </section>
  )
}

/** The entry of a list to which a row belongs: `crops/0`. */
const group = (path: string): string => /^(.*\/\d+)\//.exec(path)?.[1] ?? ''

function GroupHead(props: { readonly path: string; readonly first: boolean }) {
  const bench = useBench()
  const at = () => group(props.path)
  const remove = (): void => {
    const keys = at().split('/')
    const index = Number(keys.pop())
    const path = keys.join('/')
    bench.set(
      path,
      (valueAt(bench.document(), path) as unknown[]).filter((_, i) => i !== index),
    )
  }
  return (
    <Show when={props.first && at() !== ''}>
      <p class="gh" data-why={ofField(at())}>
        <span>{Number(at().split('/').at(-1)) + 1}</span>
        <button type="button" class="link" onClick={remove}>
          {say('remove-entry')}
        </button>
      </p>
    </Show>
  )
}
