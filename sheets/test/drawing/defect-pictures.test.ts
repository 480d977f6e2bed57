import { defectCodes } from '@loopwright/jobs/inspection';
import { describe, expect, it } from 'vitest';
import { defectLooks, defectPicture } from '../../src/drawing/defects/defect-picture.ts';
import { drawingSvg } from '../../src/drawing/drawing-svg.ts';
import type { Shape } from '../../src/index.ts';

const looks = ['roller', 'pulley', 'edge-on', 'bent'] as const;
const all = defectCodes.flatMap((defect) =>
  looks.map((look) => ({ defect, look, picture: defectPicture(defect, look, 'x') })),
);
const shown = defectCodes.flatMap((defect) => defectLooks[defect].map((look) => defectPicture(defect, look, 'x')));

/** Corners of a shape, as far as it is drawn with straight lines. */
function pointsOf(shape: Shape): readonly (readonly [number, number])[] {
  if (shape.shape === 'circle')
    return [
      [shape.x - shape.r, shape.y - shape.r],
      [shape.x + shape.r, shape.y + shape.r],
    ];
  if (shape.shape === 'text') return [];
  return [...shape.d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map((match) => [Number(match[1]), Number(match[2])] as const);
}

describe('pictures of defects', () => {
  it('[DEFECT-01] every defect has a picture for every look, without text, inside its room, in inks of the page', () => {
    for (const { defect, look, picture } of all) {
      expect(picture.shapes.length, `${defect} ${look}`).toBeGreaterThan(1);
      expect(picture.shapes.filter(({ shape }) => shape === 'text')).toEqual([]);
      for (const [x, y] of picture.shapes.flatMap(pointsOf)) {
        expect(x >= 0 && x <= picture.width && y >= 0 && y <= picture.height, `${defect} ${look}: ${x} ${y}`).toBe(
          true,
        );
      }
      const inks = picture.shapes.flatMap((shape) => [
        shape.ink ?? 'ink',
        shape.shape === 'text' ? 'ink' : (shape.fill ?? 'none'),
      ]);
      expect(inks.filter((ink) => !['ink', 'soft', 'paper', 'none'].includes(ink))).toEqual([]);
      expect(drawingSvg(picture)).not.toMatch(/NaN|undefined/);
    }
  });

  it('[DEFECT-02] no two pictures that are shown are the same', () => {
    const drawn = shown.map(({ shapes }) => JSON.stringify(shapes));
    expect(drawn).toHaveLength(2 * defectCodes.length);
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it('[DEFECT-03] a picture says in words what it shows', () => {
    const svg = drawingSvg(defectPicture('voids', 'roller', 'Round spots with a dark ring.'));
    expect(svg).toContain('<title>Round spots with a dark ring.</title>');
  });
});
