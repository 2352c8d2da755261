/**
 * The rooms of the house, top to bottom. A room imports only from rooms below it, types included.
 * The test of this rule is scripts/rooms.test.ts, which plants violations and expects them found.
 */
const rooms = [
  ['apps/cli', '^apps/cli/'],
  ['apps/server', '^apps/server/'],
  ['apps/web', '^apps/web/'],
  ['paper', '^packages/paper/'],
  ['record', '^packages/record/'],
  ['routes', '^packages/engine/src/routes/'],
  ['blocking', '^packages/engine/src/blocking/'],
  ['drying', '^packages/engine/src/drying/'],
  ['garment', '^packages/engine/src/garment/'],
  ['fabric', '^packages/engine/src/fabric/'],
  ['membrane', '^packages/engine/src/membrane/'],
  ['textile', '^packages/engine/src/textile/'],
  ['stats', '^packages/engine/src/stats/'],
  ['units', '^packages/engine/src/units/'],
];
const apps = rooms.filter(([name]) => name.startsWith('apps/'));
const engineRooms = rooms.filter(([, path]) => path.includes('engine/src/'));

const forbidden = [
  {
    name: 'no-cycles',
    severity: 'error',
    comment: 'Two files that need each other are one idea, or a third file is missing.',
    from: {},
    to: { circular: true },
  },
  {
    name: 'not-resolved',
    severity: 'error',
    comment: 'An import that resolves to nothing escapes every other rule.',
    from: {},
    to: { couldNotResolve: true, pathNot: '^virtual:' },
  },
  ...rooms
    .slice(1)
    .map(([name, path], below) => ({
      name: `${name.replace('/', '-')}-imports-upwards`,
      severity: 'error',
      comment: 'A room imports only from rooms below it.',
      from: { path },
      to: {
        path: rooms
          .slice(0, below + 1)
          .filter(([other]) => !(name.startsWith('apps/') && other.startsWith('apps/')))
          .map(([, above]) => above),
      },
    }))
    .filter((rule) => rule.to.path.length > 0),
  ...apps.map(([name, path]) => ({
    name: `${name.replace('/', '-')}-imports-an-app`,
    severity: 'error',
    comment: 'Apps share rooms, not code of each other.',
    from: { path },
    to: { path: apps.filter(([other]) => other !== name).map(([, other]) => other) },
  })),
  {
    name: 'membrane-knows-no-knitting',
    severity: 'error',
    comment: 'The membrane is mechanics; tables of textiles stay out of it.',
    from: { path: '^packages/engine/src/membrane/' },
    to: { path: '^packages/engine/src/textile/' },
  },
  {
    name: 'engine-is-pure',
    severity: 'error',
    comment: 'The engine does no I/O: whatever asks for time, files or a page is handed in.',
    from: {
      path: engineRooms.map(([, path]) => path),
      pathNot: '\\.(test|bench|figures)\\.ts$|/fixtures/|/check/',
    },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'paper-runs-anywhere',
    severity: 'error',
    comment: 'Pages are made in a browser too: files and fonts are handed in.',
    from: { path: '^packages/paper/', pathNot: '\\.test\\.ts$|/testing/' },
    to: { dependencyTypes: ['core'] },
  },
];

export default {
  forbidden,
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.css'],
    },
  },
};
