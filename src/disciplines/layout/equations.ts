/** Where sites stand on a column: a table of contents. Derivations stand in docs/geometry.md. */
export * from './equations-floor.ts'
export * from './equations-helix.ts'
export * from './equations-lattice.ts'
export * from './equations-marks.ts'
