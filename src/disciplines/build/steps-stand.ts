import { practiceLengths, practiceRatios, practiceTimes } from '../../tables/practice.ts'
import type { Situation } from './situation.ts'
import { type Need, type Step, type StepId, step } from './step.ts'

const distributing: Readonly<Record<string, readonly string[]>> = {
  cup: ['drill-cup', 'deburr-holes', 'hang-cup'],
  ring: ['drill-ring', 'deburr-holes'],
  tee: ['fit-tee'],
}

const capping: Readonly<Record<string, readonly string[]>> = {
  'push-on cap': ['push-cap'],
  'glued cap': ['glue-cap'],
  'test plug': ['fit-plug'],
}

const basing: Readonly<Record<string, readonly string[]>> = {
  'through the lid': ['cut-base-ring', 'notch-foot'],
  'flange on the lid': ['bolt-flange', 'seal-flange'],
  'own foot': ['build-foot', 'lead-drain-back'],
}

/** Top, lid, base and hose: they wait for no joint. */
export function partsOfTheLoop(s: Situation): Step[] {
  const { distributor, column, reservoir, drain } = s.plan
  const base = column?.base?.kind
  const lidded = base !== 'own foot'
  const glued = column?.cap === 'glued cap'
  const draining = drain?.holes !== undefined && drain.hole_m !== undefined
  return [
    step(s, 'distributor', {
      after: ['gather'],
      actions: [
        ...(distributing[distributor?.kind ?? ''] ?? ['make-distributor']),
        ...(capping[column?.cap ?? ''] ?? []),
      ],
      cautions: ['blade', ...(glued ? ['vapours', 'flame', 'solvent-gloves'] : [])],
      tools: ['drill', 'distributor-bit', 'file'],
      parts: ['distributor', 'cap'],
      sheet: 'distributor-plate',
    }),
    step(s, 'lid', {
      after: ['measure-pipe'],
      actions: [...(lidded ? ['saw-lid-hole'] : []), 'saw-filler', 'notch-cable', 'mesh-openings', 'latch-lid'],
      cautions: ['blade', ...(reservoir === undefined ? [] : ['drowning'])],
      tools: ['jigsaw', 'filler-saw', 'file', 'goggles'],
      parts: ['lid', 'mesh'],
      sheet: 'lid',
    }),
    step(s, 'base', {
      after: ['measure-pipe', 'lid'],
      actions: [...(basing[base ?? ''] ?? ['make-base']), ...(draining ? ['drill-drain'] : [])],
      cautions: ['blade', ...(draining ? ['dust'] : [])],
      tools: ['saw', 'file', 'screwdriver', ...(draining ? ['drill', 'drain-bit', 'goggles', 'mask'] : [])],
      parts:
        base === 'through the lid'
          ? ['base-ring']
          : base === 'flange on the lid'
            ? ['flange', 'bolts']
            : ['foot', 'screws'],
      sheet: 'base',
    }),
    step(s, 'plumbing', {
      after: ['distributor', 'lid'],
      actions: ['cut-hose', 'clamp-ends', 'rinse-hose', ...(s.plan.riser?.airBreak === 'yes' ? ['air-break'] : [])],
      tools: ['knife', 'screwdriver'],
      parts: ['hose', 'clamps', 'pump', 'fittings'],
      sheet: 'plumbing',
    }),
  ]
}

const plumb = practiceRatios.rows.plumb.high

/** The column is proved dry, stood up, tied and given its current. */
export function raising(
  s: Situation,
  waits: { readonly set: Need; readonly water: Need; readonly bead_s: number },
): Step[] {
  const { set, water, bead_s } = waits
  const stands: StepId = s.strap ? 'strap' : 'stand'
  const leak_s = practiceTimes.rows['leak-hold'].low_s
  return [
    ...(s.fillet
      ? [
          step(s, 'fillet', {
            after: [set],
            actions: ['wipe', 'bead-outside', 'tool-bead'],
            cautions: ['sealant-air'],
            tools: ['caulking-gun', 'cloth'],
            parts: ['sealant', 'alcohol'],
          }),
        ]
      : []),
    step(s, 'plug-test', {
      after: [water, ...(s.fillet ? [{ step: 'fillet', wait_s: bead_s, waitFor: 'water' } as const] : [])],
      actions: ['plug-foot', 'fill-to-lip', 'watch-joints', 'mark-weeps'],
      cautions: ['lifting', 'tipping'],
      test: { id: 'weeps', unit: 'count', must: { max: 0 } },
      tools: ['test-plug', 'bucket', 'marker', 'watch'],
      stay_s: leak_s,
    }),
    step(s, 'stand', {
      after: ['plug-test', 'base', 'lid', 'plumbing'],
      actions: ['level-base', 'lift-column', 'plumb-column', 'thread-hose'],
      cautions: ['tipping', 'lifting', 'floor'],
      test: { id: 'plumb', unit: '1', must: { max: plumb } },
      tools: ['level', 'plumb-line'],
    }),
    ...(s.strap
      ? [
          step(s, 'strap', {
            after: ['stand'],
            actions: ['fix-anchor', 'tie-strap', 'push-test'],
            cautions: ['ask-building', 'hidden-cables', 'tipping'],
            tools: ['drill', 'tape', 'screwdriver'],
            parts: ['strap', 'strap-screws'],
          }),
        ]
      : []),
    step(s, 'electricity', {
      after: [stands, 'plumbing'],
      actions: s.mains
        ? ['test-button', 'hang-drip-loop', 'plug-above']
        : ['place-supply', 'hang-drip-loop', 'fuse-battery'],
      cautions: s.mains ? ['mains', 'drip-loop'] : ['low-voltage', 'drip-loop'],
      parts: s.mains ? ['rcd', 'pump'] : ['pump'],
      tools: [],
    }),
  ]
}

/** Tolerance of the base over which the column stands, for its sentence. */
export const BASE_LEVEL_m = practiceLengths.rows['base-level'].high_m
