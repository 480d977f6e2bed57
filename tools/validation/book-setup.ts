import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Check } from './check.ts';

const cache = join(import.meta.dirname, '../../.cache/validation');
const book = join(import.meta.dirname, '../../docs/validation');
/** What was and what was not measured, one file a topic. */
const measured = join(import.meta.dirname, 'measured');

/** Starts the book empty; after a full run (`LW_WRITE_BOOK=1`) writes one page a topic from what the tests checked. */
export default function setup(): () => void {
  rmSync(cache, { recursive: true, force: true });
  return () => {
    if (process.env['LW_WRITE_BOOK'] !== '1' || !existsSync(cache)) return;
    mkdirSync(book, { recursive: true });
    for (const file of readdirSync(cache)) {
      const topic = file.replace(/\.jsonl$/, '');
      const checks = readFileSync(join(cache, file), 'utf8')
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as Check);
      writeFileSync(join(book, `${topic}.md`), page(topic, checks));
    }
  };
}

const evidenceText: Record<Check['evidence'], string> = {
  printed: 'printed',
  derived: 'derived',
  independent: 'independent program',
  practice: 'common practice, no source',
};

function page(topic: string, checks: Check[]): string {
  const sorted = [...checks].sort((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
  const rows = sorted.map((c) =>
    [
      c.id,
      c.inputs,
      `${c.published} ${c.unit}`,
      `${rounded(c.ours)} ${c.unit}`,
      error(c),
      `${c.tolerance} (${c.why})`,
      `${c.source} [${evidenceText[c.evidence]}]`,
    ]
      .map((cell) => cell.replaceAll('|', '\\|'))
      .join(' | '),
  );
  return `# Validation: ${topic}

Written by the tests; do not edit. Every line holds a number computed here against one from outside.
*Verified* means that the equations are solved rightly; none of these lines says that a belt was measured.

| check | inputs | published | ours | error | tolerance and why | source [evidence] |
|---|---|---|---|---|---|---|
${rows.map((row) => `| ${row} |`).join('\n')}
${measuredText(topic)}`;
}

function measuredText(topic: string): string {
  const file = join(measured, `${topic}.md`);
  return existsSync(file) ? `\n${readFileSync(file, 'utf8')}` : '';
}

function rounded(value: number): string {
  return String(Number(value.toPrecision(10)));
}

/** The error is shown to one digit: enough to judge, and the same on every machine. */
function error(check: Check): string {
  const difference = check.ours - check.published;
  return Math.abs(difference) < 1e-12 * Math.max(1, Math.abs(check.published)) ? '0' : difference.toExponential(0);
}
