/** Only the science: the pure functions of each discipline, for people who want nothing else. */
export * as cuts from './disciplines/cuts/equations.ts'
export * as hydraulics from './disciplines/hydraulics/equations.ts'
export * as layout from './disciplines/layout/equations.ts'
export * as power from './disciplines/power/equations.ts'
export * as reservoir from './disciplines/reservoir/equations.ts'
export * as structure from './disciplines/structure/equations.ts'
export * as templates from './disciplines/templates/equations.ts'
export * as water from './disciplines/water/equations.ts'
