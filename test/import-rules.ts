/** Which way imports may point; ARCHITECTURE.md tells why. */
const layers = ['kernel', 'tables', 'plan', 'findings', 'disciplines', 'journal', 'sensitivity', 'render', 'shells']
const right = (i: number) => layers.slice(i + 1).map((l) => `^src/${l}/`)

export const importRules = {
  forbidden: [
    ...layers.slice(0, -1).map((layer, i) => ({
      name: `${layer}-imports-only-leftwards`,
      severity: 'error',
      from: { path: `^src/${layer}/` },
      to: {
        path: [
          ...right(i),
          ...(layer === 'render' || layer === 'sensitivity' ? [] : ['^src/(evaluate|kept|index|equations)\\.ts$']),
        ],
        dependencyTypesNot: layer === 'journal' || layer === 'render' ? ['type-only'] : [],
      },
    })),
    {
      name: 'disciplines-do-not-import-each-other',
      comment: 'what one needs of another arrives as an argument from evaluate.ts; a type is fine',
      severity: 'error',
      from: { path: '^src/disciplines/([^/]+)/', pathNot: '\\.test\\.ts$' },
      to: { path: '^src/disciplines/([^/]+)/', pathNot: '^src/disciplines/$1/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no-circles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'engine-touches-no-host',
      severity: 'error',
      from: {
        path: '^src/(kernel|tables|plan|findings|disciplines|journal|sensitivity|render)/',
        pathNot: '\\.test\\.ts$',
      },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'engine-takes-only-listed-packages',
      comment: 'docs/decisions/0002-packages.md',
      severity: 'error',
      from: { path: '^src/(kernel|tables|plan|findings|disciplines|journal|sensitivity)/', pathNot: '\\.test\\.ts$' },
      to: { path: 'node_modules', pathNot: 'node_modules/(quadprog)/' },
    },
    {
      name: 'tests-are-not-imported',
      severity: 'error',
      from: { path: '^src', pathNot: '\\.test\\.ts$' },
      to: { path: '(\\.test\\.ts$|^test/|^bench/)' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.mjs', '.js'] },
  },
}
