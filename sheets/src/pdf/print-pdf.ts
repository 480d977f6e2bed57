import pdfmake from 'pdfmake';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces.js';
import { drawingSvg, paperInks } from '../drawing/drawing-svg.ts';
import type { Drawing, Shape } from '../page/page.ts';
import type { Print } from '../print/print.ts';
import { textWidth } from '../type/text-width.ts';

/** The sheets' typeface as bytes of its TTF files: DejaVu Sans Condensed, regular and bold. */
export interface SheetFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
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
 * A print as a PDF, one page a sheet. The same print gives the same bytes, in Node and browser.
 * @param print - sheets, title, language and creation date
 * @param fonts - bytes of the files named in `sheetFontFiles`, embedded as a subset
 * @param onShare - told again and again which share of the work is done [1]
 * @returns the file
 */
export async function printPdf(
  { sheets, title, language, now }: Print,
  fonts: SheetFonts,
  onShare: (share: number) => void = () => undefined,
): Promise<Uint8Array> {
  setUp(fonts);
  pdfmake.setProgressCallback(onShare);
  const { width = 0, height = 0 } = sheets[0] ?? {};
  const moment = new Date(now);
  const definition: TDocumentDefinitions = {
    pageSize: { width, height },
    pageMargins: 0,
    content: sheets.flatMap(pageNodes),
    defaultStyle: { font: family },
    language,
    info: { title, creationDate: moment, modDate: moment, creator: 'Loopwright', producer: 'Loopwright' },
  };
  return new Uint8Array(await pdfmake.createPdf(definition).getBuffer());
}
