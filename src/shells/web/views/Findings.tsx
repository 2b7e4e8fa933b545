import {
  type Accessor,
  createComputed,
  createEffect,
  createMemo,
  createSignal,
  For,
  Index,
  on,
  onCleanup,
  Show,
} from 'solid-js'
import type { Finding, Verdict } from '../../../findings/finding.ts'
import { show } from '../../../render/display.ts'
import { placed } from '../model/entries.ts'
import { fieldAt } from '../model/fields.ts'
import { limitOf } from '../model/limits.ts'
import { partOf } from '../model/parts.ts'
import { pictured } from '../model/pictured.ts'
import { ofField, ofFinding } from '../model/reasons.ts'
import { label, say, short } from '../words.ts'
import { lateView } from './arriving.ts'
import { Balloon } from './Balloon.tsx'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'
import { toNeed } from './focus.ts'

const Why = lateView((l) => l.Why)

/** How many of each verdict, in one line. */
function Sum() {
  const bench = useBench()
  const count = (verdict: Verdict): number =>
    (bench.evaluated()?.findings ?? []).filter((f) => f.verdict === verdict).length
  const open = () => (['fail', 'watch', 'unknown'] as const).filter((v) => count(v) > 0)
  return (
    <p class="sum" aria-live="polite">
      <Show when={open().length > 0} fallback={bench.evaluated() ? say('sum-none') : say('computing')}>
        <button
          type="button"
          class="fig"
          data-why="fact:findings"
          onClick={(e) => bench.explain('fact:findings', e.currentTarget)}
        >
          <For each={open()}>
            {(v, i) => (
              <>
                {i() > 0 ? ', ' : ''}
                <b>{count(v)}</b> {say(`sum-${v}`)}
              </>
            )}
          </For>
        </button>
      </Show>
    </p>
  )
}

/** One line of the list; opened, its why stands below it. */
function Row(props: { readonly finding: Finding; readonly name: string; readonly number: number }) {
  const bench = useBench()
  const open = () => bench.open() === props.name
  /** The why comes with the next picture: choosing a part is answered at once. */
  const [ripe, setRipe] = createSignal(false)
  createEffect(() => {
    if (open()) void pictured().then(() => setRipe(open()))
    else setRipe(false)
  })
  const limit = createMemo(() => limitOf(props.finding))
  const measured = () => (props.finding.measured ? show(props.finding.measured, bench.display()) : null)
  /** What it is held against, with the unit of both. */
  const held = (): string => {
    const l = limit()
    if (l === null) return measured()?.unit ?? ''
    const { figure, unit } = show(l.at, bench.display())
    return `${say(l.word)} ${figure}${unit === '°' ? '°' : ` ${unit}`}`
  }
  return (
    <li class="f" classList={{ open: open() }} id={`finding-${props.number}`}>
      <div class="row">
        <button
          type="button"
          class="head"
          aria-expanded={open()}
          onClick={() => bench.openFinding(open() ? null : props.name)}
        >
          <Balloon number={props.number} verdict={props.finding.verdict} on={open()} finding={props.name} />
          <span class="t" data-why={ofFinding(props.name)}>
            {short(props.finding.id)}
            <span class="sr">
              , {say(props.finding.verdict === 'unknown' ? 'unknownVerdict' : props.finding.verdict)}
            </span>
          </span>
          <Show when={measured()}>
            {(m) => (
              <span class="v" data-why={ofFinding(props.name)}>
                {m().figure}
              </span>
            )}
          </Show>
          <Show when={measured()}>
            <span class="n" data-why={ofFinding(props.name)}>
              {held()}
            </span>
          </Show>
        </button>
        <Show when={props.finding.verdict === 'unknown' && props.finding.needs[0]}>
          {(need) => (
            <span class="fill" data-why={ofField(need())}>
              <Need path={need()} />
            </span>
          )}
        </Show>
      </div>
      <Show when={open() && ripe()}>
        <Why finding={props.finding} />
      </Show>
    </li>
  )
}

