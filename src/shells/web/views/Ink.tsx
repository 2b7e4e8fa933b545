import { Index } from 'solid-js'
import type { Inked } from '../picture.ts'

/** Marks of a drawing. Each element stays from picture to picture, and only what differs is set. */
export function Ink(props: { readonly of: Inked }) {
  return (
    <>
      <Index each={props.of.strokes}>
        {(s) => <path class={s().look} data-part={s().part === '' ? undefined : s().part} d={s().d} />}
      </Index>
      <g innerHTML={props.of.letters} />
    </>
  )
}
