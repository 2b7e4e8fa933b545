import { practiceAngles, practiceTimes } from '../../tables/practice.ts'
import type { Situation } from './situation.ts'
import { type Step, type StepId, step } from './step.ts'

const HOLE_TOOLS: Readonly<Record<string, string>> = {
  jigsaw: 'jigsaw',
  'rotary tool': 'rotary-tool',
  'hole saw': 'hole-saw',
  file: 'file',
}

const holeTool = (s: Situation): string => HOLE_TOOLS[s.plan.tools?.holeTool ?? ''] ?? 'hole-tool'

function cuttingHoles(s: Situation): Step[] {
  const along = s.plan.column?.stub?.hole === 'along the stub'
  const stub = s.method === 'stub'
  const how = !stub ? 'cut-round' : along ? 'cut-along' : 'cut-square'
  return [
    step(s, 'trace-holes', {
      after: ['mark-sites', 'closure'],
      actions: stub ? ['tape-template', 'trace-outline', 'check-arrow'] : ['draw-circles'],
      tools: ['marker', 'masking-tape'],
      sheet: 'hole-template',
    }),
    step(s, 'cut-holes', {
      after: ['trace-holes'],
      actions: ['drill-starter', how, 'file-to-line'],
      cautions: ['blade', 'dust'],
      tools: ['drill', 'starter-bit', holeTool(s), 'file', 'goggles', 'mask', 'v-block'],
      sheet: 'hole-template',
    }),
  ]
}

const deburring = (s: Situation, after: readonly StepId[]): Step =>
  step(s, 'deburr', {
    after,
    actions: ['deburr-inside', 'wash-dust', 'dry-pipe'],
    cautions: ['dust-drain'],
    tools: ['deburrer', 'bucket'],
  })

const lightTest = (s: Situation): Step =>
  step(s, 'light-test', { after: ['deburr'], actions: ['lamp-inside', 'paint-outside'], tools: ['lamp'] })

const joinWords: Readonly<Record<string, readonly string[]>> = {
  cement: ['abrade', 'wipe', 'prime', 'brush-cement', 'push-and-turn', 'hold', 'gauge-angle', 'rest-before-turn'],
  silicone: ['abrade', 'wipe', 'bead-in-hole', 'push-stub', 'tool-bead', 'gauge-angle', 'rest-before-turn'],
  epoxy: ['abrade', 'wipe', 'mix-epoxy', 'push-stub', 'gauge-angle', 'rest-before-turn'],
  weld: ['wipe', 'tack-stub', 'gauge-angle', 'weld-round'],
  grommet: ['seat-grommet', 'wet-and-push', 'gauge-angle'],
}
const joinCautions: Readonly<Record<string, readonly string[]>> = {
  cement: ['vapours', 'flame', 'solvent-gloves'],
  silicone: ['sealant-air'],
  epoxy: ['epoxy-skin'],
  weld: ['hot-pvc'],
  grommet: [],
}
const joinTools: Readonly<Record<string, readonly string[]>> = {
  cement: ['abrasive', 'cloth', 'gloves', 'angle-gauge', 'v-block'],
  silicone: ['abrasive', 'cloth', 'caulking-gun', 'angle-gauge', 'v-block'],
  epoxy: ['abrasive', 'cloth', 'gloves', 'angle-gauge', 'v-block'],
  weld: ['hot-air-welder', 'angle-gauge', 'v-block'],
  grommet: ['angle-gauge'],
}
const joinParts: Readonly<Record<string, readonly string[]>> = {
  cement: ['cement', 'primer', 'alcohol', 'abrasive'],
  silicone: ['sealant', 'alcohol', 'abrasive'],
  epoxy: ['epoxy', 'alcohol', 'abrasive'],
  weld: ['weld-rod', 'alcohol'],
  grommet: ['grommet'],
}

