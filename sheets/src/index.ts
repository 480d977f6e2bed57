export { type Box, boxesOverlap, textBox } from './drawing/boxes.ts';
export { drawingSvg, type InkColours, paperInks } from './drawing/drawing-svg.ts';
export { threadDrawing } from './page/card/thread-drawing.ts';
export { type CardCode, cardCode, readCardCode } from './page/card-code.ts';
export { cardPage } from './page/card-page.ts';
export { figureOf } from './page/figure.ts';
export type {
  Block,
  Drawing,
  Figure,
  Ink,
  Page,
  Row,
  Section,
  Shape,
  StateShape,
  WorkedText,
} from './page/page.ts';
export { pageText, type TextOptions } from './text/page-text.ts';
export { textWidth } from './type/text-width.ts';
