import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js'
import { readQuantity } from '../../../kernel/quantity-text.ts'
import { valueAt } from '../../../plan/patch.ts'
import { decimals, inchFraction } from '../../../render/display.ts'
import { entryAround, isIn, type Line, lines, placed } from '../model/entries.ts'
import { fieldAt, isSet, type Leaf } from '../model/fields.ts'
import { parts } from '../model/parts.ts'
import { ofField } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { Adder } from './Adder.tsx'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'

/** Holes go by drills, and those of an inch set by sixty-fourths. */
const DRILLED = /\/hole$/

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
    return m === null ? null : inchFraction(m, DRILLED.test(props.leaf.path) ? 64 : bench.display().inchParts)
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

/** The fields of the chosen part: what is told first, what else can be told on request. */
export function Fields() {
  const bench = useBench()
  const [all, setAll] = createSignal(false)
  const part = () => parts.find((p) => p.id === bench.part())!
  const every = createMemo(() => part().fields.flatMap((path) => lines(bench.document(), path, bench.wanted())))
  const needed = createMemo(
    () => new Set((bench.evaluated()?.findings ?? []).flatMap((f) => f.needs).map((path) => placed(path))),
  )
  const first = () => every().find((l) => l.kind === 'add')?.path
  /** Nothing of the entry is told yet, or it is in hand: all that it can hold is shown. */
  const fresh = (path: string): boolean => {
    const entry = entryAround(path)
    if (entry === null) return false
    if (isIn(bench.wanted() ?? '', entry)) return true
    const value = valueAt(bench.document(), entry)
    return typeof value === 'object' && value !== null && Object.keys(value).length === 0
  }
  const shown = (line: Line): boolean => {
    const { kind, path } = line
    if (kind === 'head' || needed().has(path) || fresh(path)) return true
    if (kind === 'add') return path === first() || isSet(bench.document(), path)
    return isSet(bench.document(), path) || path === bench.wanted() || fieldAt(path)?.kind === 'named'
  }
  const told = createMemo(() => every().filter(shown))
  const keys = () => (all() ? every() : told()).map((l) => `${l.kind} ${l.path}`)
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
      <For each={keys()}>{(key) => <LineView kind={key.split(' ')[0]!} path={key.slice(key.indexOf(' ') + 1)} />}</For>
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

/** A line of the form; as text it stays the same thing from edit to edit. */
function LineView(props: { readonly kind: string; readonly path: string }) {
  return (
    <Switch>
      <Match when={props.kind === 'head'}>
        <EntryHead path={props.path} />
      </Match>
      <Match when={props.kind === 'add'}>
        <Adder path={props.path} />
      </Match>
      <Match when={fieldAt(props.path)}>{(field) => <Row leaf={{ path: props.path, field: field() }} />}</Match>
    </Switch>
  )
}

/** Which entry of its list the rows below belong to, and the way to take it out. */
function EntryHead(props: { readonly path: string }) {
  const bench = useBench()
  const cut = () => props.path.lastIndexOf('/')
  const list = () => props.path.slice(0, cut())
  const index = () => Number(props.path.slice(cut() + 1))
  const remove = (): void => {
    const items = valueAt(bench.document(), list())
    if (!Array.isArray(items)) return
    bench.setWanted(null)
    bench.set(
      list(),
      items.filter((_, i) => i !== index()),
    )
  }
  return (
    <p class="gh" data-why={ofField(props.path)}>
      <span>
        {label(list())} {index() + 1}
      </span>
      <button type="button" class="link" onClick={remove}>
        {say('remove-entry')}
      </button>
    </p>
  )
}
