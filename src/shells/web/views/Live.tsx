import { createSignal, For, Show } from 'solid-js'
import type { Lettering, Rect } from '../../../render/drawing/primitives.ts'
import type { Sketch, SketchFigure } from '../../../render/tower/sketch.ts'
import { fieldAt } from '../model/fields.ts'
import { ofFact, ofField, type Reason } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'

const PX = 96 / 25.4

const reason = (f: SketchFigure): Reason => ('field' in f.why ? ofField(f.why.field) : ofFact(f.why.fact))

const editable = (f: SketchFigure): string | null => {
  if (!('field' in f.why)) return null
  const kind = fieldAt(f.why.field)?.kind
  return kind === 'quantity' || kind === 'count' || kind === 'number' ? f.why.field : null
}

const classes = (t: Lettering, field: boolean, on: boolean): string =>
  ['live', `face-${t.face}`, `tone-${t.tone}`, t.halo && 'halo', field && 'field', on && 'on'].filter(Boolean).join(' ')

/** Figures on the drawing: one that is a field is edited where it stands, any other opens its why. */
export function LiveFigures(props: {
  readonly sketch: Sketch
  readonly box: Rect
  readonly edit: (f: SketchFigure) => void
}) {
  const bench = useBench()
  const press = (f: SketchFigure, back: SVGElement): void => {
    if (editable(f)) props.edit(f)
    else bench.explain(reason(f), back)
  }
  return (
    <For each={props.sketch.figures}>
      {(f) => {
        const at = () => [f.text.at[0] - props.box.left, props.box.top - f.text.at[1]] as const
        const path = editable(f)
        const turn = (-f.text.turn_rad * 180) / Math.PI
        return (
          // biome-ignore lint/a11y/useSemanticElements: a figure inside a drawing can be no HTML button
          <text
            class={classes(f.text, path !== null, path !== null && bench.wanted() === path)}
            role="button"
            tabindex={path === null ? -1 : 0}
            aria-label={path === null ? `${f.text.text}: ${say('why')}` : `${label(path)}: ${f.text.text}`}
            data-why={reason(f)}
            data-part={f.text.part}
            x={at()[0]}
            y={at()[1]}
            font-size={String(f.text.size_mm)}
            text-anchor={f.text.anchor}
            transform={turn === 0 ? undefined : `rotate(${turn} ${at()[0]} ${at()[1]})`}
            onClick={(e) => {
              e.stopPropagation()
              press(f, e.currentTarget)
            }}
            onKeyDown={(e) => {
              if (e.key === 'Enter' || e.key === ' ') {
                e.preventDefault()
                press(f, e.currentTarget)
              }
            }}
          >
            {f.text.text}
          </text>
        )
      }}
    </For>
  )
}

/** The field that is edited on the drawing, over its figure. */
export function LiveInput(props: { readonly box: Rect; readonly figure: SketchFigure; readonly done: () => void }) {
  const bench = useBench()
  const path = editable(props.figure) ?? ''
  bench.setWanted(path)
  const x = () => (props.figure.text.at[0] - props.box.left) * PX
  const y = () => (props.box.top - props.figure.text.at[1]) * PX
  const [here, setHere] = createSignal(false)
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: listens to what bubbles up from the input inside
    <span
      class="over"
      data-why={ofField(path)}
      ref={(el) =>
        queueMicrotask(() => {
          el.style.setProperty('left', `${x() - 45}px`)
          el.style.setProperty('top', `${y() - 18}px`)
          const input = el.querySelector('input')
          input?.focus()
          input?.select()
          setHere(true)
        })
      }
      onFocusOut={(e) => {
        if (here() && !(e.relatedTarget instanceof Node && e.currentTarget.contains(e.relatedTarget))) props.done()
      }}
      onKeyDown={(e) => {
        if (e.key === 'Enter' || e.key === 'Escape') queueMicrotask(props.done)
      }}
    >
      <Show when={path !== ''}>
        <FieldInput path={path} narrow={true} />
      </Show>
    </span>
  )
}
