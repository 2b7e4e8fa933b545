import { For } from 'solid-js'
import type { LayoutFacts } from '../../../disciplines/layout/index.ts'
import { quantity } from '../../../kernel/units.ts'
import { show, telling } from '../../../render/display.ts'
import { ofFact } from '../model/reasons.ts'
import { say } from '../words.ts'
import { useBench } from './bench.tsx'
import { Figure } from './Figure.tsx'
import { Numbered, NumberTable } from './Grid.tsx'

/** Marks of every line, counted from one end of the pipe. */
export function Marks(props: { readonly layout: LayoutFacts }) {
  const bench = useBench()
  const mark = (marked_m: number) => show(quantity(marked_m, 'm'), telling('mark', bench.display()))
  return (
    <section>
      <h2>{say('marks')}</h2>
      <p class="src" data-why={ofFact('layout/lines')}>
        {say('marks-text', { datum: say(props.layout.datum) })}
      </p>
      <NumberTable class="marks" label={say('marks')}>
        <thead>
          <tr>
            <th scope="col">{say('line')}</th>
            <th scope="col">{say('round')}</th>
            <th scope="col">{say('heights')}</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.layout.lines}>
            {(line) => (
              <tr>
                <th scope="row">
                  <Numbered text={String(line.number)} why={ofFact('layout/lines')} />
                </th>
                <td>
                  <Figure of={mark(line.arc.marked_m)} why={ofFact('layout/lines')} />
                </td>
                <td class="run">
                  <For each={line.marks}>{(m) => <Figure of={mark(m.marked_m)} why={ofFact('layout/marks')} />}</For>
                </td>
              </tr>
            )}
          </For>
        </tbody>
      </NumberTable>
    </section>
  )
}
