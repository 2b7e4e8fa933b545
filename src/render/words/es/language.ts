import { language as english } from '../en/language.ts'
import type { Language } from '../language.ts'

export const language: Language = english
