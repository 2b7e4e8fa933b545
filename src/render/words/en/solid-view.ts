/** What the view of the solid says. Slots in braces. */
export const solidViewWords = {
  title: 'Solid',
  alt: 'The tower in space, seen from {bearing}° round and {tilt}° above: {parts}.',
  'alt-cut': 'The tower cut open through its axis, seen from {bearing}° round and {tilt}° above: {parts}.',
  column: 'column',
  stub: '{n} stubs',
  distributor: 'distributor',
  reservoir: 'reservoir',
  lid: 'its lid',
  water: 'the water at its fill line',
  pump: 'pump',
  riser: 'riser',
  cup: '{n} cups',
  base: 'ring round the foot',
  strap: 'strap',
  group: 'Turn the solid: arrow keys, C cuts it open',
  left: 'Turn left',
  right: 'Turn right',
  up: 'From above',
  down: 'From below',
  cut: 'Cut open',
  nearer: 'Nearer',
  further: 'Further',
  working: 'Working out the solid …',
  empty: 'No solid yet: measure {needs}.',
  because: 'No solid: {why}',
  'no-gl': 'This browser draws no solids here. The same tower is among the files of the workshop.',
} as const

export type SolidViewKey = keyof typeof solidViewWords
export type SolidViewWords = Readonly<Record<SolidViewKey, string>>
