// The first answer of the page, computed by the engine itself when the page is built.
import type { Plugin } from 'vite'
import balcony from '../examples/balcony.plan.json' with { type: 'json' }
import { firstAnswer } from '../src/shells/web/workers/first-answer.ts'

/** Puts the answer beside the page, asked for together with its code. */
export const firstAnswerBeside = (): Plugin => ({
  name: 'first-answer',
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'assets/first.json', source: firstAnswer(balcony) })
  },
  transformIndexHtml: () => [
    {
      tag: 'link',
      attrs: { rel: 'preload', href: './assets/first.json', as: 'fetch', crossorigin: 'anonymous' },
      injectTo: 'head',
    },
  ],
})
