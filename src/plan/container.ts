import { nearestWords } from '../kernel/nearest.ts'
import { type ContainerId, containers } from '../tables/containers.ts'
import { choice, named, quantity, section, text, type ValuesOf } from './field.ts'

/** Inside of a tank: a round frustum or a rectangular prismoid, lengths at rim and foot. */
export interface Container {
  readonly label: string
  readonly row: ContainerId | null
  readonly shape: 'round' | 'rectangular'
  readonly topLength_m: number
  readonly topWidth_m: number
  readonly footLength_m: number
  readonly footWidth_m: number
  readonly depth_m: number
}

const side = (about: string, example: string) => quantity('m', { min: 0.03, max: 5, example, about })

const measures = section('A tank by measure, inside.', {
  name: text('Name to print.', 60),
  shape: choice(['round', 'rectangular'], 'Seen from above.'),
  topLength: side('Inside length or diameter at the rim.', '500 mm'),
  topWidth: side('Inside width at the rim; leave out for a round tank.', '330 mm'),
  footLength: side('Inside length or diameter at the foot; as at the rim where absent.', '500 mm'),
  footWidth: side('Inside width at the foot; as at the rim where absent.', '330 mm'),
  depth: side('Inside depth to the rim.', '270 mm'),
})

const mm = (x: number): string => String(Math.round(x * 1000))

function containerOfMeasures(v: ValuesOf<typeof measures.fields>): { found: Container } | { missing: string[] } {
  const { shape, topLength_m: length, depth_m } = v
  const width = shape === 'round' ? length : v.topWidth_m
  if (shape === undefined || length === undefined || width === undefined || depth_m === undefined) {
    const gaps = { shape, topLength: length, topWidth: width, depth: depth_m }
    return { missing: Object.entries(gaps).flatMap(([key, value]) => (value === undefined ? [key] : [])) }
  }
  const footLength_m = v.footLength_m ?? length
  const footWidth_m = shape === 'round' ? footLength_m : (v.footWidth_m ?? width)
  const size = shape === 'round' ? `Ø${mm(length)} × ${mm(depth_m)}` : `${mm(length)} × ${mm(width)} × ${mm(depth_m)}`
  return {
    found: {
      label: v.name ?? size,
      row: null,
      shape,
      topLength_m: length,
      topWidth_m: width,
      footLength_m,
      footWidth_m,
      depth_m,
    },
  }
}

const ids = Object.keys(containers.rows) as ContainerId[]
const bare = (s: string): string => s.toLowerCase().replace(/[^a-z0-9.]+/g, '')

export const containerField = named<Container>({
  about: 'The tank: its row by name, or its inside measures.',
  example: '45 L tote',
  section: measures,
  find: (typed) => {
    const id = ids.find((i) => bare(containers.rows[i].name) === bare(typed) || i === typed)
    if (id === undefined) {
      const names = ids.map((i) => containers.rows[i].name)
      const near = nearestWords(typed, names)
      return { nearest: near.length > 0 ? near : names.slice(0, 4) }
    }
    const row = containers.rows[id]
    const { topLength_m, topWidth_m, footLength_m, footWidth_m, depth_m } = row
    const shape = row.shape === 'round' ? 'round' : 'rectangular'
    return { found: { label: row.name, row: id, shape, topLength_m, topWidth_m, footLength_m, footWidth_m, depth_m } }
  },
  build: (values) => containerOfMeasures(values as ValuesOf<typeof measures.fields>),
})
