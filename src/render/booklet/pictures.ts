import type { Drawing } from '../drawing/primitives.ts'
import { atOrigin } from './frame.ts'
import type { Given } from './input.ts'
import type { Picture } from './model.ts'
import {
  barPicture,
  endView,
  holePicture,
  jointPicture,
  lengthPicture,
  marksPicture,
  stubPicture,
} from './pictures-pipe.ts'
import {
  bucketPicture,
  distributorPicture,
  dripLoopPicture,
  lidPicture,
  plugPicture,
  standPicture,
  tankPicture,
  towerPicture,
  wettingPicture,
} from './pictures-stand.ts'

/** The picture of a step, drawn from the model; steps that need none have none. */
const views: Readonly<Record<string, (g: Given) => Drawing>> = {
  gather: towerPicture,
  'measure-pipe': (g) => endView(g, false),
  'bar-check': barPicture,
  'cut-column': lengthPicture,
  'draw-lines': (g) => endView(g, true),
  'mark-sites': marksPicture,
  'cut-stubs': stubPicture,
  'trace-holes': (g) => holePicture(g, false),
  'cut-holes': (g) => holePicture(g, true),
  'dry-fit': jointPicture,
  distributor: distributorPicture,
  lid: lidPicture,
  'plug-test': plugPicture,
  stand: (g) => standPicture(g, false),
  strap: (g) => standPicture(g, true),
  electricity: dripLoopPicture,
  fill: tankPicture,
  'bucket-test': bucketPicture,
  wetting: wettingPicture,
}

export function pictureOf(g: Given, step: string, title: string): Picture | null {
  const drawing = atOrigin(views[step]?.(g) ?? [])
  return drawing.length === 0 ? null : { drawing, alt: g.tell('picture-alt', { title }) }
}
