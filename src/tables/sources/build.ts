import { sourcesOf } from '../source.ts'

export const buildSources = sourcesOf({})
