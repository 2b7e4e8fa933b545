// The first answer of the page, computed by the engine itself when the page is built.
import type { Plugin } from 'vite'
import balcony from '../examples/balcony.plan.json' with { type: 'json' }
import { type LanguageTag, languageNames } from '../src/render/words/language.ts'
import { speak } from '../src/shells/web/words.ts'
import { firstAnswer, firstDrawn } from '../src/shells/web/workers/first-answer.ts'
import { firstWordsOf } from '../src/shells/web/workers/first-words.ts'

/** Puts the answer beside the page, asked for together with its code. */
export const firstAnswerBeside = (): Plugin => ({
  name: 'first-answer',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'assets/first.json', source: firstAnswer(balcony) })
    for (const tag of Object.keys(languageNames) as LanguageTag[]) {
      const words = firstWordsOf(tag)
      this.emitFile({ type: 'asset', fileName: `assets/words-${tag}.json`, source: JSON.stringify(words) })
      speak(words)
      for (const [i, source] of firstDrawn(balcony).entries())
        this.emitFile({ type: 'asset', fileName: `assets/drawn-${tag}-${i + 1}.json`, source })
    }
  },
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle }) => [
      preload('./assets/first.json', 'fetch'),
      ...Object.keys(bundle ?? {})
        .filter((name) => FACES.test(name))
        .map((name) => preload(`./${name}`, 'font')),
    ],
  },
})

/** Faces of the first screen, cut to its letters; asked for at once, not when the first text is laid out. */
const FACES = /\/(serif-400|serif-600|serif-italic|drafting)-(?!full)[\w-]+\.woff2$/

const preload = (href: string, as: 'fetch' | 'font') => ({
  tag: 'link',
  attrs: { rel: 'preload', href, as, crossorigin: 'anonymous' },
  injectTo: 'head' as const,
})
