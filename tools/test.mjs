import './node-version.mjs';
import { runStages } from './report.mjs';
import { setUp } from './setup.mjs';
import * as stages from './stages.mjs';

await setUp();
await runStages([
  stages.lint,
  stages.types,
  stages.unused,
  stages.licences,
  stages.unit({ LW_WRITE_BOOK: '1' }),
  stages.book,
  stages.buildAll,
  stages.built,
  stages.browser,
  ...(process.env.LW_NEWER_NODE === '1' ? [stages.newerNode] : []),
]);
