// The arrows of the house: what each package may import from its siblings. Everything else is an error.
const may = {
  numbers: [],
  calendar: [],
  library: [],
  swing: ['numbers'],
  diagnosis: ['numbers', 'calendar', 'swing', 'library'],
  practice: ['numbers', 'library', 'diagnosis'],
  progress: ['numbers', 'calendar', 'library'],
  contracts: ['numbers', 'calendar', 'swing', 'library', 'diagnosis', 'practice', 'progress'],
  db: ['contracts'],
  services: [
    'numbers',
    'calendar',
    'swing',
    'library',
    'diagnosis',
    'practice',
    'progress',
    'contracts',
    'db',
  ],
  edges: ['contracts', 'services'],
  media: ['swing', 'contracts', 'services'],
  demo: ['numbers', 'calendar', 'library', 'contracts', 'db', 'services'],
  testing: ['contracts', 'db', 'services'],
};
const mayApp = {
  api: ['calendar', 'contracts', 'db', 'services', 'edges'],
  worker: ['calendar', 'contracts', 'db', 'services', 'edges', 'media'],
  site: ['numbers', 'calendar', 'swing', 'library', 'diagnosis', 'practice', 'progress', 'contracts'],
  cli: ['calendar', 'contracts', 'db', 'services', 'edges', 'demo'],
};
// Tests and what only tests use.
const test = '(\\.test\\.tsx?$|/src/testing/)';
const arrow = (folder, name, allowed) => ({
  name: `arrows-of-${name}`,
  severity: 'error',
  from: { path: `^${folder}/${name}/`, pathNot: test },
  to: {
    path: '^(apps|packages)/',
    pathNot: `^(${folder}/${name}|packages/(${['-', ...allowed].join('|')}))/`,
  },
});
const pure = '^packages/(numbers|calendar|swing|library|diagnosis|practice|progress|contracts)/src';

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...Object.entries(may).map(([name, allowed]) => arrow('packages', name, allowed)),
    ...Object.entries(mayApp).map(([name, allowed]) => arrow('apps', name, allowed)),
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'pure-means-no-io',
      severity: 'error',
      from: { path: pure, pathNot: test },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'the-door-knows-no-queue-no-decoder',
      severity: 'error',
      from: { path: '^apps/(api|site)/' },
      to: { path: 'node_modules/(bullmq|node-av|@prisma)/' },
    },
    {
      name: 'only-the-worker-and-cli-know-the-queue',
      severity: 'error',
      from: { pathNot: '^(apps/(worker|cli)|packages/testing|tests)/' },
      to: { path: 'node_modules/bullmq/' },
    },
    {
      name: 'demo-is-not-our-estimator',
      severity: 'error',
      from: { path: '^packages/demo/' },
      to: { path: '^packages/(swing|diagnosis)/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '((generated|\\.next|dist)/|next-env\\.d\\.ts$)' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs'],
    },
  },
};
