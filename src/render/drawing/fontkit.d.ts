/** The part of fontkit that we use; the package brings no types. */
declare module 'fontkit' {
  export interface LetterRun {
    readonly glyphs: readonly { readonly id: number; readonly advanceWidth: number }[]
    readonly positions: readonly { readonly xAdvance: number }[]
  }
  export interface LetterFont {
    readonly unitsPerEm: number
    layout(text: string, features?: Readonly<Record<string, boolean>>): LetterRun
  }
  export function create(bytes: Uint8Array): LetterFont
}
