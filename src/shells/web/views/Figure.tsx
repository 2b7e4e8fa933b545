import { Show } from 'solid-js'
import type { Quantity } from '../../../kernel/units.ts'
import { type Shown, show } from '../../../render/display.ts'
import type { Reason } from '../model/reasons.ts'
import { useBench } from './bench.tsx'

/**
 * A number that is shown, with its why. There is no other way to show one: without a reason it does not compile.
 * Pressed, it opens the slip that explains it.
 */
export function Figure(props: { readonly of: Quantity | Shown; readonly why: Reason; readonly name?: string }) {
  const bench = useBench()
  const shown = (): Shown => ('figure' in props.of ? props.of : show(props.of, bench.display()))
  return (
    <button
      type="button"
      class="fig"
      data-why={props.why}
      aria-label={props.name ? `${props.name}: ${shown().figure} ${shown().unit}` : undefined}
      onClick={(e) => bench.explain(props.why, e.currentTarget)}
    >
      <span class="q">{shown().figure}</span>
      <Show when={shown().unit !== ''}>
        <span class="u">{shown().unit === '°' ? '°' : ` ${shown().unit}`}</span>
      </Show>
    </button>
  )
}

/** Figure and unit inside something that opens the why itself. */
export function Bare(props: { readonly of: Quantity | Shown; readonly why: Reason }) {
  const bench = useBench()
  const shown = (): Shown => ('figure' in props.of ? props.of : show(props.of, bench.display()))
  return (
    <span data-why={props.why}>
      {shown().figure}
      <Show when={shown().unit !== ''}>
        <span class="u">{shown().unit === '°' ? '°' : ` ${shown().unit}`}</span>
      </Show>
    </span>
  )
}
