import { pens } from '../drawing/pens.ts'
import type { PaperName } from '../paper/size.ts'

/** Margin of the printed page, and what is cut off a sheet so that it stands between the margins at its own size. */
export const PRINT_MARGIN_mm = 8
export const CROP_mm = 9

const day =
  '--paper:#f8f6ef;--ink:#1b2533;--ink2:#4d5868;--line:#747d8a;--rule:#cdc9bc;--acc:#b0361a;--wash:#f3ddd2;--watw:#d9e7ec'
const night =
  '--paper:#0f2438;--ink:#e6edf1;--ink2:#a8bccd;--line:#7890a6;--rule:#2d4a66;--acc:#ff9d78;--wash:#3a2f38;--watw:#1a415d'
const print = '--paper:#fff;--ink:#000;--ink2:#000;--line:#555;--rule:#999;--acc:#000;--wash:#eee;--watw:#e4ecf0'

/** Pens, fills and faces of the drawings; one unit of a drawing is a millimetre. */
function drawingStyle(): string {
  const lines = Object.entries(pens).map(([pen, { width_mm, dash_mm }]) => {
    const dash = dash_mm.length === 0 ? '' : `;stroke-dasharray:${dash_mm.join(' ')}`
    return `.pen-${pen}{stroke:var(--ink);stroke-width:${width_mm}${dash}}`
  })
  return [
    ...lines,
    '.pen-dimension,.pen-thin{stroke:var(--ink2)}.pen-centre{stroke:var(--line)}',
    '.fill-none{fill:none}.fill-solid{fill:var(--ink)}.fill-paper{fill:var(--paper)}.fill-wash{fill:var(--wash)}.fill-water{fill:var(--watw)}',
    'svg text{fill:var(--ink)}svg .tone-quiet{fill:var(--ink2)}svg .tone-paper{fill:var(--paper)}',
    'svg .halo{stroke:var(--paper);stroke-width:.8;stroke-linejoin:round;paint-order:stroke}',
    '.face-drafting{font-family:"Booklet Drafting",sans-serif}.face-serif,.face-italic,.face-medium,.face-strong{font-family:"Booklet Serif",Georgia,serif}',
    '.face-italic{font-style:italic}.face-medium{font-weight:500}.face-strong{font-weight:600}',
  ].join('\n')
}

