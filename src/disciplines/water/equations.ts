/** The relations of this discipline: a table of contents. */
export * from './equations-air.ts'
export * from './equations-day.ts'
export * from './equations-heat.ts'
export * from './equations-oxygen.ts'
export * from './equations-sun.ts'
export * from './equations-tank.ts'
export * from './equations-thirst.ts'
export * from './equations-wall-sun.ts'
