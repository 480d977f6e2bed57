import type { CardPath } from '@loopwright/jobs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shortenedAxis } from '../../src/drawing/thread/axis.ts';
import { beltLine, beltOffset } from '../../src/drawing/thread/belt-line.ts';
import { threadLayout } from '../../src/drawing/thread/layout.ts';
import { type ThreadWords, threadPath } from '../../src/drawing/thread-path.ts';
import { demoCard, demoPositions } from '../demo-pages.ts';
import { overlappingTexts, textsOutside } from '../overlaps.ts';

const settings = { seed: 42, numRuns: Number(process.env.LW_RUNS ?? 2000) };
const room = { w: 236, h: 132 };
const words: ThreadWords = {
  alt: 'route',
  belt: 'belt',
  goods: 'goods',
  drive: 'drive',
  takeUp: 'take-up',
  splice: 'splice here',
  runningFace: 'pulley side',
  backFace: 'roller side',
  rollers: 'rollers',
  shortened: 'shortened',
};

function pathOf(position: string): CardPath {
  const { path } = demoCard(position);
  if (!path) throw new Error(`no path at ${position}`);
  return path;
}

/** A demo path stretched along x: the same clusters, other distances. */
const stretched = (path: CardPath, factor: number): CardPath => ({
  ...path,
  pulleys: path.pulleys.map((pulley) => ({ ...pulley, x_m: pulley.x_m * factor })),
});

describe('thread path', () => {
  it('[SHEET-50] every strand touches the two pulleys it runs between', () => {
    for (const position of demoPositions) {
      const { pulleys } = threadLayout(pathOf(position), room);
      const { strands } = beltLine(pulleys);
      strands.forEach(([from, to], i) => {
        const length = Math.hypot(to.x - from.x, to.y - from.y);
        for (const pulley of [pulleys[i], pulleys[(i + 1) % pulleys.length]]) {
          if (!pulley) throw new Error('a strand without pulley');
          const { centre, r } = pulley;
          const area = (to.x - from.x) * (centre.y - from.y) - (to.y - from.y) * (centre.x - from.x);
          expect(Math.abs(area) / length).toBeCloseTo(r + beltOffset, 6);
          // With y down a belt that turns left round a pulley has its centre on the left of its travel.
          expect(Math.sign(area)).toBe(pulley.turn === 'left' ? -1 : 1);
        }
      });
    }
  });

  it('[SHEET-51] drive and take-up stand to one scale with their neighbours, and pulleys keep their true sizes', () => {
    for (const position of demoPositions) {
      const path = pathOf(position);
      const { pulleys, scale } = threadLayout(path, room);
      pulleys.forEach(({ r }, i) => {
        expect(r).toBeCloseTo(((path.pulleys[i]?.diameter_m ?? 0) / 2) * scale, 9);
      });
      for (const middle of [path.drive, path.takeUp]) {
        for (const beside of [middle - 1, middle + 1]) {
          const [a, b, da, db] = [path.pulleys[middle], path.pulleys[beside], pulleys[middle], pulleys[beside]];
          if (!a || !b || !da || !db) throw new Error('drive and take-up have neighbours in the demo');
          const drawn = Math.hypot(da.centre.x - db.centre.x, da.centre.y - db.centre.y);
          expect(drawn).toBeCloseTo(Math.hypot(a.x_m - b.x_m, a.y_m - b.y_m) * scale, 6);
        }
      }
    }
  });

  it('[SHEET-52] long stretches are shortened and marked, order along the axis is kept', () => {
    const stretches = fc
      .array(fc.tuple(fc.double({ min: 0.01, max: 40, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true })), {
        minLength: 1,
        maxLength: 12,
      })
      .map((pairs) => {
        let at = 0;
        return pairs.map(([gap, width]) => {
          const from = at + gap;
          at = from + width;
          return [from, at] as const;
        });
      });
    fc.assert(
      fc.property(stretches, fc.double({ min: 5, max: 200, noNaN: true }), (list, scale) => {
        const axis = shortenedAxis(list, scale, 40);
        const edges = list.flat().map((edge) => axis.map(edge));
        for (let i = 1; i < edges.length; i += 1) expect(edges[i]).toBeGreaterThan(edges[i - 1] ?? Number.NaN);
        for (const [from, to] of list) expect(axis.map(to) - axis.map(from)).toBeCloseTo((to - from) * scale, 6);
        const long = list.filter(([from], i) => i > 0 && (from - (list[i - 1]?.[1] ?? 0)) * scale > 40 * 1.15);
        expect(axis.breaks).toHaveLength(long.length);
      }),
      settings,
    );
  });

  it('[SHEET-53] every pulley has its number of travel, as on the line', () => {
    for (const position of demoPositions) {
      const path = pathOf(position);
      const drawing = threadPath(path, { x: 0, y: -1 }, words);
      const texts = drawing.shapes.flatMap((shape) => (shape.shape === 'text' ? [shape.text] : []));
      for (const { order } of path.pulleys) expect(texts.filter((text) => text === String(order))).toHaveLength(1);
      for (const word of ['drive', 'take-up', 'splice here', 'belt', 'goods']) expect(texts).toContain(word);
    }
  });

  it('[SHEET-54] belt and goods point opposite ways along the carrying strand', () => {
    const path = pathOf('QM-04-3');
    const { strands } = beltLine(threadLayout(path, room).pulleys);
    const strand = strands[path.carryingSpan];
    if (!strand) throw new Error('no carrying strand');
    expect(Math.sign(strand[1].x - strand[0].x)).toBe(-path.goodsDirection);
  });

  it('[SHEET-55] lines of any length are drawn whole, with no text over another', () => {
    const cases = fc.tuple(fc.constantFrom(...demoPositions), fc.double({ min: 0.5, max: 30, noNaN: true }));
    fc.assert(
      fc.property(cases, ([position, factor]) => {
        const drawing = threadPath(stretched(pathOf(position), factor), { x: 0, y: -1 }, words);
        expect(overlappingTexts(drawing)).toEqual([]);
        expect(textsOutside(drawing)).toEqual([]);
        expect(drawing.width).toBe(260);
        expect(drawing.height).toBeLessThan(300);
      }),
      { ...settings, numRuns: Math.ceil(settings.numRuns / 20) },
    );
  });

  it('[SHEET-56] a line with very many pulleys is drawn in a moment, without its numbers', () => {
    const path = pathOf('QM-04-3');
    const [first] = path.pulleys;
    if (!first) throw new Error('no pulley');
    const pulleys = Array.from({ length: 3000 }, (_, i) => ({
      ...first,
      order: i + 1,
      x_m: (i % 1500) * 0.2,
      y_m: i < 1500 ? 0 : -0.3,
    }));
    const before = performance.now();
    const drawing = threadPath({ ...path, pulleys }, { x: 0, y: -1 }, words);
    expect(performance.now() - before).toBeLessThan(5000);
    expect(drawing.shapes.every((shape) => shape.shape !== 'text' || !/^\d+$/.test(shape.text))).toBe(true);
    expect(JSON.stringify(drawing.shapes)).not.toContain('null');
  });
});
