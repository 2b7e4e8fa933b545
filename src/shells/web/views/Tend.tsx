import { createSignal, For, Show } from 'solid-js'
import { valueAt } from '../../../plan/patch.ts'
import { show } from '../../../render/display.ts'
import type { TendWords } from '../../../render/words/en/tend.ts'
import { fill } from '../../../render/words/fill.ts'
import { placeName } from '../../../render/words/sentences.ts'
import { language, words } from '../language.ts'
import { correctedInWorker } from '../model/engine.ts'
import { fieldAt, leaves } from '../model/fields.ts'
import { limitOf } from '../model/limits.ts'
import { worstFirst } from '../model/order.ts'
import { ofFact, ofField, ofFinding } from '../model/reasons.ts'
import { cared, tended, untold } from '../model/tended.ts'
import { label, say, short } from '../words.ts'
import { findingKey } from '../workers/protocol.ts'
import { useBench } from './bench.tsx'
import { FieldInput } from './FieldInput.tsx'
import { Figure } from './Figure.tsx'
import { toNeed } from './focus.ts'
import { Numbered, NumberTable } from './Grid.tsx'
import { roving } from './roving.ts'

/** What the days bring: judged numbers, each with its why and its limit. */
function Care() {
  const bench = useBench()
  const mine = () => {
    const all = (bench.evaluated()?.findings ?? []).filter((f) => cared(f))
    const order = [...worstFirst(all), ...all.map(findingKey)]
    return all.toSorted((a, b) => order.indexOf(findingKey(a)) - order.indexOf(findingKey(b)))
  }
  return (
    <section class="care">
      <h2>{language().tend.care}</h2>
      <p class="src">{language().tend['care-text']}</p>
      <NumberTable label={language().tend.care}>
        <tbody>
          <For each={mine()}>
            {(f) => (
              <tr>
                <th scope="row">
                  {short(f.id)}, <i>{say(f.verdict === 'unknown' ? 'unknownVerdict' : f.verdict)}</i>
                </th>
                <td>
                  <Show when={f.measured}>
                    {(m) => <Figure of={m()} why={ofFinding(findingKey(f))} name={short(f.id)} />}
                  </Show>
                </td>
                <td class="n">
                  <Show when={limitOf(f)}>
                    {(l) => (
                      <>
                        {say(l().word)} <Figure of={show(l().at, bench.display())} why={ofFinding(findingKey(f))} />
                      </>
                    )}
                  </Show>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </NumberTable>
    </section>
  )
}

const TESTS = 'pump/tests'

/** The record of bucket tests: fields of the plan, one more at the end. */
function Bucket() {
  const bench = useBench()
  const tests = (): readonly unknown[] => (valueAt(bench.document(), TESTS) as unknown[] | undefined) ?? []
  return (
    <section>
      <h2>{language().tend.bucket}</h2>
      <p class="src">{language().tend['bucket-text']}</p>
      <p class="src">{language().tend['bucket-wants']}</p>
      <For each={tests().map((_, i) => `${TESTS}/${i}`)}>
        {(path, i) => (
          <div class="record">
            <h3 data-why={ofField(path)}>{fill(language().tend.test, { n: String(i() + 1) })}</h3>
            <For each={leaves(bench.document(), path).map((l) => l.path)}>
              {(leaf) => (
                <div class="fd" data-why={ofField(leaf)}>
                  <button
                    type="button"
                    class="lb"
                    title={say('why')}
                    onClick={(e) => bench.explain(ofField(leaf), e.currentTarget)}
                  >
                    {label(leaf, fieldAt(leaf))}
                  </button>
                  <FieldInput path={leaf} />
                </div>
              )}
            </For>
          </div>
        )}
      </For>
      <p class="act">
        <button type="button" class="do" onClick={() => bench.set(TESTS, [...tests(), {}])}>
          {language().tend['bucket-add']}
        </button>
      </p>
    </section>
  )
}

const readings = ['volume', 'ec', 'ph', 'temp'] as const satisfies readonly (keyof TendWords)[]

/** What is typed stays while one looks at the other acts. */
const [typed, setTyped] = createSignal({ volume: '', ec: '', ph: '', temp: '', fresh: false })

/** Today's readings, and what to pour in. */
function Today() {
  const bench = useBench()
  const [lines, setLines] = createSignal<readonly string[]>([])
  const work = async (): Promise<void> => {
    setLines(await correctedInWorker(bench.document(), typed(), bench.display()))
  }
  return (
    <section>
      <h2>{language().tend.today}</h2>
      <p class="src">{language().tend['today-text']}</p>
      <form
        onSubmit={(e) => {
          e.preventDefault()
          void work()
        }}
      >
        <For each={readings}>
          {(key) => (
            <label class="ask">
              <span>{language().tend[key]}</span>
              <input
                type="text"
                autocomplete="off"
                value={typed()[key]}
                onInput={(e) => setTyped({ ...typed(), [key]: e.currentTarget.value })}
              />
            </label>
          )}
        </For>
        <label class="ask">
          <span>{language().tend.fresh}</span>
          <input
            type="checkbox"
            checked={typed().fresh}
            onChange={(e) => setTyped({ ...typed(), fresh: e.currentTarget.checked })}
          />
        </label>
        <p class="act">
          <button type="submit" class="do">
            {language().tend.work}
          </button>
        </p>
      </form>
      <ol class="pour" role="status" ref={roving}>
        <For each={lines()}>
          {(line) => (
            <li>
              <Numbered text={line} why={ofFact('drawing')} />
            </li>
          )}
        </For>
      </ol>
    </section>
  )
}

/** What today's correction still wants of the plan, and the parts on whose forms it is told. */
function Untold() {
  const bench = useBench()
  const wants = () => (bench.evaluated() ? untold(bench.evaluated()!) : [])
  return (
    <Show when={wants().length > 0}>
      <section>
        <h2>{language().tend.today}</h2>
        <p class="src">{language().tend['today-wants']}</p>
        <ul>
          <For each={wants()}>
            {(path) => (
              <li data-why={ofField(path)}>
                <button type="button" class="link" onClick={() => toNeed(bench, path)}>
                  {placeName(path, words())}
                </button>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  )
}

/** The third act: only what this plan has something to tend. */
export function Tend() {
  const bench = useBench()
  const has = () => {
    const e = bench.evaluated()
    return e ? tended(e) : { care: false, bucket: false, today: false }
  }
  return (
    <div class="make tend">
      <Show when={has().care}>
        <Care />
      </Show>
      <Show when={has().today} fallback={<Untold />}>
        <Today />
      </Show>
      <Show when={has().bucket}>
        <Bucket />
      </Show>
    </div>
  )
}
