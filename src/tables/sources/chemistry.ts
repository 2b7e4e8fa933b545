import { sourcesOf } from '../source.ts'

export const chemistrySources = sourcesOf({})
