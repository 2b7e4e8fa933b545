/**
 * Runs inside the page: lettering, pins and captions of the loop and of the drawings that lie over each other, and
 * lettering that a curve of its chart runs through. A pixel of touching is no overlap.
 */
export function measure(): readonly string[] {
  const TOUCH = 1
  interface Box {
    readonly name: string
    readonly of: Element
    readonly left: number
    readonly right: number
    readonly top: number
    readonly bottom: number
  }
  const seen = (el: Element): boolean => {
    const style = getComputedStyle(el)
    return style.visibility !== 'hidden' && style.display !== 'none' && el.getClientRects().length > 0
  }
  const boxed = (el: Element, kind: string): Box => {
    const { left, right, top, bottom } = el.getBoundingClientRect()
    return { name: `${kind} “${el.textContent?.trim()}”`, of: el, left, right, top, bottom }
  }
  /** The height of letters without the line that stands open above and below them. */
  const letters = (el: Element, kind: string): Box => {
    const b = boxed(el, kind)
    const high = b.bottom - b.top
    const upright = b.right - b.left >= high || (el.textContent ?? '').length < 4
    const [dx, dy] = upright ? [0, high * 0.18] : [(b.right - b.left) * 0.18, 0]
    return { ...b, left: b.left + dx, right: b.right - dx, top: b.top + dy, bottom: b.bottom - dy }
  }
  const all = (root: ParentNode, selector: string): readonly Element[] =>
    [...root.querySelectorAll(selector)].filter(seen)
  const over = (a: Box, b: Box): boolean =>
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > TOUCH &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > TOUCH
  const pairs = (where: string, boxes: readonly Box[]): readonly string[] =>
    boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter((b) => !a.of.contains(b.of) && !b.of.contains(a.of) && over(a, b))
        .map((b) => `${where}: ${a.name} and ${b.name}`),
    )
  /** Points of a curve on the screen, some pixels apart. */
  const points = (path: SVGPathElement | SVGPolylineElement): readonly DOMPoint[] => {
    const matrix = path.getScreenCTM()
    const length = path.getTotalLength()
    const count = Math.min(600, Math.ceil(length / 0.6))
    return Array.from({ length: count + 1 }, (_, i) =>
      path.getPointAtLength((length * i) / count).matrixTransform(matrix!),
    )
  }
  const crossed = (where: string, texts: readonly Box[], curves: readonly Element[]): readonly string[] => {
    const strokes = curves.map((c) => points(c as SVGPathElement))
    return texts.flatMap((t) =>
      strokes.some((s) =>
        s.some((p) => p.x > t.left + TOUCH && p.x < t.right - TOUCH && p.y > t.top + TOUCH && p.y < t.bottom - TOUCH),
      )
        ? [`${where}: a line through ${t.name}`]
        : [],
    )
  }
  const loop = all(document, '.loop')[0]
  const found = loop
    ? [
        ...pairs('loop', [
          ...all(loop, '.stop b').map((el) => letters(el, 'name')),
          ...all(loop, '.stop .fig').map((el) => {
            const range = document.createRange()
            range.selectNodeContents(el)
            const { left, right, top, bottom } = range.getBoundingClientRect()
            return { name: `figure “${el.textContent}”`, of: el, left, right, top: top + 2, bottom: bottom - 2 }
          }),
          ...all(loop, '.bal')
            .map((el) => boxed(el, 'pin'))
            .filter((b) => b.top < b.of.parentElement!.getBoundingClientRect().bottom - TOUCH),
        ]),
      ]
    : []
  for (const view of all(document, 'figure.view')) {
    const where = view.className
    const sheet = view.querySelector('svg.sheet')
    if (sheet === null) continue
    const texts = all(sheet, 'text')
      .filter((el) => el.closest('.bal') === null)
      .map((el) => letters(el, 'text'))
    const pins = all(sheet, '.bal .ring').map((el) => ({
      ...boxed(el, 'pin'),
      name: `pin ${el.parentElement?.textContent}`,
    }))
    const captions = all(view, 'figcaption .title').map((el) => boxed(el, 'title'))
    found.push(...pairs(where, [...texts, ...pins, ...captions]))
    // Numbers of a wetting map stand in the outlines of their sites.
    if (/chart|feed/.test(where) && !/wetting/.test(where))
      found.push(...crossed(where, texts, all(sheet, 'path.pen-visible, path.pen-cut')))
    const drawn = all(sheet, 'path').map((el) => boxed(el, 'mark'))
    for (const caption of captions)
      if (drawn.some((d) => over(d, caption))) found.push(`${where}: a mark over ${caption.name}`)
  }
  return found
}
