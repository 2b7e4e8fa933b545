import { render } from 'solid-js/web'
import './style/page.css'
import { firstExample } from './examples.ts'
import { createWorkbench } from './model/workbench.ts'
import { Page } from './views/Page.tsx'

const root = document.getElementById('page')
if (root)
  render(() => {
    const bench = createWorkbench(firstExample)
    void bench.openFirst()
    return <Page bench={bench} />
  }, root)
