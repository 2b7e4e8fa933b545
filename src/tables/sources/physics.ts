import { sourcesOf } from '../source.ts'

export const physicsSources = sourcesOf({})
