import '../tools/node-version.mjs';
import { setUp } from '../tools/setup.mjs';

const benches = { path: './path.mjs', cycle: './cycle.mjs', app: './app.mjs' };
const asked = process.argv.slice(2);
const unknown = asked.find((name) => !Object.hasOwn(benches, name));
if (unknown !== undefined) {
  console.error(`There is no bench "${unknown}". Use: npm run bench -- [${Object.keys(benches).join('] [')}]`);
  process.exit(2);
}

await setUp();
for (const name of asked.length === 0 ? Object.keys(benches) : asked) {
  console.log(`\n== ${name}\n`);
  await import(benches[name]);
}
