import type { Drawing } from '../drawing/primitives.ts'
import { atOrigin } from './frame.ts'
import type { Given } from './input.ts'
import type { Picture } from './model.ts'
import { beadPicture, joinPicture, mixPicture, plantedPicture } from './pictures-joint.ts'
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
  basePicture,
  dayPicture,
  flushPicture,
  fullFlowPicture,
  lowFlowPicture,
  nightPicture,
  plumbingPicture,
  stopPicture,
} from './pictures-run.ts'
import {
  distributorPicture,
  dripLoopPicture,
  lidPicture,
  plugPicture,
  standPicture,
  towerPicture,
  wettingPicture,
} from './pictures-stand.ts'
import { bucketPicture, tankPicture } from './pictures-tank.ts'
import {
  closurePicture,
  edgePicture,
  fittingPicture,
  lightPicture,
  printPicture,
  slitPicture,
} from './pictures-work.ts'

/** The picture of each step, drawn from the model: none only where the plan lacks what it would show. */
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
  print: printPicture,
  closure: closurePicture,
  'saw-slits': (g) => slitPicture(g, false),
  'form-pockets': (g) => slitPicture(g, true),
  'assemble-fittings': fittingPicture,
  deburr: edgePicture,
  'light-test': lightPicture,
  'join-stubs': joinPicture,
  fillet: beadPicture,
  base: basePicture,
  plumbing: plumbingPicture,
  'run-low': lowFlowPicture,
  'run-full': fullFlowPicture,
  'stop-restart': stopPicture,
  'run-day': dayPicture,
  'stand-night': nightPicture,
  flush: flushPicture,
  feed: mixPicture,
  plant: plantedPicture,
}

export function pictureOf(g: Given, step: string, title: string): Picture | null {
  const drawing = atOrigin(views[step]?.(g) ?? [])
  return drawing.length === 0 ? null : { drawing, alt: g.tell('picture-alt', { title }) }
}
