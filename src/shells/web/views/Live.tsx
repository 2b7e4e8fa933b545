import { Index } from 'solid-js'
import type { Lettering, Rect } from '../../../render/drawing/primitives.ts'
import type { Sketch, SketchFigure } from '../../../render/tower/sketch.ts'
import { fieldAt } from '../model/fields.ts'
import { ofFact, ofField, type Reason } from '../model/reasons.ts'
import { label, say } from '../words.ts'
import { useBench } from './bench.tsx'

const reason = (f: SketchFigure): Reason => ('field' in f.why ? ofField(f.why.field) : ofFact(f.why.fact))

/** The field that a figure shows, where it is one that takes a number. */
const editable = (f: SketchFigure): string | null => {
  if (!('field' in f.why)) return null
  const kind = fieldAt(f.why.field)?.kind
  return kind === 'quantity' || kind === 'count' || kind === 'number' ? f.why.field : null
}

const classes = (t: Lettering, field: boolean, on: boolean): string =>
  ['live', `face-${t.face}`, `tone-${t.tone}`, t.halo && 'halo', field && 'field', on && 'on'].filter(Boolean).join(' ')

/** Figures on the drawing: one that is a field is edited where it stands, any other opens its why. */
export function LiveFigures(props: {
  readonly sketch: Pick<Sketch, 'figures'>
  readonly box: Rect
  readonly edit: (f: SketchFigure) => void
}) {
  const bench = useBench()
  const press = (f: SketchFigure, back: SVGElement): void => {
    if (editable(f)) props.edit(f)
    else bench.explain(reason(f), back)
  }
  return (
    <Index each={props.sketch.figures}>
      {(f) => {
        const at = () => [f().text.at[0] - props.box.left, props.box.top - f().text.at[1]] as const
        const path = () => editable(f())
        const turn = () => (-f().text.turn_rad * 180) / Math.PI
        return (
          // biome-ignore lint/a11y/useSemanticElements: a figure inside a drawing can be no HTML button
          <text
            class={classes(f().text, path() !== null, path() !== null && bench.wanted() === path())}
            role="button"
            tabindex={path() === null ? -1 : 0}
            aria-label={
              path() === null ? `${f().text.text}: ${say('why')}` : `${label(path() ?? '')}: ${f().text.text}`
            }
            data-why={reason(f())}
            data-part={f().text.part}
            x={at()[0]}
            y={at()[1]}
            font-size={String(f().text.size_mm)}
            text-anchor={f().text.anchor}
            transform={turn() === 0 ? undefined : `rotate(${turn()} ${at()[0]} ${at()[1]})`}
            onClick={(e) => {
              e.stopPropagation()
              press(f(), e.currentTarget)
            }}
            onKeyDown={(e) => {
              if (e.key === 'Enter' || e.key === ' ') {
                e.preventDefault()
                press(f(), e.currentTarget)
              }
            }}
          >
            {f().text.text}
          </text>
        )
      }}
    </Index>
  )
}
