// Runs in the page: notes every task over 50 ms, and for every arrow key when the pictures after it were shown.
window.watched = { edits: [], tasks: [] }
new PerformanceObserver((list) => {
  for (const e of list.getEntries()) window.watched.tasks.push(e.duration)
}).observe({ type: 'longtask' })

const afterPaint = (then) => requestAnimationFrame(() => setTimeout(then))

document.addEventListener(
  'keydown',
  (e) => {
    if (e.key !== 'ArrowUp' && e.key !== 'ArrowDown') return
    const start = e.timeStamp
    let paint_ms = 0
    afterPaint(() => {
      paint_ms = performance.now() - start
    })
    const look = () => {
      const busy = document.querySelector('#drawing')?.getAttribute('aria-busy') !== 'false'
      if (busy || paint_ms === 0) setTimeout(look, 1)
      else afterPaint(() => window.watched.edits.push({ paint_ms, drawn_ms: performance.now() - start }))
    }
    setTimeout(look)
  },
  true,
)
