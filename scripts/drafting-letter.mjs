// Makes assets/fonts/RootfallDrafting.ttf from RoutedGothic.ttf by adding the letters that it lacks: Polish, Czech,
// Hungarian, Baltic and Romanian letters, ≤ ≥ ≈ ≠ … √ and a few Greek ones, each drawn with the same round pen.
// A changed font must not carry the reserved name of the original (SIL OFL 1.1, clause 3), hence the new name.
import { readFileSync, writeFileSync } from 'node:fs'
import * as fontkit from 'fontkit'

const folder = new URL('../assets/fonts/', import.meta.url)
const source = readFileSync(new URL('RoutedGothic.ttf', folder))
const font = fontkit.create(source)

const PEN = 96 // width of the pen of Routed Gothic, of 1024

// ── strokes ──────────────────────────────────────────────────────────────────────────────────────────────────
/** Outline of a stroke with round ends, clockwise, as rings of [x, y, onCurve]. */
function stroke(points, pen = PEN) {
  const r = pen / 2
  const dir = (a, b) => Math.atan2(b[1] - a[1], b[0] - a[0])
  const heading = points.map((_, i) => {
    const a = dir(points[Math.max(0, i - 1)], points[Math.max(1, i)])
    const b = dir(points[Math.min(points.length - 2, i)], points[Math.min(points.length - 1, i + 1)])
    return Math.atan2(Math.sin(a) + Math.sin(b), Math.cos(a) + Math.cos(b))
  })
  const at = (p, a) => [p[0] + r * Math.cos(a), p[1] + r * Math.sin(a), true]
  const cap = (p, a) => Array.from({ length: 7 }, (_, k) => at(p, a + Math.PI / 2 - (Math.PI * (k + 1)) / 8))
  const leftSide = points.map((p, i) => at(p, heading[i] + Math.PI / 2))
  const rightSide = points.map((p, i) => at(p, heading[i] - Math.PI / 2)).reverse()
  return [...leftSide, ...cap(points.at(-1), heading.at(-1)), ...rightSide, ...cap(points[0], heading[0] + Math.PI)]
}
const arc = (cx, cy, rx, ry, from, to, n = 24) =>
  Array.from({ length: n + 1 }, (_, i) => {
    const a = ((from + ((to - from) * i) / n) * Math.PI) / 180
    return [cx + rx * Math.cos(a), cy + ry * Math.sin(a)]
  })

/** Rings of a glyph of the font, moved by dx and dy. */
function rings(letter, dx = 0, dy = 0) {
  const out = []
  for (const { command, args } of font.glyphForCodePoint(letter.codePointAt(0)).path.commands) {
    if (command === 'moveTo') out.push([[args[0] + dx, args[1] + dy, true]])
    else if (command === 'lineTo') out.at(-1).push([args[0] + dx, args[1] + dy, true])
    else if (command === 'quadraticCurveTo')
      out.at(-1).push([args[0] + dx, args[1] + dy, false], [args[2] + dx, args[3] + dy, true])
    else if (command !== 'closePath') throw new Error(`drafting-letter: ${command} in ${letter}`)
  }
  return out
}
const advance = (letter) => font.glyphForCodePoint(letter.codePointAt(0)).advanceWidth
const box = (letter) => font.glyphForCodePoint(letter.codePointAt(0)).bbox

// ── the added letters ────────────────────────────────────────────────────────────────────────────────────────
const added = new Map()
const add = (letter, width, ...parts) => added.set(letter.codePointAt(0), { width, rings: parts.flat() })

const ogonek = (x, y = 40) => [
  stroke([
    [x, y],
    [x - 34, y - 60],
    [x - 46, y - 110],
    [x - 36, y - 152],
    [x, y - 176],
    [x + 44, y - 176],
  ]),
]
const commaBelow = (x) => [
  stroke([
    [x + 10, -130],
    [x - 24, -232],
  ]),
]
const apostrophe = (x) => [
  stroke([
    [x + 20, 700],
    [x - 14, 590],
  ]),
]
const doubleAcute = (x, y) => [
  stroke([
    [x - 100, y],
    [x - 50, y + 120],
  ]),
  stroke([
    [x + 60, y],
    [x + 110, y + 120],
  ]),
]
const bar = (x1, x2, y) => [
  stroke([
    [x1, y],
    [x2, y],
  ]),
]
const middle = (letter) => (box(letter).minX + box(letter).maxX) / 2
const withMark = (letter, base, mark, width = advance(base)) => add(letter, width, rings(base), mark)

