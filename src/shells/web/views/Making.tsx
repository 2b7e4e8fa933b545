import { createSignal, type JSX, Show } from 'solid-js'
import type { Failed, Making } from '../model/made.ts'
import { say } from '../words.ts'

/** Files being made: whether, and how to end it; what was said at the end. A failure is said, and answers null. */
export function useMaking() {
  const [working, setWorking] = createSignal<(() => void) | null>(null)
  const [said, setSaid] = createSignal('')
  const made = async <Answer extends { readonly kind: string }>(
    job: Making<Answer | Failed>,
  ): Promise<Exclude<Answer, Failed> | null> => {
    setWorking(() => () => {
      job.cancel()
      setWorking(null)
    })
    const answer = await job.answer
    setWorking(null)
    setSaid(answer.kind === 'failed' ? (answer as Failed).message : '')
    return answer.kind === 'failed' ? null : (answer as Exclude<Answer, Failed>)
  }
  return { working, said, setSaid, made }
}

/** Buttons that make files, the way out while they work, and what came of it. */
export function MakingButtons(props: {
  readonly making: ReturnType<typeof useMaking>
  readonly choices: readonly { readonly text: string; readonly make: () => Promise<void> }[]
  readonly busy: string
}): JSX.Element {
  return (
    <>
      <p class="choices">
        {props.choices.map((c) => (
          <button type="button" class="do" disabled={props.making.working() !== null} onClick={() => void c.make()}>
            {c.text}
          </button>
        ))}
        <Show when={props.making.working()}>
          {(cancel) => (
            <>
              <span role="status">{props.busy}</span>
              <button type="button" class="link" onClick={() => cancel()()}>
                {say('cancel')}
              </button>
            </>
          )}
        </Show>
      </p>
      <p class="src" data-why="fact:drawing">
        {props.making.said()}
      </p>
    </>
  )
}
