/** Edits (insert, delete, replace, swap of neighbours) between two words; stops counting past `limit`. */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    let least = i
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) cost = Math.min(cost, before[j - 2]! + 1)
      row.push(cost)
      least = Math.min(least, cost)
    }
    if (least > limit) return limit + 1
    before = last
    last = row
  }
  return last[b.length]!
}

/** The words most like `typed`, nearest first; empty where none is near enough to be a slip of it. */
export function nearestWords(typed: string, words: readonly string[], most = 3): string[] {
  const word = typed.toLowerCase().slice(0, 80)
  const limit = Math.max(2, Math.floor(word.length / 3))
  return words
    .map((w) => {
      const low = w.toLowerCase()
      const contains = word.length >= 3 && (low.includes(word) || word.includes(low))
      return { w, far: Math.min(editDistance(word, low, limit), contains ? 1.5 : limit + 1) }
    })
    .filter(({ far }) => far <= limit)
    .sort((a, b) => a.far - b.far)
    .slice(0, most)
    .map(({ w }) => w)
}
