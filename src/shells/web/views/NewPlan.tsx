import { createMemo, createSignal, Match, Show, Switch } from 'solid-js'
import { pipeField } from '../../../plan/pipe.ts'
import { firstExample } from '../examples.ts'
import { drafted } from '../model/draft.ts'
import { adjustedInWorker } from '../model/engine.ts'
import { type Answers, answerIssues } from '../model/new-plan.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { PanelFrame } from './PanelFrame.tsx'
import { type Asked, asked, Crops, Place, PUMP, Pump, Text, usualName } from './questions.tsx'
import { suggestions } from './suggestions.ts'

const QUESTIONS = 5

/** Answers as they are given, one signal for all. */
function createAnswers() {
  const [answers, setAnswers] = createSignal<Answers>({
    setting: 'balcony',
    open: true,
    crops: ['lettuce'],
    height: '2.5 m',
    towers: '1',
    pipe: '',
    pump: PUMP,
    name: '',
  })
  return [answers, (change: Partial<Answers>) => setAnswers({ ...answers(), ...change })] as const
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
        <Text
          name={asked('new-towers')}
          path="towers/count"
          wrong={props.wrong}
          value={props.answers().towers}
          set={(towers) => props.set({ towers })}
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
        <Text
          name={say('new-name')}
          path="name"
          wrong={props.wrong}
          value={props.answers().name}
          set={(name) => props.set({ name })}
          like={usualName(props.answers())}
        />
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
  const [tried, setTried] = createSignal(false)
  const wrong = createMemo(() => (tried() ? answerIssues(step(), answers()) : []))
  let questions: HTMLDivElement | undefined
  const turn = (to: number): void => {
    setTried(false)
    setStep(to)
  }
  /** An answer that the plan could not hold is said at its field and kept; no further question is asked before. */
  const goOn = (): void => {
    setTried(true)
    if (wrong().length > 0) questions?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus()
    else if (step() < QUESTIONS) turn(step() + 1)
    else void draw()
  }
  const draw = async (): Promise<void> => {
    setWorking(true)
    const name = answers().name.trim() || usualName(answers())
    const { document, chosen, inch } = drafted(firstExample, answers(), name)
    const done = await adjustedInWorker({ document, chosen })
    if (inch) bench.setSettings({ lengths: 'in' })
    await bench.takeUp(done.document, true, done.chosen)
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
