import type { Stub } from '../../disciplines/templates/joint.ts'
import { samples } from './facets.ts'
import { draft, fan, type Mesh, mesh, type Place, sew, vertex } from './mesh.ts'

/** A wedge that lies between the column above a stub and the stub's crown, hollowed to the rounds of both. */
export interface AngleGauge {
  readonly stub: Stub
  readonly width_m: number
  /** Up the column from where the two meet. */
  readonly tall_m: number
  /** Out from the column. */
  readonly out_m: number
  /** Kept free along both sides of the corner, for the bead of the joint. */
  readonly relief_m: number
  readonly error_m: number
}

/** The gauge's outline at a distance y from the column's middle plane, in x and z; anticlockwise seen from -y. */
export function gaugeOutline(g: AngleGauge, y_m: number): readonly Place[] {
  const { columnRadius_m: R, stubRadius_m: r, angle_rad: th, offset_m: e } = g.stub
  const x = Math.sqrt(R * R - y_m * y_m)
  const n = Math.sqrt(r * r - (y_m - e) ** 2)
  const corner = (x + n * Math.cos(th)) / Math.sin(th)
  const on = (s: number): Place => [s * Math.sin(th) - n * Math.cos(th), y_m, s * Math.cos(th) + n * Math.sin(th)]
  const z = on(corner)[2]
  const right_m = R + g.out_m
  const end = (right_m + n * Math.cos(th)) / Math.sin(th)
  const top_m = (R + r * Math.cos(th)) / Math.tan(th) + r * Math.sin(th) + g.tall_m
  return [on(corner + g.relief_m), on(end), [right_m, y_m, top_m], [x, y_m, top_m], [x, y_m, z + g.relief_m]]
}

export function gaugeMesh(g: AngleGauge): Mesh {
  const middle = g.stub.offset_m
  const [from, to] = [middle - g.width_m / 2, middle + g.width_m / 2]
  const curves = [0, 1, 2, 3, 4].map((k) => (y: number) => gaugeOutline(g, y)[k]!)
  const ys = samples({ curves, from, to, error_m: g.error_m, pieces: 2 })
  const d = draft()
  const period = 5
  const loops = ys.map((y) => ({ ids: gaugeOutline(g, y).map((p) => vertex(d, p)), along: [0, 1, 2, 3, 4] }))
  for (let k = 0; k + 1 < loops.length; k++) sew(d, loops[k]!, loops[k + 1]!, { period, flip: true })
  fan(d, loops[0]!.ids)
  fan(d, loops.at(-1)!.ids, true)
  return mesh(d)
}

/** Lying on its side, as it is printed. */
export const lying = ([x, y, z]: Place): Place => [x, -z, y]
