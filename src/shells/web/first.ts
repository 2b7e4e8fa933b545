import type { LanguageTag } from '../../render/words/language.ts'
import { type Room, sameRoom, usualRooms } from './model/room.ts'
import type { AskedViews, Picture } from './picture.ts'
import type { Told } from './workers/protocol.ts'

/** Pictures as they were asked for. */
export interface Drawn {
  readonly asked: AskedViews
  readonly pictures: readonly Picture[]
}

/** What the first screen shows, computed when the page is built: the example as judged and drawn, without later screens. */
export interface First {
  readonly told: Told
  /** Null where no picture fits this window. */
  readonly drawn: Drawn | null
}

const fetched = async <T>(path: string): Promise<T> => (await fetch(new URL(path, document.baseURI))).json()

export async function fetchFirst(tag: LanguageTag, room: Room): Promise<First> {
  const i = usualRooms.findIndex((r) => sameRoom(r, room))
  const [told, drawn] = await Promise.all([
    fetched<Told>('assets/first.json'),
    i < 0 ? null : fetched<Drawn>(`assets/drawn-${tag}-${i + 1}.json`),
  ])
  return { told, drawn }
}
