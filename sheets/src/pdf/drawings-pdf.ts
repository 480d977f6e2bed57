import pdfmake from 'pdfmake';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';
import { drawingSvg, paperInks } from '../drawing/drawing-svg.ts';
import type { Drawing, Shape } from '../page/page.ts';
import { textWidth } from '../type/text-width.ts';

/** The sheets' typeface as bytes of its TTF files: DejaVu Sans Condensed, regular and bold. */
export interface SheetFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** What the file says of itself. `now` is ISO text and stands as creation date. */
export interface FileFacts {
  readonly title: string;
  readonly language: string;
  readonly now: string;
}

const family = 'Sheet';
const files = { regular: 'sheet-regular.ttf', bold: 'sheet-bold.ttf' } as const;
/** Top of the line to its baseline, as share of the size: the ascent of the typeface. */
const ascent = 1901 / 2048;

type TextShape = Extract<Shape, { readonly shape: 'text' }>;
const share = { start: 0, middle: 0.5, end: 1 } as const;

function textNode(text: TextShape): Content {
  const width = textWidth(text.text, text.size, text.bold);
  return {
    text: text.text,
    absolutePosition: { x: text.x - width * share[text.anchor], y: text.y - ascent * text.size },
    fontSize: text.size,
    bold: text.bold === true,
    color: paperInks[text.ink ?? 'ink'],
    noWrap: true,
    lineHeight: 1,
  };
}

/** One page: lines and fills as one vector picture, then the texts as real text at their places. */
function pageNodes(drawing: Drawing, index: number): Content[] {
  const lines = drawing.shapes.filter((shape) => shape.shape !== 'text');
  const texts = drawing.shapes.filter((shape) => shape.shape === 'text');
  return [
    // An anchor in the flow opens the page: without one nothing would begin it.
    { text: ' ', fontSize: 1, ...(index > 0 && { pageBreak: 'before' as const }) },
    {
      svg: drawingSvg({ ...drawing, shapes: lines }),
      absolutePosition: { x: 0, y: 0 },
      width: drawing.width,
      height: drawing.height,
    },
    ...texts.map(textNode),
  ];
}

function setUp(fonts: SheetFonts): void {
  const store = pdfmake as unknown as { readonly virtualfs: { writeFileSync(name: string, data: Uint8Array): void } };
  store.virtualfs.writeFileSync(files.regular, fonts.regular);
  store.virtualfs.writeFileSync(files.bold, fonts.bold);
  pdfmake.setFonts({ [family]: { normal: files.regular, bold: files.bold } });
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy?.(() => false);
}

/**
 * A PDF with one page per drawing, one drawing unit a point. The same input gives the same bytes.
 * @param pages - the pages, all of one size
 * @param facts - title, language and creation date
 * @param fonts - the typeface, embedded as a subset
 * @returns the file
 */
export async function drawingsPdf(pages: readonly Drawing[], facts: FileFacts, fonts: SheetFonts): Promise<Uint8Array> {
  setUp(fonts);
  const { width = 0, height = 0 } = pages[0] ?? {};
  const moment = new Date(facts.now);
  const definition: TDocumentDefinitions = {
    pageSize: { width, height },
    pageMargins: 0,
    content: pages.flatMap(pageNodes),
    defaultStyle: { font: family },
    language: facts.language,
    info: { title: facts.title, creationDate: moment, modDate: moment, creator: 'Loopwright', producer: 'Loopwright' },
  };
  return new Uint8Array(await pdfmake.createPdf(definition).getBuffer());
}
