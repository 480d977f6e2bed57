import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright, root } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-labels-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const pagesIn = (file: string): number => readFileSync(file, 'latin1').match(/\/Type \/Page\b(?!s)/g)?.length ?? 0;

describe('labels', () => {
  it('[TERM-40] all sixty positions on six sheets, a line or single ones on one, on either paper', () => {
    const calls = [
      { args: [], pages: 6, said: '60 labels on 6 sheets', box: '595.28 841.89' },
      {
        args: ['--demo', '--line', 'QM-04', '--paper', 'letter'],
        pages: 1,
        said: '6 labels on 1 sheet',
        box: '612 792',
      },
      {
        args: ['--position', 'QM-04-3', '--position', 'QM-05-2'],
        pages: 1,
        said: '2 labels on 1 sheet',
        box: '595.28',
      },
      { args: ['--line', 'QM-04', '--line', 'QM-05'], pages: 2, said: '16 labels on 2 sheets', box: '595.28' },
    ];
    for (const [i, { args, pages, said, box }] of calls.entries()) {
      const file = join(place, `labels-${i}.pdf`);
      const { code, stdout, stderr } = loopwright(['labels', file, ...args]);
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      expect(stdout).toContain(said);
      expect(pagesIn(file)).toBe(pages);
      expect(readFileSync(file, 'latin1')).toContain(`/MediaBox [0 0 ${box}`);
    }
  });

  it('[TERM-40] of one’s own plant, in German', () => {
    const file = join(place, 'own.pdf');
    const { code, stdout } = loopwright([
      'labels',
      file,
      '--plant',
      join(root, 'docs/guide/own-plant'),
      '--lang',
      'de',
    ]);
    expect(code).toBe(0);
    expect(stdout).toContain('Mit 100 % drucken');
    expect(pagesIn(file)).toBeGreaterThan(0);
  });

  it('[TERM-41] unknown line, unknown position, other paper, two plants: a sentence, nothing written', () => {
    const file = join(place, 'none.pdf');
    const calls = [
      { args: ['--line', 'QM-99'], code: 1, said: 'There is no line QM-99' },
      { args: ['--position', 'QM-04-99'], code: 1, said: 'There is no position QM-04-99' },
      { args: ['--position', '__proto__'], code: 1, said: 'There is no position __proto__' },
      { args: ['--paper', 'a5'], code: 2, said: 'must be one of a4, letter' },
      { args: ['--demo', '--plant', place], code: 2, said: 'either --plant or --demo' },
    ];
    for (const { args, code, said } of calls) {
      const ended = loopwright(['labels', file, ...args]);
      expect({ code: ended.code, stdout: ended.stdout }).toEqual({ code, stdout: '' });
      expect(ended.stderr).toContain(said);
      expect(existsSync(file)).toBe(false);
    }
    const nowhere = loopwright(['labels', join(place, 'no-folder/labels.pdf')]);
    expect(nowhere.code).toBe(1);
    expect(nowhere.stderr).toContain('its folder does not exist');
  });
});
