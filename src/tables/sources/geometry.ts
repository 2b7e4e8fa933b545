import { sourcesOf } from '../source.ts'

export const geometrySources = sourcesOf({})
