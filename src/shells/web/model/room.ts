/** CSS pixels in a millimetre of the screen, and what of a window's height is no drawing. */
const PX = 96 / 25.4
const HEAD_px = 170

export interface Room {
  /** Height of a drawing of the tower, width of a detail, and width of the section, in millimetres of the screen. */
  readonly room_mm: number
  readonly detail_mm: number
  readonly section_mm: number
}

/** The desk of 1440 by 900. */
const desk: Room = { room_mm: 190, detail_mm: 84, section_mm: 84 }

/** On a wider desk only the drawings grow, and in steps: a scale of the drawing office for each. */
const WIDE_px = 1600
/** From here the section stands larger than the other details, two of which stand side by side. */
const VERY_WIDE_px = 1900
const WIDEST_px = 2240
const heights_mm = [340, 280, 232, 190] as const
const widths_mm = (width_px: number): Pick<Room, 'detail_mm' | 'section_mm'> =>
  width_px < VERY_WIDE_px
    ? { detail_mm: 99, section_mm: 99 }
    : width_px < WIDEST_px
      ? { detail_mm: 90, section_mm: 176 }
      : { detail_mm: 120, section_mm: 240 }

export function roomFor(width_px: number, height_px: number): Room {
  if (width_px < WIDE_px) return desk
  const high_mm = (height_px - HEAD_px) / PX
  return { room_mm: heights_mm.find((h) => h <= high_mm) ?? desk.room_mm, ...widths_mm(width_px) }
}

export const roomNow = (): Room => roomFor(innerWidth, innerHeight)

/** Rooms of usual windows, for which the first screen is drawn when the page is built. */
export const usualRooms: readonly Room[] = [desk, roomFor(1920, 950), roomFor(1920, 1080)]

export const sameRoom = (a: Room, b: Room): boolean =>
  a.room_mm === b.room_mm && a.detail_mm === b.detail_mm && a.section_mm === b.section_mm
