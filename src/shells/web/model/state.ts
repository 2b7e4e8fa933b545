import { createMemo, createSignal } from 'solid-js'
import type { Remedy } from '../../../findings/finding.ts'
import type { Plan, PlanDocument } from '../../../plan/plan.ts'
import { type Display, metric } from '../../../render/display.ts'
import type { AskedViews, Inked, Picture } from '../picture.ts'
import { firstWords } from '../words.ts'
import { findingKey, type Told } from '../workers/protocol.ts'
import { begun, type History, numbered } from './history.ts'
import type { PartId } from './parts.ts'
import type { Kept } from './plans.ts'
import type { Reason } from './reasons.ts'
import { type Room, roomNow } from './room.ts'
import { kept } from './settings.ts'
import { displayFor } from './shown.ts'

/** What the foot says of the plan's file. */
export type SavedState =
  | { readonly kind: 'example' | 'saving' | 'saved' }
  | { readonly kind: 'failed'; readonly problem: string }
  | { readonly kind: 'conflict'; readonly theirs: Kept | null }

export type Act = 'draw' | 'make' | 'tend'
export type Panel = 'plans' | 'changes' | 'compare' | 'new' | 'conflict' | 'sensitivity'

/** A remedy held over the drawing: the change, and what it draws otherwise. */
export interface Ghost {
  readonly key: string
  readonly remedy: Remedy
  /** What is drawn over each sheet, by its id. */
  readonly over: Readonly<Record<string, Inked>>
}

/** A slip with a why, and the place of the number that it explains. */
export interface Slip {
  readonly reason: Reason
  readonly beside: DOMRect
  readonly back: HTMLElement | SVGElement
}

/** Everything that the page shows follows from these. */
export function createState(example: PlanDocument) {
  const [room, setRoom] = createSignal<Room>(roomNow())
  const [pictures, setPictures] = createSignal<readonly Picture[]>([])
  const [opened, setOpened] = createSignal(false)
  const [history, setHistory] = createSignal<History>(begun(example))
  const [id, setId] = createSignal<string | null>(null)
  const [revision, setRevision] = createSignal<string | null>(null)
  const [saved, setSaved] = createSignal<SavedState>({ kind: 'example' })
  const [evaluated, setEvaluated] = createSignal<Told | null>(null)
  const [remedies, setRemedies] = createSignal<Readonly<Record<string, readonly Remedy[]>>>({})
  const [searching, setSearching] = createSignal<{ readonly done: number; readonly of: number } | null>(null)
  const [order, setOrder] = createSignal<readonly string[]>([])
  const [part, setPart] = createSignal<PartId>('distributor')
  /** The part whose findings stand in front: the part in hand, one picture later when it was just taken. */
  const [front, setFront] = createSignal<PartId>('distributor')
  const [open, setOpen] = createSignal<string | null>(null)
  const [ghost, setGhost] = createSignal<Ghost | null>(null)
  const [slip, setSlip] = createSignal<Slip | null>(null)
  const [wanted, setWanted] = createSignal<string | null>(null)
  const [act, setAct] = createSignal<Act>('draw')
  const [panel, setPanel] = createSignal<Panel | null>(null)
  const [refused, setRefused] = createSignal('')
  /** Whether a plan was drawn from answers just now, and nobody has put away yet what was chosen in it. */
  const [landed, setLanded] = createSignal(false)
  const [settings, setSettings] = kept()
  const findings = createMemo(() => new Map((evaluated()?.findings ?? []).map((f) => [findingKey(f), f])))
  const plan = (): Plan | null => evaluated()?.plan ?? null
  const display = createMemo<Display>(() => displayFor(firstWords(), settings().lengths, plan()), metric, {
    equals: (a, b) => JSON.stringify(a) === JSON.stringify(b),
  })
  const document = createMemo(() => numbered(history()))
  /** The document that is drawn whole: judging comes first, then sheet after sheet. */
  const [drawn, setDrawn] = createSignal<PlanDocument | null>(null)
  const stale = createMemo(() => evaluated()?.document !== document() || drawn() !== document())
  const asked = createMemo<AskedViews>(() => ({
    ...room(),
    display: display(),
    part: part(),
    views: settings().views,
  }))
  return {
    ...{ opened, setOpened, room, setRoom, pictures, setPictures, asked },
    ...{
      history,
      setHistory,
      document,
      stale,
      id,
      setId,
      revision,
      setRevision,
      saved,
      setSaved,
      evaluated,
      setEvaluated,
      setDrawn,
    },
    ...{ remedies, setRemedies, searching, setSearching, order, setOrder },
    ...{ part, setPart, front, setFront, open, setOpen },
    ...{ ghost, setGhost, slip, setSlip, wanted, setWanted, act, setAct, panel, setPanel, settings, findings, display },
    ...{ refused, setRefused, landed, setLanded },
    setSettings: (change: Partial<ReturnType<typeof settings>>) => setSettings({ ...settings(), ...change }),
  }
}

export type State = ReturnType<typeof createState>
