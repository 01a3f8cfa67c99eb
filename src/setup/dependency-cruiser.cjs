/**
 * Which room of src/ may import which (DEVELOPERS.md "Rooms"). A room that is not listed to the right of an
 * arrow may not be reached from it, and no pure room may reach a package that knows a page, a file or a clock.
 */
const may = {
  trade: [],
  run: ['trade'],
  drawing: ['trade', 'run'],
  practice: ['trade', 'run', 'drawing'],
  register: ['trade'],
  schema: ['trade', 'run', 'drawing', 'practice', 'register'],
  cli: ['trade', 'run', 'drawing', 'practice', 'register', 'schema'],
  site: ['trade', 'run', 'drawing', 'practice', 'register', 'schema'],
  setup: ['trade', 'run', 'drawing', 'practice', 'register', 'schema', 'cli'],
};
/** Packages that a room may import, directly or through its own files. */
const packages = {
  register: ['@noble/hashes', '@noble/curves'],
  schema: ['zod', 'yaml'],
};
const pure = ['trade', 'run', 'drawing', 'practice', 'register'];
const folder = (rooms) => rooms.map((r) => `^src/${r}/`);

module.exports = {
  forbidden: [
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^astro:' },
    },
    ...Object.entries(may).map(([room, rooms]) => ({
      name: `${room}-imports-one-way`,
      severity: 'error',
      from: { path: `^src/${room}/` },
      to: { path: '^src/', pathNot: folder([room, ...rooms]) },
    })),
    ...pure.map((room) => ({
      name: `${room}-is-pure`,
      severity: 'error',
      from: { path: `^src/${room}/` },
      to: {
        pathNot: ['^src/', ...(packages[room] ?? []).map((p) => `^node_modules/${p}/`)],
      },
    })),
    {
      name: 'schema-has-no-page-or-file',
      severity: 'error',
      from: { path: '^src/schema/' },
      to: { pathNot: ['^src/', ...packages.schema.map((p) => `^node_modules/${p}/`)] },
    },
    {
      name: 'cli-knows-no-page',
      severity: 'error',
      from: { path: '^src/(cli|schema)/' },
      to: { path: '^node_modules/(react|react-dom|astro)/', reachable: true },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
    },
  },
};
