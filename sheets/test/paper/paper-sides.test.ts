import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { codePicture } from '../../src/paper/code-picture.ts';
import { moveShape } from '../../src/paper/move-shape.ts';
import { paperSides } from '../../src/paper/paper-sides.ts';
import { margin, type Paper, paperSizes, papers } from '../../src/paper/paper-size.ts';
import { barePlant, demoCard, demoPositions, pageOf, readers } from '../demo-pages.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';

/** 2 mm may be lost in cutting. */
const cut = (2 / 25.4) * 72;

type Sides = ReturnType<typeof paperSides>;
const made = new Map<string, Sides>();

/** Sheets are laid out once for all rules. */
function sidesOf(position: string, { language, units }: (typeof readers)[number], paper: Paper): Sides {
  const key = [position, language, units, paper].join(' ');
  const sides = made.get(key) ?? paperSides(pageOf(demoCard(position), language, units), paper);
  made.set(key, sides);
  return sides;
}

const sheets = demoPositions.flatMap((position) =>
  readers.flatMap((reader) => papers.map((paper) => ({ position, reader, paper }))),
);

function textsOf(side: ReturnType<typeof paperSides>[number]): string {
  return side.shapes
    .flatMap((shape) => (shape.shape === 'text' ? [shape.text] : []))
    .join(' ')
    .replaceAll('\u00a0', ' ');
}

describe('the printed sheet', () => {
  for (const position of demoPositions) {
    it(`[SHEET-60] no text overlaps another or stands in the margin: ${position}, all readers and papers`, () => {
      for (const { reader, paper } of sheets.filter((sheet) => sheet.position === position)) {
        for (const side of sidesOf(position, reader, paper)) {
          expect(overlappingTexts(side), `${reader.language} ${reader.units} ${paper} ${side.id}`).toEqual([]);
          expect(textsOutside(side, cut), `${reader.language} ${reader.units} ${paper} ${side.id}`).toEqual([]);
        }
      }
    });
  }

  it('[SHEET-61] every numbered step is on the sheet; only steps after the press may stand overleaf', () => {
    for (const { position, reader, paper } of sheets) {
      const page = pageOf(demoCard(position), reader.language, reader.units);
      const [front, back] = sidesOf(position, reader, paper).map(textsOf);
      for (const { number, title } of page.front) {
        if (number === undefined) continue;
        const where = number > 10 ? `${front} ${back}` : front;
        expect(where, `${position} ${reader.language} ${title}`).toContain(title.split(' ')[0]);
      }
    }
  });

  it('[SHEET-62] the doing is set in 7.5 points or more, what is looked up in 5 or more', () => {
    const size = (side: Sides[number], least: number): number[] =>
      side.shapes.flatMap((shape) =>
        shape.shape === 'text' && shape.text.length > 3 && shape.y > least ? [shape.size] : [],
      );
    for (const { position, reader, paper } of sheets) {
      const [front, back] = sidesOf(position, reader, paper);
      // Below the head; the two lines at the foot that name the version are smaller.
      const foot = front.height - margin - 30;
      const doing = front.shapes.filter((shape) => shape.shape !== 'text' || (shape.y > 80 && shape.y < foot));
      expect(
        Math.min(...size({ ...front, shapes: doing }, 0)),
        `${position} ${reader.language} ${paper}`,
      ).toBeGreaterThanOrEqual(7.5);
      expect(Math.min(...size(back, 0)), `${position} ${reader.language} ${paper}`).toBeGreaterThanOrEqual(5);
    }
  });

  it('[SHEET-63] both sides say that it is computed, that the data sheet wins, which card it is', () => {
    const page = pageOf(demoCard('QM-04-3'));
    for (const side of paperSides(page, 'A5')) {
      expect(textsOf(side)).toContain('Computed, check it');
      expect(textsOf(side)).toContain('data sheet wins');
      expect(textsOf(side)).toContain(page.code);
    }
  });

  it('[SHEET-64] a card that knows nothing, or warns of everything, still is one sheet with every step', () => {
    const card = demoCard('QM-04-3', 1, barePlant('QM-04-3'));
    const warnings = Array.from({ length: 14 }, () => ({ code: 'wet-area', level: 'care', data: {} }) as const);
    for (const crowded of [card, { ...demoCard('QM-05-4'), warnings }]) {
      const page = pageOf(crowded, 'de');
      const sides = paperSides(page, 'A5');
      expect(sides).toHaveLength(2);
      const all = sides.map(textsOf).join(' ');
      for (const { title } of page.front) expect(all).toContain(title.split(' ')[0]);
      for (const side of sides) expect(textsOutside(side, cut)).toEqual([]);
    }
  });

  it('[SHEET-65] a moved and scaled arc keeps its radii in proportion and its flags', () => {
    const moved = moveShape({ shape: 'path', d: 'M1 2 A3 3 0 1 0 5 6 h2 v-1 Z' }, { x: 10, y: 20, scale: 2 });
    expect(moved.shape === 'path' && moved.d).toBe('M12 24 A6 6 0 1 0 20 32 h4 v-2 Z');
    expect(() => moveShape({ shape: 'path', d: 'C1 2 3 4 5 6' }, { x: 0, y: 0, scale: 1 })).toThrow(RangeError);
  });

  it('[SHEET-66] papers have the sizes of ISO 216 and half of US letter', () => {
    expect((paperSizes.A5.width / 72) * 25.4).toBeCloseTo(148, 1);
    expect((paperSizes.A5.height / 72) * 25.4).toBeCloseTo(210, 1);
    expect(paperSizes['half-letter']).toEqual({ width: 5.5 * 72, height: 8.5 * 72 });
  });

  it('[SHEET-67] the picture of the code holds its modules, with a quiet zone of four', () => {
    const { data, size } = encode('LW1 QM-04-3 D7N0Z9MG 17MZAY2', { ecc: 'M', border: 0 });
    const side = 10 * (size + 8);
    const picture = codePicture('LW1 QM-04-3 D7N0Z9MG 17MZAY2', { x: 0, y: 0 }, side);
    const corners = picture.shape === 'path' ? Array.from(picture.d.matchAll(/M(\d+) (\d+) h(\d+) v10 /g)) : [];
    const modules = corners.flatMap(([, x, y, wide]) =>
      Array.from({ length: Number(wide) / 10 }, (_, i) => `${Number(x) / 10 - 4 + i} ${Number(y) / 10 - 4}`),
    );
    const drawn = new Set(modules);
    expect(modules).toHaveLength(drawn.size);
    const dark = data.flatMap((line, row) => line.flatMap((on, column) => (on ? [`${column} ${row}`] : [])));
    expect(drawn).toEqual(new Set(dark));
  });
});
