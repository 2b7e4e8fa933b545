// The first answer of the page, computed by the engine itself when the page is built.
import type { Plugin } from 'vite'
import balcony from '../examples/balcony.plan.json' with { type: 'json' }
import { type LanguageTag, languageNames } from '../src/render/words/language.ts'
import { firstAnswer } from '../src/shells/web/workers/first-answer.ts'
import { firstWordsOf } from '../src/shells/web/workers/first-words.ts'

/** Puts the answer beside the page, asked for together with its code. */
export const firstAnswerBeside = (): Plugin => ({
  name: 'first-answer',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'assets/first.json', source: firstAnswer(balcony) })
    for (const tag of Object.keys(languageNames) as LanguageTag[])
      this.emitFile({
        type: 'asset',
        fileName: `assets/words-${tag}.json`,
        source: JSON.stringify(firstWordsOf(tag)),
      })
  },
  transformIndexHtml: () => [
    {
      tag: 'link',
      attrs: { rel: 'preload', href: './assets/first.json', as: 'fetch', crossorigin: 'anonymous' },
      injectTo: 'head',
    },
  ],
})
