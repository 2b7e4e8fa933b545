import { createEffect, For, Show } from 'solid-js'
import { valueAt } from '../../../plan/patch.ts'
import { type LanguageTag, languageNames } from '../../../render/words/language.ts'
import { tongue } from '../language.ts'
import type { Panel } from '../model/state.ts'
import { viewList } from '../view-list.ts'
import { say, sayable } from '../words.ts'
import { useBench } from './bench.tsx'

const tags = Object.keys(languageNames) as LanguageTag[]
const other = (): LanguageTag => tags[(tags.indexOf(tongue()) + 1) % tags.length]!

const clock = (at_ms: number): string => {
  const d = new Date(at_ms)
  return `${String(d.getHours()).padStart(2, '0')}:${String(d.getMinutes()).padStart(2, '0')}`
}

function SavedNote() {
  const bench = useBench()
  const text = () => {
    const state = bench.saved()
    const last = bench.history().done.at(-1)
    switch (state.kind) {
      case 'saved':
        return last ? say('state-saved', { time: clock(last.at_ms), n: last.number }) : say('state-saved-plain')
      case 'failed': {
        const key = `problem-${state.problem}`
        return say('state-failed', { problem: say(sayable(key) ? key : 'problem-failed') })
      }
      default:
        return say(`state-${state.kind}`)
    }
  }
  return (
    <span class="saved" role="status">
      <button
        type="button"
        class="fig"
        data-why="fact:saved"
        onClick={(e) => bench.explain('fact:saved', e.currentTarget)}
      >
        {text()}
      </button>
      <Show when={bench.saved().kind === 'failed'}>
        {' '}
        <button type="button" class="link" onClick={() => bench.retry()}>
          {say('retry')}
        </button>
      </Show>
    </span>
  )
}

/** Views that can be asked for. */
function Views() {
  const bench = useBench()
  const shown = (id: string): boolean => bench.settings().views.includes(id)
  const toggleView = (id: string): void => {
    const views = shown(id) ? bench.settings().views.filter((v) => v !== id) : [...bench.settings().views, id]
    bench.setSettings({ views: viewList.map((v) => v.id).filter((v) => views.includes(v)) })
  }
  return (
    <fieldset class="views">
      <legend class="sr">{say('views')}</legend>
      <For each={viewList}>
        {(view) => (
          <button type="button" aria-pressed={shown(view.id)} onClick={() => toggleView(view.id)}>
            {say(view.short)}
          </button>
        )}
      </For>
    </fieldset>
  )
}

/** The strip at the foot: the file, the views, the tools. */
export function Foot() {
  const bench = useBench()
  const toggle = (panel: Panel): void => void bench.setPanel(bench.panel() === panel ? null : panel)
  const Tool = (t: { readonly panel: Panel }) => (
    <button type="button" aria-pressed={bench.panel() === t.panel} onClick={() => toggle(t.panel)}>
      {say(t.panel === 'compare' ? 'compare' : t.panel === 'changes' ? 'changes' : 'plans')}
    </button>
  )
  createEffect(() => {
    document.documentElement.dataset['paper'] = String(valueAt(bench.document(), 'tools/paper') ?? 'A4')
  })
  return (
    <footer>
      <div class="file">
        <i class="mark">{say('rootfall')}</i>
        <Tool panel="plans" />
        <SavedNote />
      </div>
      <Views />
      <fieldset class="tools">
        <legend class="sr">{say('tools')}</legend>
        <button type="button" disabled={bench.history().done.length === 0} onClick={() => bench.undo()}>
          {say('undo')}
        </button>
        <button type="button" disabled={bench.history().undone.length === 0} onClick={() => bench.redo()}>
          {say('redo')}
        </button>
        <Tool panel="changes" />
        <Tool panel="compare" />
        <button type="button" onClick={() => window.print()}>
          {say('print')}
        </button>
        <button
          type="button"
          aria-label={say('lengths')}
          onClick={() => bench.setSettings({ lengths: bench.settings().lengths === 'mm' ? 'in' : 'mm' })}
        >
          <span classList={{ now: bench.settings().lengths === 'mm' }}>mm</span> /{' '}
          <span classList={{ now: bench.settings().lengths === 'in' }}>in</span>
        </button>
        <button type="button" aria-label={say('language')} onClick={() => void bench.speak(other())}>
          <For each={tags}>
            {(tag, i) => (
              <>
                {i() > 0 ? ' / ' : ''}
                <span lang={tag} title={languageNames[tag]} classList={{ now: tag === tongue() }}>
                  {tag}
                </span>
              </>
            )}
          </For>
        </button>
        <button
          type="button"
          onClick={() => bench.setSettings({ desk: bench.settings().desk === 'day' ? 'night' : 'day' })}
        >
          {say(bench.settings().desk === 'day' ? 'night-desk' : 'day-desk')}
        </button>
      </fieldset>
    </footer>
  )
}
