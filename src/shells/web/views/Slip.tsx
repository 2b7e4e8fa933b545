import { createEffect, onCleanup, onMount, Show } from 'solid-js'
import type { Finding } from '../../../findings/finding.ts'
import { edgeUnits } from '../../../kernel/edge-units.ts'
import { inUnit, readQuantity } from '../../../kernel/quantity-text.ts'
import { valueAt } from '../../../plan/patch.ts'
import { findingText, placeName } from '../../../render/words/sentences.ts'
import { words } from '../language.ts'
import { sourceOfRow } from '../model/citations.ts'
import { factWhy } from '../model/facts.ts'
import { fieldAt } from '../model/fields.ts'
import { reasonParts } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { useBench } from './bench.tsx'
import { goToField } from './focus.ts'
import { RelationsOf } from './Relations.tsx'
import { Ruler } from './Ruler.tsx'
import { SourceOf } from './Source.tsx'
import { Inputs } from './Why.tsx'

/** The slip beside a number: why it is what it is. Closed by Escape; the number has the focus back. */
export function Slip() {
  const bench = useBench()
  let box: HTMLElement | undefined
  const close = (): void => {
    const back = bench.slip()?.back
    bench.setSlip(null)
    back?.focus()
  }
  const onKey = (e: KeyboardEvent): void => {
    if (e.key === 'Escape' && bench.slip()) close()
  }
  const onDown = (e: PointerEvent): void => {
    if (bench.slip() && box && e.target instanceof Node && !box.contains(e.target)) bench.setSlip(null)
  }
  onMount(() => {
    document.addEventListener('keydown', onKey)
    document.addEventListener('pointerdown', onDown)
  })
  onCleanup(() => {
    document.removeEventListener('keydown', onKey)
    document.removeEventListener('pointerdown', onDown)
  })
  createEffect(() => {
    if (bench.slip()) queueMicrotask(() => box && place(box, bench.slip()?.beside))
  })
  return (
    <Show when={bench.slip()}>
      {(slip) => (
        <aside class="slip" ref={box} tabindex="-1" role="dialog" aria-label={say('why')} data-why={slip().reason}>
          <Reasoned />
          <p class="act">
            <button type="button" class="link" onClick={close}>
              {say('close')}
            </button>
          </p>
        </aside>
      )}
    </Show>
  )
}

const WIDTH = 312
const GAP = 12

/** Beside the number, never over it, and inside the window. */
function place(box: HTMLElement, beside: DOMRect | undefined): void {
  if (!beside) return
  const wide = Math.min(WIDTH, innerWidth - 16)
  const right = beside.right + GAP + wide < innerWidth
  const left = right ? beside.right + GAP : beside.left - GAP - wide
  const fits = right || left > 0
  const high = box.offsetHeight
  const top = fits
    ? Math.min(Math.max(8, beside.top - 20), Math.max(8, innerHeight - high - 8))
    : beside.bottom + GAP + high < innerHeight
      ? beside.bottom + GAP
      : Math.max(8, beside.top - GAP - high)
  box.style.setProperty('left', `${(fits ? left : Math.max(8, (innerWidth - wide) / 2)) + scrollX}px`)
  box.style.setProperty('top', `${top + scrollY}px`)
  box.focus({ preventScroll: true })
}

function Reasoned() {
  const bench = useBench()
  const parts = () => reasonParts(bench.slip()!.reason)
  return (
    <>
      <Show when={parts()[0] === 'finding' && bench.findings().get(parts()[1])}>
        {(finding) => <OfFinding finding={finding()} />}
      </Show>
      <Show when={parts()[0] === 'field'}>
        <OfField path={parts()[1]} />
      </Show>
      <Show when={parts()[0] === 'fact'}>
        <OfFact id={parts()[1]} />
      </Show>
    </>
  )
}

function OfFinding(props: { readonly finding: Finding }) {
  const bench = useBench()
  const text = () => findingText(props.finding, words(), bench.display())
  return (
    <>
      <h3>{text().short}</h3>
      <Show when={props.finding.measured}>
        <Ruler finding={props.finding} gives={null} />
      </Show>
      <p>{text().sentence}</p>
      <RelationsOf id={props.finding.id} />
      <p class="src">
        {text().because} <SourceOf id={props.finding.source} />
      </p>
    </>
  )
}

function OfField(props: { readonly path: string }) {
  const bench = useBench()
  const field = () => fieldAt(props.path)
  const value = () => valueAt(bench.document(), props.path)
  const about = () => {
    const text = field()?.about ?? ''
    return words().abouts[text] ?? text
  }
  const bounds = () => {
    const f = field()
    if (f?.kind === 'count' || f?.kind === 'number') return say('field-bounds', { low: f.min, high: f.max })
    if (f?.kind !== 'quantity') return ''
    const typed = value()
    const read = typeof typed === 'string' ? readQuantity(typed, f.unit) : null
    const spelled = read?.ok ? read.spelled : (edgeUnits[f.unit]?.[0]?.spell[0] ?? '')
    const shown = (n: number) => `${Number(inUnit(n, f.unit, spelled).toPrecision(4))} ${spelled}`
    return say('field-bounds', { low: shown(f.min), high: shown(f.max) })
  }
  const row = () => {
    const f = field()
    return f === null ? null : sourceOfRow(f, value())
  }
  const cured = () => [
    ...new Set(
      (bench.evaluated()?.findings ?? [])
        .filter((f) => f.levers.some((l) => l.set === props.path))
        .map((f) => words().findings[f.id]?.short ?? f.id),
    ),
  ]
  return (
    <>
      <h3>
        {words().places[props.path.replace(/\/\d+/g, '')] === undefined
          ? label(props.path, field())
          : placeName(props.path, words())}
      </h3>
      <p>{say(value() === undefined ? 'field-empty' : 'field-why', { about: about() })}</p>
      <p class="src">{bounds()}</p>
      <Show when={row()}>
        {(id) => (
          <p class="src">
            <SourceOf id={id()} />
          </p>
        )}
      </Show>
      <Show when={cured().length > 0}>
        <p class="src">
          {say('field-used')}: {cured().join(', ')}.
        </p>
      </Show>
      <p>
        <button type="button" class="link" onClick={() => goToField(bench, props.path)}>
          {say('go-to-field')}
        </button>
      </p>
    </>
  )
}

function OfFact(props: { readonly id: string }) {
  const fact = () => factWhy(props.id)
  return (
    <>
      <h3>{fact()?.name ?? say('of-own')}</h3>
      <p>{fact()?.about ?? say('of-own')}</p>
      <RelationsOf id={props.id} />
      <Inputs paths={fact()?.inputs ?? []} />
    </>
  )
}
