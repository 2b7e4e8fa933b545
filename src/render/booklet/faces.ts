/** Where a typeface of the booklet lies under assets/fonts/page, and which letters it holds. */
export interface FaceFile {
  readonly file: string
  readonly family: 'Booklet Serif' | 'Booklet Drafting'
  readonly weight: string
  readonly italic: boolean
  readonly range?: string
}

const latin =
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD'
const latinExt =
  'U+0100-0130,U+0132-0151,U+0154-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0'

/** The faces that a booklet carries, about 120 kB together. */
export const faceFiles: readonly FaceFile[] = [
  { file: 'source-serif-4-latin-400-normal', family: 'Booklet Serif', weight: '400 500', italic: false, range: latin },
  { file: 'source-serif-4-latin-600-normal', family: 'Booklet Serif', weight: '600', italic: false, range: latin },
  { file: 'source-serif-4-latin-400-italic', family: 'Booklet Serif', weight: '400 600', italic: true, range: latin },
  // Faces of one weight must be declared alike, or a browser takes one of them for the whole.
  {
    file: 'source-serif-4-latin-ext-400-normal',
    family: 'Booklet Serif',
    weight: '400 500',
    italic: false,
    range: latinExt,
  },
  {
    file: 'source-serif-4-latin-ext-600-normal',
    family: 'Booklet Serif',
    weight: '600',
    italic: false,
    range: latinExt,
  },
  { file: 'drafting-full', family: 'Booklet Drafting', weight: '400', italic: false },
]
