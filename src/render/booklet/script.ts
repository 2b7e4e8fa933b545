/**
 * What runs in the booklet: ticks and writing are kept in the browser's store under the booklet's own name; where there
 * is none (some browsers give none to files from disk), in the address after the #. Nothing is ever sent.
 */
export const bookletScript = (key: string): string => `
(() => {
  const KEY = ${JSON.stringify(`rootfall booklet ${key}`).replace(/</g, '\\u003c')}
  const fields = [...document.querySelectorAll('[data-keep]')]
  const storable = (() => {
    try {
      localStorage.setItem(KEY + ' ?', '1')
      localStorage.removeItem(KEY + ' ?')
      return true
    } catch {
      return false
    }
  })()
  const MARK = '#kept='
  const read = () => {
    try {
      const text = storable ? localStorage.getItem(KEY) : location.hash.startsWith(MARK) ? decodeURIComponent(location.hash.slice(MARK.length)) : null
      const found = text === null ? null : JSON.parse(text)
      return typeof found === 'object' && found !== null ? found : {}
    } catch {
      return {}
    }
  }
  const write = () => {
    const kept = {}
    for (const f of fields) {
      if (f.type === 'checkbox' ? f.checked : f.value !== '') kept[f.dataset.keep] = f.type === 'checkbox' ? 1 : f.value
    }
    const text = JSON.stringify(kept)
    try {
      if (storable) localStorage.setItem(KEY, text)
      else history.replaceState(null, '', MARK + encodeURIComponent(text))
    } catch {
      // Full or forbidden: the page goes on as paper does.
    }
  }
  const kept = read()
  for (const f of fields) {
    const value = Object.hasOwn(kept, f.dataset.keep) ? kept[f.dataset.keep] : undefined
    if (f.type === 'checkbox') f.checked = value === 1
    else f.value = typeof value === 'string' ? value : ''
  }
  addEventListener('change', write)
  if (!storable) addEventListener('hashchange', () => { if (!location.hash.startsWith(MARK)) write() })
  for (const hint of document.querySelectorAll('[data-hint]')) hint.hidden = (hint.dataset.hint === 'stored') !== storable
})()
`
