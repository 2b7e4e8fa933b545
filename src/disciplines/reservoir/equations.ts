/** The relations of this discipline: a table of contents. */
export * from './equations-lines.ts'
export * from './equations-shapes.ts'
