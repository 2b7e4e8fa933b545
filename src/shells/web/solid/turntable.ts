import { createSignal } from 'solid-js'
import type { Sight } from './ink.ts'

const STEP_deg = 15
const TILTS = [-30, -15, 0, 15, 30, 45, 60] as const
const ZOOMS = [1, 1.6, 2.5, 4] as const

const stepped = (list: readonly number[], now: number, by: number): number =>
  list[Math.min(list.length - 1, Math.max(0, list.indexOf(now) + by))] ?? now

const round = (deg: number): number => (deg + 360) % 360

/** From where the solid is seen, and the ways to change it; nothing turns by itself. */
export function createTurntable() {
  const [sight, setSight] = createSignal<Sight>({ bearing_deg: 30, tilt_deg: 15, cut: false, zoom: 1 })
  const swing = (by_deg: number): void => void setSight((s) => ({ ...s, bearing_deg: round(s.bearing_deg + by_deg) }))
  const turn = (by: number): void => swing(by * STEP_deg)
  const tilt = (by: number): void => void setSight((s) => ({ ...s, tilt_deg: stepped(TILTS, s.tilt_deg, by) }))
  const zoom = (by: number): void => void setSight((s) => ({ ...s, zoom: stepped(ZOOMS, s.zoom, by) }))
  const cut = (): void => void setSight((s) => ({ ...s, cut: !s.cut }))
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => turn(-1),
    ArrowRight: () => turn(1),
    ArrowUp: () => tilt(1),
    ArrowDown: () => tilt(-1),
    c: cut,
    C: cut,
    '+': () => zoom(1),
    '-': () => zoom(-1),
  }
  const onKey = (e: KeyboardEvent): void => {
    const act = keys[e.key]
    if (!act || e.ctrlKey || e.metaKey || e.altKey) return
    e.preventDefault()
    act()
  }
  const onPointer = (e: PointerEvent): void => {
    if (e.buttons === 1) swing(-e.movementX / 2)
  }
  return { sight, turn, tilt, zoom, cut, onKey, onPointer }
}
