/** CSS pixels in a millimetre of the screen, and a desk of 1440 by 900 in millimetres for tower and detail. */
const PX = 96 / 25.4
const DESK = { tower_mm: 190, detail_mm: 84, wide: 1600, head: 170 } as const

export interface Room {
  /** Height of a drawing of the tower, and width of a detail. */
  readonly room_mm: number
  readonly detail_mm: number
}

/** Only the drawings grow on a wider desk, in whole steps of scale. */
export const roomNow = (): Room =>
  innerWidth < DESK.wide
    ? { room_mm: DESK.tower_mm, detail_mm: DESK.detail_mm }
    : { room_mm: Math.max(DESK.tower_mm, (innerHeight - DESK.head) / PX), detail_mm: 112 }
