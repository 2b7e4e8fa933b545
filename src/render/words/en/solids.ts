/** What is said about solids to print or to look at. Slots in braces. */
export const solidSentences = {
  // names
  stub: 'stub',
  guide: 'drilling guide',
  'guide-1': 'drilling guide, piece 1',
  'guide-2': 'drilling guide, piece 2',
  'guide-3': 'drilling guide, piece 3',
  'guide-4': 'drilling guide, piece 4',
  'guide-5': 'drilling guide, piece 5',
  'guide-6': 'drilling guide, piece 6',
  'guide-7': 'drilling guide, piece 7',
  'guide-8': 'drilling guide, piece 8',
  'guide-9': 'drilling guide, piece 9',
  'guide-10': 'drilling guide, piece 10',
  'guide-11': 'drilling guide, piece 11',
  'guide-12': 'drilling guide, piece 12',
  gauge: 'angle gauge',
  distributor: 'distributor cup',
  'base-ring': 'base ring',
  lid: 'lid',
  column: 'column with its holes',
  tower: 'tower',
  // lines
  size: '{name}: {x} × {y} × {z}',
  'bed-exceeded': '{name} is larger than the bed of {bed}: print it in a service, or make it from pipe and sheet.',
  'bed-unknown': 'The plan does not say how large the printer’s bed is, so nothing was split for it.',
  split:
    'The guide is larger than the bed in one piece, so it comes in {count} pieces. Cut ends of filament are the pins: one in each hole of {hole} in a cut face. Glue the pieces face to face on the pipe, over foil; the foil keeps the glue off it.',
  support: '{name}: the collar leans {angle} from upright; print it with support under the collar.',
  'guide-use':
    'Both notches of the guide stand on the line, its lower edge {below} under the site’s mark. Tie it round the pipe, then mark or saw.',
  'guide-square':
    'The hole is cut square to the wall, so the guide carries its outline only; the angle comes from the gauge.',
  'gauge-use': 'The gauge lies on top of the stub with its long hollow on the column, while the joint sets.',
  'distributor-middle': 'The middle of the cup is left whole: bore it to the fitting that you have.',
  'ring-closed': 'The ring has no windows, as the drain’s holes do not fit it; the foot must drain another way.',
  'lid-no-filler': 'There is no room for a hole to fill through beside the column.',
  'lid-whole': 'The lid has no opening for the column: bore it for the flange or the return pipe that you have.',
  'sites-plain': 'The column is shown without openings: its sites are not stubs.',
  // cautions
  'print-food':
    'Printed layers hold germs and printing plastic is not made for food. In contact with the water use a plastic that its maker sells for food, seal the surface with a coating made for it, and replace the part each season. Guides and gauges stay out of the water.',
  'print-heat': 'PLA softens in the sun from about 55 °C: outdoors print what stays on the tower in PETG or ASA.',
  'print-fumes': 'Air the room while it prints; nozzle and bed burn. Children do not work at a running printer.',
  // why there is none
  'left-out': 'Left out: {name}. Needed for it: {needs}.',
  'left-out-because': 'Left out: {name}. {why}',
  'why-no-stub': 'The sites of this plan are not stubs.',
  'why-stub-short': 'The mouth would cut into the inner end of the stub.',
  'why-holes-meet': 'Holes meet each other or an end of the pipe.',
  'why-guide-wide':
    'The hole takes so much of the pipe’s round that no sleeve could be slid over it; use the paper template.',
  'why-gauge-short': 'Beside the joint’s bead the stub leaves no length for a gauge.',
  'why-no-cup': 'The water is spread by a tee or by holes in the pipe, not by a cup.',
  'why-cup-holes': 'The holes meet each other, the middle or the wall of the cup.',
  'why-no-ring': 'The column does not stand through the lid, so no ring holds its foot.',
  'why-no-lid': 'Only lids of round tanks are made; cut this one from sheet.',
  'why-lid-tight': 'The column’s hole leaves no lid.',
  'why-nothing': 'No solid can be made from this plan yet.',
} as const

export type SolidKey = keyof typeof solidSentences
export type SolidSentences = Readonly<Record<SolidKey, string>>
