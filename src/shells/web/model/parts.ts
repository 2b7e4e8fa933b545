/**
 * The parts in the order in which the water meets them; the only list of them. `of` are the places of the plan that
 * belong to a part: the longest that fits wins. `fields` are what is shown when it is chosen.
 */
export interface Part {
  readonly id: string
  readonly of: readonly string[]
  readonly fields: readonly string[]
  /** Side and height of its stop on the upright loop; null for what is no part of the water's way. */
  readonly stop: { readonly side: 'top' | 'right' | 'bottom' | 'left' | 'feed'; readonly y: number } | null
}

export const parts = [
  { id: 'distributor', of: ['distributor'], fields: ['distributor'], stop: { side: 'top', y: -3 } },
  {
    id: 'column',
    of: ['column', 'column/sites', 'column/pipe', 'towers', 'measured', 'stock', 'tools'],
    fields: [
      ...['column/pipe', 'column/length', 'column/colour', 'column/sites', 'column/topMargin', 'column/cap', 'towers'],
    ],
    stop: { side: 'right', y: 142 },
  },
  {
    id: 'stubs',
    of: ['column/stub', 'column/pocket', 'column/fitting', 'column/sites/method'],
    fields: ['column/sites/method', 'column/stub', 'column/pocket', 'column/fitting'],
    stop: { side: 'right', y: 258 },
  },
  { id: 'cups', of: ['column/cup'], fields: ['column/cup'], stop: { side: 'right', y: 374 } },
  {
    id: 'roots',
    of: ['crops', 'lamps', 'column/sites/canopy'],
    fields: ['crops', 'column/sites/canopy', 'lamps'],
    stop: { side: 'right', y: 490 },
  },
  { id: 'drain', of: ['drain', 'column/base'], fields: ['drain', 'column/base'], stop: { side: 'right', y: 552 } },
  { id: 'water', of: ['water'], fields: ['water', 'place/altitude'], stop: { side: 'feed', y: 602 } },
  {
    id: 'shelf',
    of: ['feed/shelf'],
    fields: ['feed/shelf', 'feed/scale', 'feed/fineScale'],
    stop: { side: 'feed', y: 652 },
  },
  {
    id: 'batch',
    of: ['feed'],
    fields: [
      ...[
        'feed/batch',
        'feed/targets',
        'feed/limits',
        'feed/aim',
        'feed/within',
        'feed/ammoniumShare',
        'feed/pH',
        'feed/conductivity',
      ],
      ...[
        'feed/temperature',
        'feed/air',
        'feed/stock',
        'feed/topUp',
        'feed/penScale',
        'feed/penCalibrated',
        'feed/penDrift',
        'feed/penCompensation',
      ],
      ...['feed/dumpTo', 'feed/sanitiser'],
    ],
    stop: { side: 'feed', y: 702 },
  },
  {
    id: 'reservoir',
    of: ['reservoir'],
    fields: ['reservoir'],
    stop: { side: 'bottom', y: 757 },
  },
  { id: 'pump', of: ['pump'], fields: ['pump'], stop: { side: 'left', y: 676 } },
  { id: 'riser', of: ['riser'], fields: ['riser'], stop: { side: 'left', y: 400 } },
  { id: 'place', of: ['place', 'name', 'note', 'prices', ''], fields: ['name', 'note', 'place'], stop: null },
  {
    id: 'workshop',
    of: ['tools', 'stock', 'prices', 'measured'],
    fields: ['tools', 'stock', 'measured', 'prices'],
    stop: null,
  },
] as const satisfies readonly Part[]

export type PartId = (typeof parts)[number]['id']

const places: readonly { readonly place: string; readonly part: PartId }[] = parts
  .flatMap((p) => p.of.map((place) => ({ place: place as string, part: p.id })))
  .sort((a, b) => b.place.length - a.place.length)

/** The part to which a place of the plan belongs. */
export const partOf = (path: string): PartId =>
  places.find(({ place }) => path === place || place === '' || path.startsWith(`${place}/`))?.part ?? 'place'

/** The part on whose form a place of the plan stands: its own, or the first that shows it. */
export function shownIn(path: string): PartId {
  const shows = (p: Part): boolean => p.fields.some((field) => path === field || path.startsWith(`${field}/`))
  const own = partOf(path)
  return parts.some((p) => p.id === own && shows(p)) ? own : (parts.find(shows)?.id ?? own)
}

export const loop = parts.filter((p) => p.stop !== null)