for (const [letter, base, x, y] of [
  ['ą', 'a', 444],
  ['Ą', 'A', box('A').maxX - 48],
  ['ę', 'e', 330, 30],
  ['Ę', 'E', 540],
  ['į', 'i', middle('i') + 8, 40],
  ['Į', 'I', middle('I') + 4],
  ['ų', 'u', box('u').maxX - 48],
  ['Ų', 'U', middle('U') + 20, 30],
])
  withMark(letter, base, ogonek(x, y))
withMark('ł', 'l', [
  stroke([
    [46, 300],
    [242, 430],
  ]),
])
withMark('Ł', 'L', [
  stroke([
    [40, 300],
    [320, 470],
  ]),
])
withMark('đ', 'd', bar(330, 580, 620))
withMark('Đ', 'D', bar(40, 330, 372))
withMark('ħ', 'h', bar(30, 270, 620))
withMark('Ħ', 'H', bar(40, advance('H') - 40, 580))
for (const base of 'dtlL') {
  const right = base === 'L' ? 250 : box(base).maxX
  withMark(
    { d: 'ď', t: 'ť', l: 'ľ', L: 'Ľ' }[base],
    base,
    apostrophe(right + 90),
    advance(base) + (base === 'L' ? 0 : 130),
  )
}
for (const [letter, base] of ['ļl', 'ĻL', 'ķk', 'ĶK', 'ņn', 'ŅN', 'ŗr', 'ŖR', 'ĢG'].map((p) => [...p]))
  withMark(letter, base, commaBelow(middle(base)))
withMark('ģ', 'g', [
  stroke([
    [middle('g') - 10, 620],
    [middle('g') + 24, 722],
  ]),
])
for (const [letter, base, y] of [
  ['ő', 'o', 620],
  ['ű', 'u', 620],
  ['Ő', 'O', 830],
  ['Ű', 'U', 830],
])
  withMark(letter, base, doubleAcute(middle(base), y))
add('œ', 284 + advance('e') + 180, rings('o'), rings('e', 400))
add('Œ', 1180, rings('O'), rings('E', 484))
add('μ', advance('µ'), rings('µ'))
add('…', 3 * advance('.'), rings('.'), rings('.', advance('.')), rings('.', 2 * advance('.')))

const W = 640 // width of the signs, as < = >
const legs = [
  [536, 612],
  [128, 420],
  [536, 228],
]
const turnedLegs = legs.map(([x, y]) => [W - x, y])
add('≤', W, [stroke(legs.slice(0, 2)), stroke(legs.slice(1)), ...bar(104, 536, 80)])
add('≥', W, [stroke(turnedLegs.slice(0, 2)), stroke(turnedLegs.slice(1)), ...bar(104, 536, 80)])
add('≈', W, rings('~', 0, 130), rings('~', 0, -130))
add('≠', W, rings('='), [
  stroke([
    [190, 90],
    [450, 646],
  ]),
])
add('√', 720, [
  stroke([
    [60, 330],
    [150, 370],
  ]),
  stroke([
    [150, 370],
    [290, 40],
  ]),
  stroke([
    [290, 40],
    [480, 800],
  ]),
  stroke([
    [480, 800],
    [700, 800],
  ]),
])
add('π', 640, [
  ...bar(80, 560, 480),
  stroke([
    [200, 480],
    [200, 48],
  ]),
  stroke([[440, 480], [440, 140], ...arc(500, 140, 60, 92, 180, 270, 8)]),
])
add('Δ', 736, [
  stroke([
    [80, 48],
    [368, 688],
  ]),
  stroke([
    [368, 688],
    [656, 48],
  ]),
  stroke([
    [656, 48],
    [80, 48],
  ]),
])
add('Σ', 660, [
  stroke([
    [580, 688],
    [110, 688],
  ]),
  stroke([
    [110, 688],
    [380, 368],
  ]),
  stroke([
    [380, 368],
    [110, 48],
  ]),
  stroke([
    [110, 48],
    [580, 48],
  ]),
])
add('Ω', 760, [
  stroke([[90, 48], [270, 48], [270, 60], ...arc(380, 390, 270, 298, 247, -67, 40), [490, 48], [670, 48]]),
])
add('α', 620, [
  stroke(arc(270, 264, 170, 216, 90, 450, 48)),
  stroke([[530, 480], [440, 264], [440, 140], ...arc(510, 140, 70, 92, 180, 270, 8)]),
])
add('β', 600, [
  stroke([[120, -150], [120, 520], ...arc(290, 540, 170, 160, 180, -90, 30)]),
  stroke([[250, 380], ...arc(290, 214, 210, 166, 90, -90, 24), [210, 60], [120, 110]]),
])
add('θ', 568, [stroke(arc(284, 368, 200, 320, 90, 450, 48)), ...bar(100, 468, 368)])
add('φ', 700, [
  stroke(arc(350, 264, 250, 216, 90, 450, 48)),
  stroke([
    [350, 660],
    [350, -150],
  ]),
])
add('ρ', 580, [stroke([[110, -190], [110, 264], ...arc(284, 264, 174, 216, 180, -150, 40)])])
add('λ', 580, [
  stroke([
    [110, 700],
    [180, 680],
    [490, 48],
  ]),
  stroke([
    [310, 420],
    [90, 48],
  ]),
])
add('ν', 560, [
  stroke([
    [90, 480],
    [280, 48],
  ]),
  stroke([
    [280, 48],
    [470, 480],
  ]),
])
add('€', 672, [stroke(arc(400, 368, 260, 320, 52, 308, 40)), ...bar(50, 430, 440), ...bar(50, 430, 296)])

