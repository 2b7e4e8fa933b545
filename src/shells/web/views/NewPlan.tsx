import { createSignal, For, Match, Show, Switch } from 'solid-js'
import { pipeField } from '../../../plan/pipe.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { firstExample } from '../examples.ts'
import { adjustedInWorker } from '../model/engine.ts'
import { fieldAt } from '../model/fields.ts'
import { type Answers, drafted } from '../model/new-plan.ts'
import { say, words } from '../words.ts'
import { useBench } from './bench.tsx'
import { PanelFrame } from './Panels.tsx'
import { suggestions } from './suggestions.ts'

const QUESTIONS = 5
const CROPS = [
  'lettuce',
  'basil',
  'spinach',
  'pak choi',
  'chard',
  'coriander',
  'parsley',
  'strawberry',
  'mint',
  'rocket',
]

/** Five questions, then a drawn tower that holds as far as one change after another can make it. */
export function NewPlan() {
  const bench = useBench()
  const [step, setStep] = createSignal(1)
  const [working, setWorking] = createSignal(false)
  const [setting, setSetting] = createSignal('balcony')
  const [crops, setCrops] = createSignal<readonly string[]>(['lettuce'])
  const [height, setHeight] = createSignal('2.5 m')
  const [pipe, setPipe] = createSignal('')
  const [hasPump, setHasPump] = createSignal(true)
  const [pump, setPump] = createSignal({ name: '', maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' })
  const settings = (): readonly string[] => {
    const field = fieldAt('place/setting')
    return field?.kind === 'choice' ? field.of : []
  }
  const toggle = (crop: string): void =>
    void setCrops(crops().includes(crop) ? crops().filter((c) => c !== crop) : [...crops(), crop])
  const draw = async (): Promise<void> => {
    setWorking(true)
    const answers: Answers = {
      setting: setting(),
      crops: crops(),
      height: height(),
      pipe: pipe(),
      pump: hasPump() ? pump() : null,
    }
    const name = `${crops()[0] ?? say('roots')}, ${setting()}`
    const { document, made } = await adjustedInWorker(drafted(firstExample, answers, name))
    const note =
      made.length === 0
        ? ''
        : say('new-done', { list: made.map((r) => `${placeName(r.set, words)} ${String(r.to)}`).join(', ') })
    await bench.takeUp(note === '' ? document : { ...document, note }, true)
  }
  const Text = (t: {
    readonly name: string
    readonly value: string
    readonly set: (v: string) => void
    readonly list?: readonly string[]
  }) => (
    <label class="ask">
      <span>{t.name}</span>
      <input
        type="text"
        value={t.value}
        list={t.list ? 'new-list' : undefined}
        onInput={(e) => t.set(e.currentTarget.value)}
      />
      <Show when={t.list}>
        {(all) => (
          <datalist id="new-list">
            <For each={all()}>{(v) => <option value={v} />}</For>
          </datalist>
        )}
      </Show>
    </label>
  )
  return (
    <PanelFrame title={say('new-title')}>
      <Show when={!working()} fallback={<p role="status">{say('new-working')}</p>}>
        <p class="src" data-why="fact:changes">
          {say('new-step', { n: step(), of: QUESTIONS })}
        </p>
        <Switch>
          <Match when={step() === 1}>
            <fieldset class="asks">
              <legend>{say('new-place')}</legend>
              <For each={settings()}>
                {(s) => (
                  <label>
                    <input type="radio" name="setting" checked={setting() === s} onChange={() => setSetting(s)} /> {s}
                  </label>
                )}
              </For>
            </fieldset>
          </Match>
          <Match when={step() === 2}>
            <fieldset class="asks">
              <legend>{say('new-crop')}</legend>
              <For each={CROPS}>
                {(c) => (
                  <label>
                    <input type="checkbox" checked={crops().includes(c)} onChange={() => toggle(c)} /> {c}
                  </label>
                )}
              </For>
            </fieldset>
          </Match>
          <Match when={step() === 3}>
            <Text name={say('new-space')} value={height()} set={setHeight} />
          </Match>
          <Match when={step() === 4}>
            <Text name={say('new-pipe')} value={pipe()} set={setPipe} list={suggestions(pipeField) ?? []} />
            <p class="src">{say('from-table')}</p>
          </Match>
          <Match when={step() === 5}>
            <fieldset class="asks">
              <legend>{say('new-pump')}</legend>
              <label>
                <input type="checkbox" checked={!hasPump()} onChange={(e) => setHasPump(!e.currentTarget.checked)} />{' '}
                {say('new-pump-none')}
              </label>
            </fieldset>
            <Show when={hasPump()}>
              <Text
                name={words.places['pump/maxHead'] ?? ''}
                value={pump().maxHead}
                set={(maxHead) => setPump({ ...pump(), maxHead })}
              />
              <Text
                name={words.places['pump/maxFlow'] ?? ''}
                value={pump().maxFlow}
                set={(maxFlow) => setPump({ ...pump(), maxFlow })}
              />
              <Text
                name={words.places['pump/power'] ?? ''}
                value={pump().power}
                set={(power) => setPump({ ...pump(), power })}
              />
            </Show>
          </Match>
        </Switch>
        <p class="choices">
          <Show when={step() > 1}>
            <button type="button" class="link" onClick={() => setStep(step() - 1)}>
              {say('new-back')}
            </button>
          </Show>
          <Show
            when={step() < QUESTIONS}
            fallback={
              <button type="button" class="do" onClick={() => void draw()}>
                {say('new-draw')}
              </button>
            }
          >
            <button type="button" class="do" onClick={() => setStep(step() + 1)}>
              {say('new-next')}
            </button>
          </Show>
        </p>
      </Show>
    </PanelFrame>
  )
}
