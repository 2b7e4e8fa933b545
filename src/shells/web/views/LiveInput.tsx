import { createSignal, Show } from 'solid-js'
import type { Rect } from '../../../render/drawing/primitives.ts'
import type { SketchFigure } from '../../../render/tower/sketch.ts'
import { ofField } from '../model/reasons.ts'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'

const PX = 96 / 25.4

/** The field that is edited on the drawing, over its figure. */
export function LiveInput(props: { readonly box: Rect; readonly figure: SketchFigure; readonly done: () => void }) {
  const bench = useBench()
  const path = 'field' in props.figure.why ? props.figure.why.field : ''
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
