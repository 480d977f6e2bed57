import { type Box, boxesOverlap, textBox } from '../src/drawing/boxes.ts';
import type { Drawing } from '../src/page/page.ts';

/** Pairs of texts of a drawing that overlap, as readable lines; touching counts from a tenth of a unit on. */
export function overlappingTexts(drawing: Drawing): string[] {
  const texts = drawing.shapes.filter((shape) => shape.shape === 'text');
  const boxes = texts.map((text) => shrunk(textBox(text)));
  return boxes.flatMap((box, i) =>
    boxes
      .slice(i + 1)
      .flatMap((other, k) => (boxesOverlap(box, other) ? [`${texts[i]?.text} | ${texts[i + 1 + k]?.text}`] : [])),
  );
}

const shrunk = (box: Box): Box => ({ x1: box.x1 + 0.1, y1: box.y1 + 0.1, x2: box.x2 - 0.1, y2: box.y2 - 0.1 });

/** Texts that stand out of their drawing. */
export function textsOutside(drawing: Drawing, margin = 0): string[] {
  return drawing.shapes.flatMap((shape) => {
    if (shape.shape !== 'text') return [];
    const box = textBox(shape);
    const inside =
      box.x1 >= margin && box.y1 >= margin && box.x2 <= drawing.width - margin && box.y2 <= drawing.height - margin;
    return inside
      ? []
      : [`${shape.text} at ${box.x1.toFixed(1)}–${box.x2.toFixed(1)}, ${box.y1.toFixed(1)}–${box.y2.toFixed(1)}`];
  });
}
