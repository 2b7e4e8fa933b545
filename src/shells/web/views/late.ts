// Everything that is not on the first screen; fetched as one once that is painted.
export { issueSentences } from '../model/issues.ts'
export { Make } from './Make.tsx'
export { Panels } from './Panels.tsx'
export { Slip } from './Slip.tsx'
export { Solid } from './Solid.tsx'
export { Tend } from './Tend.tsx'
export { taken } from './taken.ts'
export { Why } from './Why.tsx'