/** What a finding misses: its field, or the way to it where that is a whole section or a list. */
function Need(props: { readonly path: string }) {
  const bench = useBench()
  const kind = () => fieldAt(placed(props.path))?.kind
  const gets = () => kind() === 'list' || kind() === 'map'
  return (
    <Show when={gets() || kind() === 'section'} fallback={<FieldInput path={props.path} narrow={true} />}>
      <button type="button" class="link" onClick={() => toNeed(bench, props.path)}>
        {gets() ? say('add-entry', { what: label(placed(props.path)) }) : say('fill-in')}
      </button>
    </Show>
  )
}

/** Lines shown before the rest is asked for; those of the part in hand are always shown. */
const FIRST = 10

/** A line that moves to its rank takes the keyboard's place along. */
function keepHand(): void {
  const hand = document.activeElement
  if (!(hand instanceof HTMLElement) || hand.closest('.fs') === null) return
  queueMicrotask(() => {
    if (hand.isConnected && document.activeElement !== hand) hand.focus({ preventScroll: true })
  })
}

/** On paper nothing can be asked for: whatever is listed is listed whole. */
function onPaper(): Accessor<boolean> {
  const [printing, setPrinting] = createSignal(false)
  const [begin, end] = [() => setPrinting(true), () => setPrinting(false)]
  addEventListener('beforeprint', begin)
  addEventListener('afterprint', end)
  onCleanup(() => {
    removeEventListener('beforeprint', begin)
    removeEventListener('afterprint', end)
  })
  return printing
}

/** Findings that do not hold, worst first; what holds is a count until asked for. */
export function Findings() {
  const bench = useBench()
  const holding = () => (bench.evaluated()?.findings ?? []).filter((f) => f.verdict === 'pass')
  const [all, setAll] = createSignal(false)
  const printed = onPaper()
  const [unfolded, setUnfolded] = createSignal(false)
  const every = () => bench.order().filter((key) => bench.findings().has(key))
  const near = (key: string): boolean =>
    bench.open() === key || partOf(bench.findings().get(key)?.at ?? '') === bench.front()
  const shown = () => every().filter((key, i) => all() || printed() || i < FIRST || near(key))
  const numbered = (key: string): number => every().indexOf(key) + 1
  createComputed(on(shown, keepHand))
  return (
    <section class="findings" aria-label={say('findings')}>
      <Sum />
      <ol class="fs">
        <For each={shown()}>
          {(key) => (
            <Show when={bench.findings().get(key)}>
              {(finding) => <Row finding={finding()} name={key} number={numbered(key)} />}
            </Show>
          )}
        </For>
      </ol>
      <Show when={every().length > FIRST}>
        <p class="adder">
          <button
            type="button"
            class="link"
            aria-expanded={all()}
            data-why="fact:findings"
            onClick={() => setAll(!all())}
          >
            {all() ? say('fewer-findings') : say('more-findings', { count: every().length - shown().length })}
          </button>
        </p>
      </Show>
      <Show when={holding().length > 0}>
        <details class="holds" onToggle={(e) => setUnfolded(e.currentTarget.open)}>
          <summary>
            <svg viewBox="0 0 14 12" aria-hidden="true">
              <path d="M1 6l4 5L13 1" />
            </svg>
            <span data-why="fact:findings">
              {holding().length} {say(holding().length === 1 ? 'one-holds' : 'others-hold')}
            </span>
          </summary>
          <ul>
            <Index each={unfolded() ? holding() : []}>{(finding) => <Holding finding={finding()} />}</Index>
          </ul>
        </details>
      </Show>
    </section>
  )
}

function Holding(props: { readonly finding: Finding }) {
  const bench = useBench()
  const key = () => `${props.finding.id} ${props.finding.at}`
  return (
    <li data-why={ofFinding(key())}>
      <button type="button" class="link" onClick={(e) => bench.explain(ofFinding(key()), e.currentTarget)}>
        {short(props.finding.id)}
      </button>
      <Show when={props.finding.measured}>
        {(m) => (
          <span>
            {show(m(), bench.display()).figure} {show(m(), bench.display()).unit}
          </span>
        )}
      </Show>
    </li>
  )
}
