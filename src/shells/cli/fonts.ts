import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { faceFiles } from '../../render/booklet/faces.ts'
import type { BookletFace } from '../../render/booklet/html.ts'
import type { FontBytes } from '../../render/drawing/pdf.ts'

const files = {
  drafting: 'RootfallDrafting',
  serif: 'SourceSerif4-Regular',
  italic: 'SourceSerif4-Italic',
  medium: 'SourceSerif4-Medium',
  strong: 'SourceSerif4-SemiBold',
} as const

/** The typefaces lie in assets/fonts: beside dist/ where the command is built, up from here where the sources run. */
const folder = (): string | undefined =>
  ['../assets/fonts', '../../assets/fonts', '../../../assets/fonts', '../../../../assets/fonts']
    .map((path) => join(import.meta.dirname, path))
    .find((path) => existsSync(join(path, `${files.serif}.ttf`)))

/** The bytes of all faces, or undefined where the installation lacks them. */
export function fontBytes(): FontBytes | undefined {
  const path = folder()
  if (path === undefined) return undefined
  const read = (name: string) => new Uint8Array(readFileSync(join(path, `${name}.ttf`)))
  return {
    drafting: read(files.drafting),
    serif: read(files.serif),
    italic: read(files.italic),
    medium: read(files.medium),
    strong: read(files.strong),
  }
}

/** The faces that a booklet carries inside, or undefined where the installation lacks them. */
export function bookletFaces(): readonly BookletFace[] | undefined {
  const path = folder()
  if (path === undefined || !existsSync(join(path, 'page'))) return undefined
  return faceFiles.map(({ file, ...face }) => ({
    ...face,
    base64: readFileSync(join(path, 'page', `${file}.woff2`)).toString('base64'),
  }))
}
