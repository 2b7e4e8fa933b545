import { For, Show } from 'solid-js'
import { type SourceId, sources } from '../../../tables/sources.ts'
import { type Citation, citationsOf } from '../model/citations.ts'
import { say } from '../words.ts'

/** Whether a source is print that nobody of us has seen; what is derived or remembered says so itself. */
const unread = (id: SourceId): boolean => {
  const { kind, read } = sources[id]
  return read === null && kind !== 'derived' && kind !== 'common-practice' && kind !== 'from-memory'
}

/** A source as it stands in the register: what it is, where in it, its id; and whether one of us has seen it. */
function Cited(props: { readonly of: Citation }) {
  const id = (): SourceId | null => props.of.id
  const places = (): string =>
    [props.of.where, id() === null ? '' : sources[id()!].where]
      .filter((t, i, all) => t !== '' && all.indexOf(t) === i)
      .join('; ')
  return (
    <Show when={id()} fallback={props.of.where}>
      {(known) => (
        <>
          <cite lang="en">{sources[known()].cite}</cite>
          {places() === '' ? '' : `, ${places()}`} <span class="id">[{known()}]</span>
          {unread(known()) ? ` (${say('source-unread')})` : ''}
        </>
      )}
    </Show>
  )
}

/** The sources of an equation, as its own words cite them. */
export function SourceLine(props: { readonly line: string }) {
  const all = () => citationsOf(props.line)
  return (
    <p class="src cited">
      {say('source')}:{' '}
      <For each={all()}>
        {(c, i) => (
          <>
            {i() > 0 ? '; ' : ''}
            <Cited of={c} />
          </>
        )}
      </For>
      .
    </p>
  )
}

/** The source of a limit or of a row of a table. */
export const SourceOf = (props: { readonly id: SourceId }) => (
  <>
    {say('source')}: <Cited of={{ id: props.id, where: '' }} />.
  </>
)
