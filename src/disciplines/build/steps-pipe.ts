import type { MaterialId } from '../../tables/materials.ts'
import { practiceLengths } from '../../tables/practice.ts'
import { plasticsOf } from './plastics.ts'
import type { Situation } from './situation.ts'
import { type Step, step } from './step.ts'

const BAR_m = 0.1

const limits = (row: keyof typeof practiceLengths.rows) => {
  const { low_m, high_m } = practiceLengths.rows[row]
  return { min: low_m ?? 0, max: high_m ?? 0 }
}

/** Paper and pipe are proved before anything is cut. */
export function preparing(s: Situation): Step[] {
  const laser = s.plan.tools?.laser === true
  const bar = limits('check-bar')
  const drain: readonly (MaterialId | null)[] = plasticsOf(s.plan)
  return [
    step(s, 'gather', {
      after: [],
      actions: ['lay-out-parts', 'read-markings', ...(s.joint === 'cement' ? ['keep-cement-cool'] : [])],
      cautions: ['old-pipe', ...(drain.includes(null) ? ['unknown-plastic'] : [])],
      sheet: 'parts',
    }),
    step(s, 'measure-pipe', {
      after: ['gather'],
      actions: ['tape-column', ...(s.method === 'stub' ? ['tape-stub'] : []), 'enter-measured'],
      tools: ['tape'],
      parts: ['column-pipe', ...(s.method === 'stub' ? ['stub-pipe'] : [])],
    }),
    step(s, 'print', {
      after: ['measure-pipe'],
      actions: ['print-full-size', 'cut-out-sheets'],
      cautions: laser ? ['laser'] : [],
      tools: ['printer', 'scissors'],
      sheet: 'templates',
    }),
    step(s, 'bar-check', {
      after: ['print'],
      actions: ['measure-bars'],
      test: { id: 'bar', unit: 'm', must: { min: BAR_m + bar.min, max: BAR_m + bar.max } },
      tools: ['ruler'],
      sheet: 'templates',
    }),
    step(s, 'closure', {
      after: ['bar-check'],
      actions: ['wrap-and-close'],
      test: { id: 'closure', unit: 'm', must: limits('arc-closure') },
      tools: [],
      sheet: 'templates',
    }),
  ]
}

/** The column is cut and marked. */
export function marking(s: Situation): Step[] {
  const fittings = s.method === 'fitting'
  return [
    step(s, 'cut-column', {
      after: ['closure'],
      actions: ['warm-pipe', 'square-line', fittings ? 'saw-between-fittings' : 'saw-column', 'chamfer-column'],
      cautions: ['blade', 'dust'],
      tools: ['tape', 'saw', 'file', 'goggles', 'mask'],
      parts: ['column-pipe'],
      sheet: 'cut-list',
    }),
    step(s, 'draw-lines', {
      after: ['cut-column'],
      actions: ['step-arcs', 'draw-lines-down'],
      test: { id: 'arc-closure', unit: 'm', must: limits('arc-closure') },
      tools: ['tape', 'angle-section', 'marker'],
      sheet: 'marks',
    }),
    ...(fittings
      ? []
      : [
          step(s, 'mark-sites', {
            after: ['draw-lines'],
            actions: ['hook-tape', 'mark-heights', 'number-sites', 'arrow-up'],
            test: { id: 'mark-height', unit: 'm', must: limits('mark-height') },
            tools: ['tape', 'marker'],
            sheet: 'marks',
          }),
        ]),
  ]
}
