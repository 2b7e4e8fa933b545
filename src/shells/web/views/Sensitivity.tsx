import { createEffect, createSignal, For, on, onCleanup, onMount, Show } from 'solid-js'
import type { Finding } from '../../../findings/finding.ts'
import { valueAt } from '../../../plan/patch.ts'
import { svg } from '../../../render/drawing/svg.ts'
import {
  IMPROVE_FIRST,
  improveText,
  ownText,
  readingName,
  resultText,
  unknownText,
} from '../../../render/tables/sensitivity.ts'
import { swingChart } from '../../../render/views/swings.ts'
import { fill } from '../../../render/words/fill.ts'
import { type ResultId, resultOfFinding } from '../../../sensitivity/results.ts'
import type { Sensitivity as Found, Improve, ResultSwings } from '../../../sensitivity/swings.ts'
import { words } from '../language.ts'
import { fieldAt } from '../model/fields.ts'
import '../style/swings.css'
import { findSensitivity } from '../model/sensitivity.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { goToField } from './focus.ts'
import { Numbered } from './Grid.tsx'
import { PanelFrame } from './PanelFrame.tsx'
import { roving } from './roving.ts'

const WHY = 'fact:sensitivity'
/** CSS pixels in a millimetre of the screen. */
const PX = 96 / 25.4
const WIDTH_mm = 84

/** Opens the panel for the result that a finding judges; nothing where none is. */
export function AskWhichDecides(props: { readonly finding: Finding }) {
  const bench = useBench()
  return (
    <Show when={resultOfFinding(props.finding.id)}>
      <p class="src">
        <button type="button" class="link" onClick={() => bench.setPanel('sensitivity')}>
          {words().sensitivity.ask}
        </button>
      </p>
    </Show>
  )
}

/** Bars of one result about its value; read out as its sentence. */
function Bars(props: { readonly of: ResultSwings }) {
  const bench = useBench()
  const chart = () => swingChart({ result: props.of, words: words(), display: bench.display(), width_mm: WIDTH_mm })
  const inside = (c: NonNullable<ReturnType<typeof chart>>): string => {
    const text = svg({ page: c, title: '', paint: 'class' })
    return text.slice(text.indexOf('</title>') + 8, text.lastIndexOf('</svg>'))
  }
  return (
    <Show when={chart()}>
      {(c) => (
        <svg
          class="sheet swings"
          role="img"
          data-why={WHY}
          aria-label={resultText(props.of, words(), bench.display())}
          viewBox={`0 0 ${c().width_mm} ${c().height_mm}`}
          width={c().width_mm * PX}
          height={c().height_mm * PX}
          innerHTML={inside(c())}
        />
      )}
    </Show>
  )
}

function ResultView(props: { readonly of: ResultSwings }) {
  const bench = useBench()
  const name = () => words().sensitivity.results[props.of.id]
  const open = () => ownText(props.of, words(), bench.display())
  return (
    <section aria-label={name()} data-result={props.of.id}>
      <h3>{name()}</h3>
      <p ref={roving}>
        <Numbered text={resultText(props.of, words(), bench.display())} why={WHY} />
      </p>
      <Bars of={props.of} />
      <Show when={open()}>
        <p class="src" ref={roving}>
          <Numbered text={open()} why={WHY} />
        </p>
      </Show>
    </section>
  )
}

/** A reading to improve; its field is one press away, where it has one. */
function ImproveView(props: { readonly of: Improve }) {
  const bench = useBench()
  const field = () =>
    fieldAt(props.of.at) && valueAt(bench.document(), props.of.at) !== undefined ? props.of.at : null
  return (
    <li data-why={WHY}>
      {improveText(props.of, words())}{' '}
      <Show when={field()}>
        {(path) => (
          <button
            type="button"
            class="link"
            aria-label={`${words().sensitivity.back}: ${readingName(path(), words())}`}
            onClick={() => goToField(bench, path())}
          >
            {words().sensitivity.back}
          </button>
        )}
      </Show>
    </li>
  )
}

function Answer(props: { readonly of: Found; readonly near: ResultId | null }) {
  const near = () => props.of.results.filter((r) => r.id === props.near)
  const others = () => props.of.results.filter((r) => r.id !== props.near)
  const first = () => props.of.improve.slice(0, IMPROVE_FIRST)
  return (
    <>
      <For each={near()}>{(result) => <ResultView of={result} />}</For>
      <Show when={near().length > 0}>
        <Key />
      </Show>
      <Show when={first().length > 0}>
        <h3>{words().sensitivity.improve}</h3>
        <ol class="improve">
          <For each={first()}>{(reading) => <ImproveView of={reading} />}</For>
        </ol>
      </Show>
      <Show when={near().length === 0}>
        <Key />
      </Show>
      <For each={others()}>{(result) => <ResultView of={result} />}</For>
      <ul class="src">
        <For each={props.of.unknown}>{(u) => <li>{unknownText(u, words())}</li>}</For>
      </ul>
    </>
  )
}

/** What hatched and open bars stand for. */
const Key = () => (
  <p class="src key">
    <i class="low" aria-hidden="true" /> {words().sensitivity.low} <i class="high" aria-hidden="true" />{' '}
    {words().sensitivity.high}
  </p>
)

/** Readings gone through in a worker, the result of the open finding before all others; ends with the panel. */
function useFound() {
  const bench = useBench()
  const [progress, setProgress] = createSignal<{ readonly done: number; readonly of: number } | null>(null)
  const [found, setFound] = createSignal<Found | null>(null)
  const [said, setSaid] = createSignal('')
  let end: (() => void) | null = null
  const stop = (text = ''): void => {
    end?.()
    end = null
    setProgress(null)
    setSaid(text)
  }
  const near = (): ResultId | null => {
    const open = bench.open()
    return open === null ? null : resultOfFinding(bench.findings().get(open)?.id ?? '')
  }
  const start = (): void => {
    stop()
    const document = bench.document()
    const told = {
      progress: (done: number, of: number) => void setProgress({ done, of }),
      failed: (message: string) => stop(message),
    }
    const all = (): void => {
      const whole = (s: Found): void => {
        end = null
        setFound(s)
        setProgress(null)
      }
      end = findSensitivity({ document }, { ...told, found: whole })
    }
    const first = (s: Found): void => {
      setFound(s)
      all()
    }
    setProgress({ done: 0, of: 1 })
    const only = near()
    if (only === null) all()
    else end = findSensitivity({ document, only: [only] }, { ...told, found: first })
  }
  onMount(start)
  const anew = (): void => {
    setFound(null)
    start()
  }
  createEffect(on(bench.document, anew, { defer: true }))
  onCleanup(() => stop())
  return { progress, found, near, said, start, stop }
}

/** Which number matters: what to measure first, and every result with the readings that move it. */
export function Sensitivity() {
  const { progress, found, near, said, start, stop } = useFound()
  return (
    <PanelFrame title={words().sensitivity.title}>
      <p>{words().sensitivity.intro}</p>
      <p class="src" role="status" data-why={WHY}>
        <Show when={progress()} fallback={said()}>
          {(p) => fill(words().sensitivity.progress, { done: String(p().done), of: String(p().of) })}
        </Show>
      </p>
      <p class="choices">
        <button
          type="button"
          class="link"
          ref={(button) => onMount(() => button.focus())}
          onClick={() => (progress() ? stop(words().sensitivity.stopped) : start())}
        >
          {progress() ? say('cancel') : words().sensitivity.again}
        </button>
      </p>
      <Show when={found()}>{(f) => <Answer of={f()} near={near()} />}</Show>
    </PanelFrame>
  )
}
