import { join } from 'node:path'
import { evaluate } from '../../../evaluate.ts'
import { nearestWords } from '../../../kernel/nearest.ts'
import { glb } from '../../../render/solids/glb.ts'
import { type SolidId, type SolidPart, solidIds } from '../../../render/solids/part.ts'
import { absentText, cautionTexts, remarkTexts, sizeText } from '../../../render/solids/say.ts'
import { baked } from '../../../render/solids/scene.ts'
import { solidSet } from '../../../render/solids/solids.ts'
import { stl } from '../../../render/solids/stl.ts'
import { threeMf } from '../../../render/solids/three-mf.ts'
import { displayOf } from '../display.ts'
import { EXIT, isStop, json, out, type Stop, say, stop, writeWhole } from '../io.ts'
import { language } from '../language.ts'
import type { CommandOf } from '../main.ts'
import { planFile } from '../plan-file.ts'

const formats = {
  stl: (part: SolidPart, title: string) => stl(baked(part.scene), `${title}, ${part.name}, mm`),
  '3mf': (part: SolidPart, title: string) => threeMf(part.scene, `${title}, ${part.name}`),
  glb: (part: SolidPart) => glb(part.scene),
} as const

type Format = keyof typeof formats

/** Names of a list with commas, each of which must be known. */
function listed<Name extends string>(option: string, typed: unknown, known: readonly Name[]): readonly Name[] | Stop {
  const names =
    typed === undefined
      ? []
      : String(typed)
          .split(',')
          .map((s) => s.trim())
  const found: Name[] = []
  for (const name of names) {
    const own = known.find((k) => k === name)
    if (own !== undefined) {
      found.push(own)
      continue
    }
    const near = nearestWords(name, [...known])
    const hint = near.length > 0 ? `Did you mean ${near.join(' or ')}?` : `There are: ${known.join(', ')}.`
    return stop(`${option} ${name}: there is no such name. ${hint}`, EXIT.usage)
  }
  return found
}

export const solids: CommandOf = {
  name: 'solids',
  summary: 'solids to print and to look at: stub, drilling guide, gauge, cup, ring, lid, column and tower',
  describe: (c) =>
    c
      .argument('<plan>', 'plan file, or - for standard input')
      .requiredOption('--out <folder>', 'where to write the files')
      .option('--only <names>', `some solids only, of: ${solidIds.join(', ')}`)
      .option('--format <names>', `of: ${Object.keys(formats).join(', ')}; all where left out`),
  run: ([path], options) => {
    const only = listed<SolidId>('--only', options['only'], solidIds)
    if (isStop(only)) return only
    const all = Object.keys(formats) as Format[]
    const asked = listed<Format>('--format', options['format'], all)
    if (isStop(asked)) return asked
    const read = planFile(path!)
    if (isStop(read)) return read
    const { plan } = read
    const set = solidSet({ plan, facts: evaluate(plan).facts, only })
    const bed_m = plan.tools?.bed_m
    const tongue = { words: language().words, sentences: language().solids, display: displayOf(plan) }
    const left = set.absent.map((a) => absentText(a, tongue))
    for (const sentence of left) say(sentence)
    if (set.parts.length === 0) return stop(language().solids['why-nothing'], EXIT.input)
    const files: string[] = []
    for (const part of set.parts)
      for (const format of asked.length > 0 ? asked : all) {
        const file = join(String(options['out']), `${part.name}.${format}`)
        writeWhole(file, formats[format](part, plan.name ?? ''))
        files.push(file)
      }
    const parts = set.parts.map((p) => ({
      name: p.name,
      size: sizeText(p, tongue),
      remarks: remarkTexts(p, bed_m, tongue),
      fits: p.fits,
      triangles: p.scene.nodes.reduce((sum, n) => sum + p.scene.meshes[n.mesh]!.mesh.indices.length / 3, 0),
    }))
    const cautions = cautionTexts(set, bed_m, tongue)
    for (const p of parts) for (const line of [p.size, ...p.remarks.map((r) => `  ${r}`)]) say(line)
    for (const caution of cautions) say(caution)
    if (options['json']) json({ files, parts, cautions, leftOut: left })
    else for (const file of files) out(file)
    return read.issues.length > 0 ? EXIT.input : EXIT.holds
  },
}