const angleTest = {
  id: 'stub-angle',
  unit: 'rad',
  must: { min: practiceAngles.rows['stub-angle'].low_rad, max: practiceAngles.rows['stub-angle'].high_rad },
} as const

function stubs(s: Situation): Step[] {
  const mitre = s.plan.column?.stub?.end === 'mitre'
  const joint = s.joint ?? 'cement'
  const rests = joint === 'grommet' || joint === 'weld' ? 0 : Math.max(0, s.linesInAll - 1)
  return [
    step(s, 'cut-stubs', {
      after: ['closure'],
      actions: [
        mitre ? 'set-saw-angle' : 'wrap-stub',
        'saw-stubs',
        ...(mitre ? ['turn-and-share'] : ['file-saddle']),
        'number-stubs',
      ],
      cautions: ['blade', 'dust'],
      tools: ['saw', ...(mitre ? ['stop-block'] : ['file']), 'goggles', 'mask'],
      parts: ['stub-pipe'],
      sheet: mitre ? 'cut-list' : 'stub-template',
    }),
    ...cuttingHoles(s),
    deburring(s, ['cut-holes', 'cut-stubs']),
    lightTest(s),
    step(s, 'dry-fit', {
      after: ['deburr'],
      actions: ['fit-all-dry', 'gauge-dry', 'tick-sites'],
      test: angleTest,
      tools: ['angle-gauge', 'file'],
      sheet: 'angle-gauge',
    }),
    step(s, 'join-stubs', {
      after: ['dry-fit', 'light-test'],
      actions: ['start-lowest', ...(joinWords[joint] ?? [])],
      cautions: joinCautions[joint] ?? [],
      test: angleTest,
      tools: joinTools[joint] ?? [],
      parts: joinParts[joint] ?? [],
      sheet: 'angle-gauge',
      stay_s: rests * practiceTimes.rows['cement-rest'].low_s,
    }),
  ]
}

function pockets(s: Situation): Step[] {
  return [
    step(s, 'saw-slits', {
      after: ['mark-sites'],
      actions: ['drill-stop-holes', 'saw-slit'],
      cautions: ['blade', 'dust'],
      tools: ['drill', 'starter-bit', 'saw', 'goggles', 'mask'],
      sheet: 'marks',
    }),
    deburring(s, ['saw-slits']),
    lightTest(s),
    step(s, 'form-pockets', {
      after: ['deburr', 'light-test'],
      actions: ['heat-zone', 'press-former', 'hold-former', 'skip-next'],
      cautions: ['hot-pvc', 'heat-gloves'],
      tools: ['heat-gun', 'former', 'heat-gloves'],
    }),
  ]
}

const holes = (s: Situation): Step[] => [...cuttingHoles(s), deburring(s, ['cut-holes']), lightTest(s)]

function fittings(s: Situation): Step[] {
  return [
    deburring(s, ['draw-lines']),
    lightTest(s),
    step(s, 'assemble-fittings', {
      after: ['deburr', 'light-test'],
      actions: ['dry-assemble', 'mark-bearing', 'prime', 'brush-cement', 'push-and-turn', 'hold'],
      cautions: ['vapours', 'flame', 'solvent-gloves'],
      tools: ['abrasive', 'cloth', 'gloves'],
      parts: ['site-fitting', 'cement', 'primer'],
      stay_s: practiceTimes.rows['cement-rest'].low_s,
    }),
  ]
}

/** Sites are made, whichever way; `last` is the step after which the column is whole. */
export function siteSteps(s: Situation): { readonly steps: readonly Step[]; readonly last: StepId } {
  switch (s.method) {
    case 'stub':
      return { steps: stubs(s), last: 'join-stubs' }
    case 'pocket':
      return { steps: pockets(s), last: 'form-pockets' }
    case 'hole':
      return { steps: holes(s), last: 'light-test' }
    default:
      return { steps: fittings(s), last: 'assemble-fittings' }
  }
}
