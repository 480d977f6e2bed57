import { runTerminal } from './run-terminal.ts';

process.exitCode = await runTerminal(process.argv.slice(2));
