import './node-version.mjs';
import { runStages } from './report.mjs';
import { setUp } from './setup.mjs';
import * as stages from './stages.mjs';

// What takes its seconds by the size of what it handles, and not by the number of random cases.
const large = [
  'records/test/log/tamper.test.ts',
  'sheets/test/paper/**',
  'sheets/test/pdf/**',
  'plant/test/folder/large-folder.test.ts',
  'tools/test/**',
];

// The fast part, for while one works: fewer random cases, no large ones, no build, no browser.
await setUp();
await runStages([stages.lint, stages.types, stages.unit({ LW_RUNS: '200' }, { without: large })]);