// ── writing the font ─────────────────────────────────────────────────────────────────────────────────────────
const u16 = (n) => [(n >> 8) & 255, n & 255]
const u32 = (n) => [(n >>> 24) & 255, (n >>> 16) & 255, (n >>> 8) & 255, n & 255]

function glyphBytes({ rings: all }) {
  const points = all.flat().map(([x, y, on]) => [Math.round(x), Math.round(y), on])
  const xs = points.map((p) => p[0])
  const ys = points.map((p) => p[1])
  const ends = []
  for (const ring of all) ends.push((ends.at(-1) ?? -1) + ring.length)
  const bytes = [all.length, Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys), ...ends, 0].flatMap(
    u16,
  )
  for (const p of points) bytes.push(p[2] ? 1 : 0)
  for (const axis of [0, 1])
    for (const [i, p] of points.entries()) bytes.push(...u16(p[axis] - (i ? points[i - 1][axis] : 0)))
  while (bytes.length % 4) bytes.push(0)
  return { bytes, points: points.length, contours: all.length, left: Math.min(...xs) }
}

const table = (tag) => {
  const t = font.directory.tables[tag]
  return Buffer.from(source.subarray(t.offset, t.offset + t.length))
}
const head = table('head'),
  hhea = table('hhea'),
  maxp = table('maxp'),
  os2 = table('OS/2')
const count = maxp.readUInt16BE(4)
const long = head.readInt16BE(50) === 1
const oldLoca = table('loca')
const loca = Array.from({ length: count + 1 }, (_, i) =>
  long ? oldLoca.readUInt32BE(4 * i) : 2 * oldLoca.readUInt16BE(2 * i),
)
let glyf = table('glyf').subarray(0, loca.at(-1))
const metricsCount = hhea.readUInt16BE(34)
const hmtx = [...table('hmtx')]
if (metricsCount !== count) throw new Error('drafting-letter: a short hmtx is not handled')

const codes = new Map(font.characterSet.filter((c) => c < 0x10000).map((c) => [c, font.glyphForCodePoint(c).id]))
let most = { points: maxp.readUInt16BE(6), contours: maxp.readUInt16BE(8) }
let id = count
for (const [code, glyph] of added) {
  const { bytes, points, contours, left } = glyphBytes(glyph)
  glyf = Buffer.concat([glyf, Buffer.alloc((4 - (glyf.length % 4)) % 4), Buffer.from(bytes)])
  loca[id] = glyf.length - bytes.length
  loca[id + 1] = glyf.length
  hmtx.push(...u16(glyph.width), ...u16(left))
  codes.set(code, id++)
  most = { points: Math.max(most.points, points), contours: Math.max(most.contours, contours) }
}
maxp.writeUInt16BE(id, 4)
maxp.writeUInt16BE(most.points, 6)
maxp.writeUInt16BE(most.contours, 8)
hhea.writeUInt16BE(id, 34)
head.writeInt16BE(1, 50)
head.writeUInt32BE(0, 8)

