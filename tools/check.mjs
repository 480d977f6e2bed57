import './node-version.mjs';
import { runStages } from './report.mjs';
import { setUp } from './setup.mjs';
import * as stages from './stages.mjs';

// The fast part, for while one works: fewer random layouts, no build, no browser.
await setUp();
await runStages([stages.lint, stages.types, stages.unit({ LW_RUNS: '200' })]);
