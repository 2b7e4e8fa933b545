import { createMemo, createSignal, createUniqueId, For, type JSX, Match, Show, Switch } from 'solid-js'
import type { Issue } from '../../../plan/issue.ts'
import { pipeField } from '../../../plan/pipe.ts'
import { actsText } from '../../../render/words/remedies.ts'
import { firstExample } from '../examples.ts'
import { words } from '../language.ts'
import { adjustedInWorker } from '../model/engine.ts'
import { fieldAt } from '../model/fields.ts'
import { issueSentences } from '../model/issues.ts'
import { type Answers, answerIssues, drafted, offered, pumpFigures } from '../model/new-plan.ts'
import { choiceName, say } from '../words.ts'
import { useBench } from './bench.tsx'
import { PanelFrame } from './PanelFrame.tsx'
import { suggestions } from './suggestions.ts'

const QUESTIONS = 5
const PUMP = { name: '', maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' }

/** Answers as they are given, one signal for all. */
function createAnswers() {
  const [answers, setAnswers] = createSignal<Answers>({
    setting: 'balcony',
    crops: ['lettuce'],
    height: '2.5 m',
    pipe: '',
    pump: PUMP,
  })
  return [answers, (change: Partial<Answers>) => setAnswers({ ...answers(), ...change })] as const
}

type Asked = {
  readonly answers: () => Answers
  readonly set: (change: Partial<Answers>) => void
  /** What is wrong with the answer once somebody wanted to go on with it. */
  readonly wrong: () => readonly Issue[]
}

function Text(props: {
  readonly name: string
  readonly path: string
  readonly value: string
  readonly set: (value: string) => void
  readonly wrong: () => readonly Issue[]
  readonly list?: readonly string[]
}) {
  const issueId = createUniqueId()
  const wrong = () => props.wrong().filter((i) => i.at === props.path)
  return (
    <label class="ask entry" classList={{ wrong: wrong().length > 0 }}>
      <span>{props.name}</span>
      <input
        type="text"
        autocomplete="off"
        value={props.value}
        list={props.list ? 'new-list' : undefined}
        aria-invalid={wrong().length > 0}
        aria-describedby={wrong().length > 0 ? issueId : undefined}
        onInput={(e) => props.set(e.currentTarget.value)}
      />
      <Show when={wrong().length > 0}>
        <span class="issue" id={issueId} role="alert">
          {issueSentences(wrong())}
        </span>
      </Show>
      <Show when={props.list}>
        {(all) => (
          <datalist id="new-list">
            <For each={all()}>{(v) => <option value={v} />}</For>
          </datalist>
        )}
      </Show>
    </label>
  )
}

function Asks(props: { readonly name: string; readonly children: JSX.Element }) {
  return (
    <fieldset class="asks">
      <legend>{props.name}</legend>
      {props.children}
    </fieldset>
  )
}

function Place(props: Asked) {
  const settings = (): readonly string[] => {
    const field = fieldAt('place/setting')
    return field?.kind === 'choice' ? field.of : []
  }
  return (
    <Asks name={say('new-place')}>
      <For each={settings()}>
        {(s) => (
          <label>
            <input
              type="radio"
              name="setting"
              checked={props.answers().setting === s}
              onChange={() => props.set({ setting: s })}
            />{' '}
            {choiceName(s)}
          </label>
        )}
      </For>
    </Asks>
  )
}

function Crops(props: Asked) {
  const toggle = (crop: string): void => {
    const { crops } = props.answers()
    props.set({ crops: crops.includes(crop) ? crops.filter((c) => c !== crop) : [...crops, crop] })
  }
  const issueId = createUniqueId()
  const wrong = () => props.wrong().filter((i) => i.at === 'crops')
  return (
    <Asks name={say('new-crop')}>
      <For each={offered}>
        {(c) => (
          <label>
            <input
              type="checkbox"
              checked={props.answers().crops.includes(c)}
              aria-invalid={wrong().length > 0}
              aria-describedby={wrong().length > 0 ? issueId : undefined}
              onChange={() => toggle(c)}
            />{' '}
            {choiceName(c)}
          </label>
        )}
      </For>
      <Show when={wrong().length > 0}>
        <span class="issue" id={issueId} role="alert">
          {issueSentences(wrong().map((i) => ({ ...i, expected: i.expected.map(choiceName) })))}
        </span>
      </Show>
    </Asks>
  )
}

function Pump(props: Asked) {
  return (
    <>
      <Asks name={say('new-pump')}>
        <label>
          <input
            type="checkbox"
            checked={props.answers().pump === null}
            onChange={(e) => props.set({ pump: e.currentTarget.checked ? null : PUMP })}
          />{' '}
          {say('new-pump-none')}
        </label>
      </Asks>
      <Show when={props.answers().pump}>
        {(pump) => (
          <For each={pumpFigures}>
            {(key) => (
              <Text
                name={words().places[`pump/${key}`] ?? key}
                path={`pump/${key}`}
                wrong={props.wrong}
                value={pump()[key]}
                set={(value) => props.set({ pump: { ...pump(), [key]: value } })}
              />
            )}
          </For>
        )}
      </Show>
    </>
  )
}

/** The question of a step. */
function Question(props: Asked & { readonly step: number }) {
  return (
    <Switch>
      <Match when={props.step === 1}>
        <Place answers={props.answers} set={props.set} wrong={props.wrong} />
      </Match>
      <Match when={props.step === 2}>
        <Crops answers={props.answers} set={props.set} wrong={props.wrong} />
      </Match>
      <Match when={props.step === 3}>
        <Text
          name={say('new-space')}
          path="place/ceiling"
          wrong={props.wrong}
          value={props.answers().height}
          set={(height) => props.set({ height })}
        />
      </Match>
      <Match when={props.step === 4}>
        <Text
          name={say('new-pipe')}
          path="column/pipe"
          wrong={props.wrong}
          value={props.answers().pipe}
          set={(pipe) => props.set({ pipe })}
          list={suggestions(pipeField) ?? []}
        />
        <p class="src">{say('from-table')}</p>
      </Match>
      <Match when={props.step === 5}>
        <Pump answers={props.answers} set={props.set} wrong={props.wrong} />
      </Match>
    </Switch>
  )
}

/** Five questions, then a drawn tower that holds as far as one change after another can make it. */
export function NewPlan() {
  const bench = useBench()
  const [step, setStep] = createSignal(1)
  const [working, setWorking] = createSignal(false)
  const [answers, set] = createAnswers()
  const [asked, setAsked] = createSignal(false)
  const wrong = createMemo(() => (asked() ? answerIssues(step(), answers()) : []))
  let questions: HTMLDivElement | undefined
  const turn = (to: number): void => {
    setAsked(false)
    setStep(to)
  }
  /** An answer that the plan could not hold is said at its field and kept; no further question is asked before. */
  const goOn = (): void => {
    setAsked(true)
    if (wrong().length > 0) questions?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
    else if (step() < QUESTIONS) turn(step() + 1)
    else void draw()
  }
  const draw = async (): Promise<void> => {
    setWorking(true)
    const name = `${answers().crops[0] ?? say('roots')}, ${answers().setting}`
    const { document, made } = await adjustedInWorker(drafted(firstExample, answers(), name))
    const list = made.map((r) => actsText(r, words())).join('; ')
    await bench.takeUp(made.length === 0 ? document : { ...document, note: say('new-done', { list }) }, true)
  }
  return (
    <PanelFrame title={say('new-title')}>
      <Show when={!working()} fallback={<p role="status">{say('new-working')}</p>}>
        <p class="src" data-why="fact:changes">
          {say('new-step', { n: step(), of: QUESTIONS })}
        </p>
        <div ref={(el) => (questions = el)}>
          <Question answers={answers} set={set} wrong={wrong} step={step()} />
        </div>
        <p class="choices">
          <Show when={step() > 1}>
            <button type="button" class="link" onClick={() => turn(step() - 1)}>
              {say('new-back')}
            </button>
          </Show>
          <button type="button" class="do" onClick={goOn}>
            {say(step() < QUESTIONS ? 'new-next' : 'new-draw')}
          </button>
        </p>
      </Show>
    </PanelFrame>
  )
}
