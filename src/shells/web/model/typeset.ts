/** A run of an equation as set in a book. */
export interface Run {
  readonly kind: 'symbol' | 'sub' | 'sup' | 'upright'
  readonly text: string
}

const TOKEN = /_\{([^}]*)\}|_(\w+)|\^\(([^)]*)\)|\^(-?[\d.]+|[\wα-ωΑ-Ω])|([\p{L}][\p{L}\d]*'*)|([^\p{L}_^]+)|(.)/gu
const UPRIGHT = new Set([
  ...[
    'sin',
    'cos',
    'tan',
    'asin',
    'acos',
    'atan',
    'cot',
    'sqrt',
    'log',
    'ln',
    'exp',
    'min',
    'max',
    'for',
    'where',
    'else',
  ],
  ...['and', 'or', 'if', 'with', 'below', 'above', 'the', 'of', 'to', 'sum', 'over', 'in', 'at', 'is', 'case', 'both'],
])

/**
 * Plain characters to runs: symbols in italic, their indices below, numbers, functions and words upright. A symbol is a
 * letter, what follows it at once is its index: `Cd` is C with a small d.
 */
export function typeset(equation: string): readonly Run[] {
  const runs: Run[] = []
  for (const m of equation.matchAll(TOKEN)) {
    const sub = m[1] ?? m[2]
    const sup = m[3] ?? m[4]
    if (sub !== undefined) runs.push({ kind: 'sub', text: sub })
    else if (sup !== undefined) runs.push({ kind: 'sup', text: sup })
    else if (m[5] !== undefined) runs.push(...symbol(m[5]))
    else runs.push({ kind: 'upright', text: m[6] ?? m[7] ?? '' })
  }
  return runs
}

function symbol(word: string): readonly Run[] {
  if (UPRIGHT.has(word.toLowerCase()) || word.length > 3) return [{ kind: 'upright', text: word }]
  const [first = '', ...rest] = [...word]
  if (rest.length === 0) return [{ kind: 'symbol', text: first }]
  return [
    { kind: 'symbol', text: first },
    { kind: 'sub', text: rest.join('') },
  ]
}