const page = `
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);font:17px/1.45 "Booklet Serif",Georgia,serif;-webkit-text-size-adjust:100%;font-variant-numeric:lining-nums tabular-nums}
body{margin:0}
main,header,nav{max-width:46rem;margin:0 auto;padding:0 20px}
header{padding-top:28px}
h1{font-size:1.9rem;line-height:1.2;font-weight:400;margin:0}
h2{font-size:1.5rem;line-height:1.25;font-weight:400;margin:56px 0 12px;padding-top:12px;border-top:1px solid var(--ink)}
h3{font-size:1.05rem;font-weight:600;margin:28px 0 6px}
p{margin:8px 0}
.quiet,.aside{color:var(--ink2)}
.aside{font-style:italic;font-weight:400;font-size:.9rem}
.caution{border-left:3px solid var(--acc);padding-left:12px;font-weight:600}
.test{margin:10px 0 0;font-weight:600}
nav ol{list-style:none;margin:12px 0;padding:0}
nav a{display:block;padding:6px 0;color:var(--ink);text-decoration-color:var(--line);text-underline-offset:.2em}
a:focus-visible,input:focus-visible{outline:2px solid var(--acc);outline-offset:2px}
ul.ticks{list-style:none;margin:6px 0;padding:0}
.tick{display:flex;gap:10px;align-items:flex-start;padding:3px 0}
ul.across-2{columns:2 18rem;column-gap:24px}
ul.across-4{columns:4 12rem;column-gap:24px}
ul[class*=across] .tick{break-inside:avoid}
.tick label{flex:1;padding:1px 0}
input[type=checkbox]{flex:none;appearance:none;width:24px;height:24px;margin:0;border:1px solid var(--ink);background:none;border-radius:0}
input[type=checkbox]:checked{background:linear-gradient(45deg,transparent 46%,var(--ink) 46% 54%,transparent 54%),linear-gradient(-45deg,transparent 46%,var(--ink) 46% 54%,transparent 54%)}
.tick:has(:checked) label{color:var(--ink2)}
input.blank,td input[type=text]{font:inherit;color:inherit;background:none;border:0;border-bottom:1px solid var(--ink);border-radius:0;padding:0 2px;height:26px}
input.blank{width:6em}
td input[type=text]{width:100%;min-width:4.2em;border-bottom-color:transparent}
.wide{overflow-x:auto}
table{border-collapse:collapse;width:100%;margin:8px 0}
th,td{text-align:left;vertical-align:top;padding:5px 14px 5px 0;border-bottom:1px solid var(--rule)}
thead th{font-weight:400;font-style:italic;color:var(--ink2);border-bottom-color:var(--ink)}
tbody th{font-weight:400}
.n{text-align:right}
td.n{white-space:nowrap}
table.form th,table.form td{border:1px solid var(--line);padding:4px 6px}
table.log{font-size:.85rem}
.step{display:flow-root;border-top:1px solid var(--rule);padding-top:4px;margin-top:24px}
.step h3{margin-top:10px}
figure{margin:12px 0}
.step figure{float:right;max-width:50%;margin:4px 0 12px 20px}
figure svg{display:block;max-width:100%;height:auto;overflow:visible}
.sheet{border:1px solid var(--rule);margin:20px 0}
.sheet svg{width:100%}
.example{border-top:1px solid var(--rule);padding:10px 0 4px;margin:14px 0 0}
.example h3{margin:0 0 4px}
.example .work{font-size:1.1rem;margin:6px 0}
footer{max-width:46rem;margin:40px auto 60px;padding:0 20px;color:var(--ink2)}
[hidden]{display:none}
@media (max-width:560px){ul[class*=across]{columns:1}.step figure{float:none;max-width:100%;margin:8px 0}.step figure svg{max-width:100%}td,th{padding-right:8px}}
`

const printed = (paper: PaperName): string => `
@page{size:${paper === 'A4' ? 'A4' : 'letter'};margin:${PRINT_MARGIN_mm}mm}
@media print{
:root{${print}}
html{font-size:9.6pt;line-height:1.36}
main,header,nav{max-width:none;padding:0 6mm}
h2{padding-top:6mm}
nav a{padding:1px 0;text-decoration:none}
h2{break-before:page;border-top:0;margin-top:0}
h2,h3,.aside{break-after:avoid}
table.form:not(.log){break-inside:avoid}
.hint{display:none}
.tick,tr,.example,.step figure,.caution{break-inside:avoid}
input[type=checkbox]{width:3.6mm;height:3.6mm;margin-top:.6mm;border-width:.25mm}
input.blank,td input[type=text]{height:5.4mm}
#purpose,#steps,#wet,#start,#batch,#pupils,#answers{columns:2;column-gap:8mm;column-fill:auto}
#steps,#wet,#start,#answers{column-fill:balance}
#purpose h2,#wet h2,#start h2,#running h2,#templates h2{break-before:auto}
#drawings{columns:2;column-gap:8mm}
#drawings .sheet{column-span:all;break-before:auto}
nav ol{columns:2}
#parts,#drawings{font-size:.88em}
.step h3{margin-top:1mm}
table{margin:1mm 0}
#purpose h2,#drawings h2,#steps h2,#wet h2,#start h2,#batch h2,#pupils h2,#answers h2{column-span:all}
.step{margin-top:4mm}
.step figure{float:none;max-width:100%;margin:1mm 0}
.step figure svg{max-height:44mm;margin:0 auto}
h3{margin:4mm 0 1mm}
p{margin:1mm 0}
.tick{padding:0}
th,td{padding-top:.4mm;padding-bottom:.4mm}
.sheet{border:0;margin:0 -6mm;break-before:page;break-after:page;break-inside:avoid}
.sheet svg{width:auto;max-width:none}
section.bare h2{display:none}
}
`

/** The whole style of the booklet, its typefaces aside. */
export const bookletStyle = (paper: PaperName): string =>
  `:root{color-scheme:light dark;${day}}\n@media (prefers-color-scheme:dark){:root{${night}}}${page}${drawingStyle()}${printed(paper)}`
