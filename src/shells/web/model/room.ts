/** CSS pixels in a millimetre of the screen, and what of a window's height is no drawing. */
const PX = 96 / 25.4
const HEAD_px = 170

export interface Room {
  /** Height of a drawing of the tower, and width of a detail, in millimetres of the screen. */
  readonly room_mm: number
  readonly detail_mm: number
}

/** The desk of 1440 by 900. */
const desk: Room = { room_mm: 190, detail_mm: 84 }

/** On a wider desk only the drawings grow, and in steps: a scale of the drawing office for each. */
const WIDE_px = 1600
const VERY_WIDE_px = 2240
const heights_mm = [340, 280, 232, 190] as const
const wideDetail_mm = 99
const veryWideDetail_mm = 160

export function roomFor(width_px: number, height_px: number): Room {
  if (width_px < WIDE_px) return desk
  const high_mm = (height_px - HEAD_px) / PX
  return {
    room_mm: heights_mm.find((h) => h <= high_mm) ?? desk.room_mm,
    detail_mm: width_px < VERY_WIDE_px ? wideDetail_mm : veryWideDetail_mm,
  }
}

export const roomNow = (): Room => roomFor(innerWidth, innerHeight)

/** Rooms of usual windows, for which the first screen is drawn when the page is built. */
export const usualRooms: readonly Room[] = [desk, roomFor(1920, 950), roomFor(1920, 1080)]

export const sameRoom = (a: Room, b: Room): boolean => a.room_mm === b.room_mm && a.detail_mm === b.detail_mm
