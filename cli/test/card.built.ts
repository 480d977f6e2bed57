import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loopwright, root } from './terminal.ts';

let place: string;
beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), 'loopwright-card-'));
});
afterAll(() => rmSync(place, { recursive: true }));

const now = ['--now', '2026-11-25T02:10:00Z'];
const demo = join(root, 'demo');

describe('card', () => {
  it('[TERM-08] the torn position: belt, the three lengths, in every language and both unit systems', () => {
    for (const [lang, torn] of [
      ['en', 'Torn'],
      ['de', 'Gerissen'],
      ['es', 'Rota'],
    ] as const) {
      const { code, stdout, stderr } = loopwright(['card', 'QM-04-3', '--lang', lang, ...now]);
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      expect(stdout.toLowerCase()).toContain(torn.toLowerCase());
      // Worked by hand from the loop of 64.8 m, 0.9 %, fingers of 80 mm and 25 mm of waste at each end.
      for (const length of [/64.?222/, /64.?302/, /64.?352/]) expect(stdout).toMatch(length);
      expect(stdout).not.toMatch(/undefined|NaN|\[object/);
    }
    const us = loopwright(['card', 'QM-04-3', '--units', 'us', ...now]).stdout;
    expect(us).toMatch(/\bin\b|″|"/);
  });

  it('[TERM-09] --worked puts each formula, then its numbers, under the number it gives', () => {
    const plain = loopwright(['card', 'QM-04-3', ...now]).stdout;
    const worked = loopwright(['card', 'QM-04-3', '--worked', ...now]).stdout;
    expect(plain).not.toContain('L0 = L / (1 + e)');
    expect(worked).toMatch(/L0 = L \/ \(1 \+ e\)\n.*L0 = 64.800\smm \/ \(1 \+ 0.90\s%\) = 64.222\smm/);
  });

  it('[TERM-10] two people need less time than one', () => {
    const minutes = (...args: string[]) => {
      const line = loopwright(['card', 'QM-04-3', ...args, ...now])
        .stdout.split('\n')
        .find((each) => /\d+\s*min/.test(each));
      return Number(/(\d+)\s*min/.exec(line ?? '')?.[1]);
    };
    expect(minutes('--people', '2')).toBeLessThan(minutes('--alone'));
  });

  it('[TERM-11] the PDF is a PDF, byte for byte the same for the same moment, and nothing unfinished is left', () => {
    for (const paper of ['a5', 'half-letter']) {
      const [first, second] = ['a', 'b'].map((name) => join(place, `${name}-${paper}.pdf`)) as [string, string];
      for (const file of [first, second])
        expect(loopwright(['card', 'QM-04-3', '--pdf', file, '--paper', paper, ...now]).code).toBe(0);
      expect(readFileSync(first).subarray(0, 5).toString()).toBe('%PDF-');
      expect(readFileSync(first).equals(readFileSync(second))).toBe(true);
    }
    expect(readdirSync(place).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('[TERM-12] a PDF that cannot be written: exit 1, a sentence, no file', () => {
    const file = join(place, 'no-folder/card.pdf');
    const { code, stdout, stderr } = loopwright(['card', 'QM-04-3', '--pdf', file, ...now]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain('its folder does not exist');
    expect(existsSync(file)).toBe(false);
  });

  it('[TERM-13] an unknown position is answered with its neighbours, an unknown press with those there are', () => {
    const position = loopwright(['card', 'QM-04-33', ...now]);
    expect(position.code).toBe(1);
    expect(position.stderr).toContain('QM-04-3');
    const press = loopwright(['card', 'QM-04-3', '--press', 'P9', ...now]);
    expect(press.code).toBe(1);
    expect(press.stderr).toContain('P1, P2');
  });

  it('[TERM-14] a line that is not in the demo goes from its folder to a card', () => {
    const folder = join(root, 'docs/guide/own-plant');
    expect(loopwright(['plant', 'check', folder]).code).toBe(0);
    const [, id] = /^\s+\S (\S+)/m.exec(loopwright(['lines', '--plant', folder]).stdout) ?? [];
    const card = loopwright(['card', id ?? '', '--plant', folder, ...now]);
    expect({ code: card.code, stderr: card.stderr }).toEqual({ code: 0, stderr: '' });
    expect(card.stdout).not.toMatch(/undefined|NaN/);
  });

  it('[TERM-15] sixty positions of the demo plant, each with its state', () => {
    const { stdout } = loopwright(['lines']);
    expect(stdout.match(/^ {2}[●▲◆✕○] QM-/gm)).toHaveLength(60);
  });
});

describe('plant check', () => {
  /** The demo plant with one file changed. */
  function spoilt(file: string, change: (text: string) => string | Uint8Array): string {
    const folder = mkdtempSync(join(place, 'plant-'));
    cpSync(demo, folder, { recursive: true });
    writeFileSync(join(folder, file), change(readFileSync(join(folder, file), 'utf8')));
    return folder;
  }

  it('[TERM-16] all mistakes of a folder come at once, each with file and row, and exit 1', () => {
    const folder = spoilt('positions.csv', (text) =>
      text.replace('QM-04-1,', 'QM-04-2,').replace(/,QM-05,/, ',QM-99,'),
    );
    const { code, stdout } = loopwright(['plant', 'check', folder]);
    expect(code).toBe(1);
    expect(stdout).toContain('QM-99');
    expect(stdout).toContain('QM-04-2');
    expect(stdout.match(/positions\.csv/g)?.length).toBeGreaterThanOrEqual(2);
  });

  it('[TERM-17] a mistake is said in the language asked for', () => {
    const folder = spoilt('lines.csv', (text) => text.replace(/\n(QM-01,)/, '\n$1x,'));
    const said = ['en', 'de', 'es'].map((lang) => loopwright(['plant', 'check', folder, '--lang', lang]).stdout);
    expect(new Set(said).size).toBe(3);
  });

  it('[TERM-18] no card is made from a plant with a mistake; the mistake is said', () => {
    const folder = spoilt('lines.csv', (text) => text.split('\n').slice(0, 5).join('\n'));
    const { code, stdout, stderr } = loopwright(['card', 'QM-01-1', '--plant', folder, ...now]);
    expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
    expect(stderr).toContain('positions.csv');
  });

  it('[TERM-19] another code page and a file that is no table are dealt with, never a stack', () => {
    const latin = spoilt('plant.csv', (text) => Buffer.from(text.replace('Quillmoor', 'Müllmoor'), 'latin1'));
    expect(loopwright(['plant', 'check', latin]).stdout).toContain('plant.csv');
    const binary = spoilt('belts.csv', () => Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 256));
    const { code, stdout, stderr } = loopwright(['plant', 'check', binary]);
    expect(code).toBe(1);
    expect(stdout).toContain('belts.csv');
    expect(stdout + stderr).not.toMatch(/\n\s+at |node_modules/);
  });

  it('[TERM-20] a file of 200 MB is refused by its size', () => {
    const folder = spoilt('rolls.csv', (text) => text);
    writeFileSync(join(folder, 'rolls.csv'), Buffer.alloc(200_000_000, ' '));
    const { code, stdout, ms } = loopwright(['plant', 'check', folder]);
    expect(code).toBe(1);
    expect(stdout).toContain('rolls.csv');
    expect(ms).toBeLessThan(5000);
  });
});
