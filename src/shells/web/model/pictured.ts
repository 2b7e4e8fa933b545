/** The next picture is on the screen; a page that is hidden shows none. */
export const pictured = (): Promise<void> =>
  new Promise((done) => {
    const late = setTimeout(done, 100)
    requestAnimationFrame(() => {
      clearTimeout(late)
      setTimeout(done)
    })
  })
