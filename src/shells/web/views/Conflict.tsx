import { Show } from 'solid-js'
import type { PlanDocument } from '../../../plan/plan.ts'
import { fieldDifferences } from '../model/differences.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { Differences, PanelFrame } from './PanelFrame.tsx'

/** Two pages changed one file: what differs, and which to keep. Nothing is written over unseen. */
export function Conflict() {
  const bench = useBench()
  const theirs = (): PlanDocument | null => {
    const state = bench.saved()
    if (state.kind !== 'conflict' || state.theirs === null) return null
    try {
      return JSON.parse(state.theirs.text) as PlanDocument
    } catch {
      return null
    }
  }
  return (
    <PanelFrame title={say('conflict-title')}>
      <p>{say('conflict-text')}</p>
      <p class="choices">
        <button type="button" class="do" onClick={() => bench.resolveConflict('both')}>
          {say('keep-both')}
        </button>
        <button type="button" class="do" onClick={() => bench.resolveConflict('mine')}>
          {say('keep-mine')}
        </button>
        <Show when={theirs()}>
          <button type="button" class="do" onClick={() => bench.resolveConflict('theirs')}>
            {say('keep-theirs')}
          </button>
        </Show>
      </p>
      <Show when={theirs()}>
        {(there) => (
          <>
            <h3>{say('conflict-differs')}</h3>
            <Differences
              label={say('conflict-differs')}
              rows={fieldDifferences(bench.document(), there())}
              here={say('mine')}
              there={say('theirs')}
            />
          </>
        )}
      </Show>
    </PanelFrame>
  )
}