function cmap() {
  const runs = []
  for (const [code, glyph] of [...codes].sort((a, b) => a[0] - b[0])) {
    const last = runs.at(-1)
    if (last && code === last.end + 1 && glyph - code === last.delta) last.end = code
    else runs.push({ start: code, end: code, delta: glyph - code })
  }
  if (runs.at(-1).end !== 0xffff) runs.push({ start: 0xffff, end: 0xffff, delta: 1 })
  const n = runs.length
  const power = 2 ** Math.floor(Math.log2(n))
  const body = [
    ...[2 * n, 2 * power, Math.log2(power), 2 * n - 2 * power].flatMap(u16),
    ...runs.flatMap((r) => u16(r.end)),
    0,
    0,
    ...runs.flatMap((r) => u16(r.start)),
    ...runs.flatMap((r) => u16(r.delta & 0xffff)),
    ...runs.flatMap(() => [0, 0]),
  ]
  return Buffer.from([...[0, 1, 3, 1].flatMap(u16), ...u32(12), ...[4, body.length + 6, 0].flatMap(u16), ...body])
}

function names() {
  const licence = 'This Font Software is licensed under the SIL Open Font License, Version 1.1.'
  const records = [
    [0, 'Copyright (c) 2017 Darren Embry, as Routed Gothic. Letters added 2026 by the makers of rootfall.'],
    [1, 'Rootfall Drafting'],
    [2, 'Regular'],
    [3, 'Rootfall Drafting 1.000'],
    [4, 'Rootfall Drafting'],
    [5, 'Version 1.000'],
    [6, 'RootfallDrafting'],
    [13, licence],
    [14, 'https://openfontlicense.org'],
  ].map(([nameId, text]) => ({ nameId, bytes: Buffer.from(text, 'utf16le').swap16() }))
  let offset = 0
  const rows = records.flatMap(({ nameId, bytes }) => {
    const row = [3, 1, 0x409, nameId, bytes.length, offset].flatMap(u16)
    offset += bytes.length
    return row
  })
  return Buffer.concat([
    Buffer.from([...[0, records.length, 6 + rows.length].flatMap(u16), ...rows]),
    ...records.map((r) => r.bytes),
  ])
}

const sum = (bytes) => {
  let total = 0
  for (let i = 0; i < bytes.length; i += 4)
    total =
      (total +
        (((bytes[i] << 24) | ((bytes[i + 1] ?? 0) << 16) | ((bytes[i + 2] ?? 0) << 8) | (bytes[i + 3] ?? 0)) >>> 0)) >>>
      0
  return total
}
const post = Buffer.concat([Buffer.from(u32(0x00030000)), table('post').subarray(4, 32)])
const tables = {
  'OS/2': os2,
  cmap: cmap(),
  'cvt ': table('cvt '),
  gasp: table('gasp'),
  glyf,
  head,
  hhea,
  hmtx: Buffer.from(hmtx),
  kern: table('kern'),
  loca: Buffer.from(loca.flatMap(u32)),
  maxp,
  name: names(),
  post,
}
const tags = Object.keys(tables)
const power = 2 ** Math.floor(Math.log2(tags.length))
const directory = [
  ...u32(0x00010000),
  ...[tags.length, 16 * power, Math.log2(power), 16 * (tags.length - power)].flatMap(u16),
]
let offset = 12 + 16 * tags.length
const bodies = []
for (const tag of tags) {
  const body = tables[tag]
  directory.push(...Buffer.from(tag), ...u32(sum(body)), ...u32(offset), ...u32(body.length))
  const padded = Buffer.concat([body, Buffer.alloc((4 - (body.length % 4)) % 4)])
  bodies.push(padded)
  offset += padded.length
}
const file = Buffer.concat([Buffer.from(directory), ...bodies])
const headAt = file.indexOf(head)
file.writeUInt32BE((0xb1b0afba - sum(file)) >>> 0, headAt + 8)
writeFileSync(new URL('RootfallDrafting.ttf', folder), file)
console.log(`RootfallDrafting.ttf: ${file.length} bytes, ${added.size} letters added to ${count} glyphs`)
