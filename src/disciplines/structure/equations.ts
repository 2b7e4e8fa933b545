/** The relations of this discipline: a table of contents. */
export * from './equations-bending.ts'
export * from './equations-floor.ts'
export * from './equations-mass.ts'
export * from './equations-tipping.ts'
export * from './equations-wind.ts'
