import { createUniqueId, For, type JSX, Show } from 'solid-js'
import { quantity } from '../../../kernel/units.ts'
import type { Issue } from '../../../plan/issue.ts'
import { shownText } from '../../../render/display.ts'
import { fill } from '../../../render/words/fill.ts'
import { words } from '../language.ts'
import { fieldAt } from '../model/fields.ts'
import { issueSentences } from '../model/issues.ts'
import { type Answers, cropsApart, eitherWay, offered, pumpFigures } from '../model/new-plan.ts'
import { choiceName, say } from '../words.ts'
import { useBench } from './bench.tsx'

/** A pump of which nothing is said yet. */
export const PUMP = { name: '', maxHead: '', maxFlow: '', power: '' }
/** Figures as they stand on a box, shown where none is typed. */
const ON_A_BOX = { maxHead: '2.2 m', maxFlow: '1800 L/h', power: '35 W' } as const

export const asked = (key: string): string => words().beginning[key] ?? key

/** Crops in words, one after the other. */
const listed = (crops: readonly string[]): string => crops.map(choiceName).join(', ')

const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1)

/** What a plan is called that nobody has named: all its crops and its place. */
export const usualName = ({ crops, setting }: Answers): string =>
  fill(asked('new-named'), { crops: capital(listed(crops)), place: choiceName(setting) })

export type Asked = {
  readonly answers: () => Answers
  readonly set: (change: Partial<Answers>) => void
  /** What is wrong with the answer once somebody wanted to go on with it. */
  readonly wrong: () => readonly Issue[]
}

export function Text(props: {
  readonly name: string
  readonly path: string
  readonly value: string
  readonly set: (value: string) => void
  readonly wrong: () => readonly Issue[]
  readonly list?: readonly string[]
  /** What might stand there. */
  readonly like?: string
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
        placeholder={props.like}
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

export function Place(props: Asked) {
  const settings = (): readonly string[] => {
    const field = fieldAt('place/setting')
    return field?.kind === 'choice' ? field.of : []
  }
  const sky = [
    [true, 'new-open-yes'],
    [false, 'new-open-no'],
  ] as const
  return (
    <>
      <Asks name={say('new-place')}>
        <For each={settings()}>
          {(s) => (
            <label>
              <input
                type="radio"
                name="setting"
                checked={props.answers().setting === s}
                onChange={() => props.set({ setting: s, open: eitherWay[s] ?? true })}
              />{' '}
              {choiceName(s)}
            </label>
          )}
        </For>
      </Asks>
      <Show when={Object.hasOwn(eitherWay, props.answers().setting)}>
        <Asks name={asked('new-open')}>
          <For each={sky}>
            {([open, key]) => (
              <label>
                <input
                  type="radio"
                  name="open"
                  checked={props.answers().open === open}
                  onChange={() => props.set({ open })}
                />{' '}
                {asked(key)}
              </label>
            )}
          </For>
        </Asks>
      </Show>
    </>
  )
}

/** Which of the crops share no strength, told before anything is drawn. */
function Apart(props: Asked) {
  const bench = useBench()
  const strength = (S_m: number): string => shownText(quantity(S_m, 'S_m'), bench.display())
  const text = () => {
    const apart = cropsApart(props.answers().crops)
    if (apart === null) return ''
    return fill(asked('new-apart'), {
      strongest: capital(choiceName(apart.strongest)),
      weakest: choiceName(apart.weakest),
      least: strength(apart.least_S_m),
      most: strength(apart.most_S_m),
      together: listed(apart.together),
      rest: listed(apart.rest),
    })
  }
  return (
    <p class="src apart" role="status">
      {text()}
    </p>
  )
}

export function Crops(props: Asked) {
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
      <Apart {...props} />
    </Asks>
  )
}

export function Pump(props: Asked) {
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
                like={fill(asked('new-like'), { example: ON_A_BOX[key] })}
                set={(value) => props.set({ pump: { ...pump(), [key]: value } })}
              />
            )}
          </For>
        )}
      </Show>
      <p class="src">{asked('new-pump-blank')}</p>
    </>
  )
}
