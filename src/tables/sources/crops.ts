import { sourcesOf } from '../source.ts'

export const cropsSources = sourcesOf({})
