import type { Drawing, Ink, Shape } from '../page/page.ts';

/** Colours of each ink in one medium. */
export type InkColours = Readonly<Record<Ink, string>>;

/** Black on white for paper: stop and care differ by word and shape, not by colour. */
export const paperInks: InkColours = {
  ink: '#000000',
  soft: '#555555',
  accent: '#000000',
  stop: '#000000',
  care: '#000000',
  ok: '#000000',
  paper: '#ffffff',
};

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text made fit for an XML element or attribute; control characters, which XML forbids, are left out. */
export function xmlText(text: string): string {
  return Array.from(text, (glyph) => ((glyph.codePointAt(0) ?? 0) < 0x20 ? ' ' : (escapes[glyph] ?? glyph))).join('');
}

function drawn(shape: Shape, inks: InkColours): string {
  const fill = shape.fill === undefined || shape.fill === 'none' ? 'none' : inks[shape.fill];
  const dash = shape.dash ? ` stroke-dasharray="${shape.dash.join(' ')}"` : '';
  const line =
    shape.width === 0 ? 'stroke="none"' : `stroke="${inks[shape.ink ?? 'ink']}" stroke-width="${shape.width ?? 1}"`;
  return `fill="${fill}" ${line}${dash}`;
}

function shapeSvg(shape: Shape, inks: InkColours): string {
  switch (shape.shape) {
    case 'path':
      return `<path d="${xmlText(shape.d)}" stroke-linejoin="round" ${drawn(shape, inks)}/>`;
    case 'circle':
      return `<circle cx="${shape.x}" cy="${shape.y}" r="${shape.r}" ${drawn(shape, inks)}/>`;
    case 'text': {
      const weight = shape.bold ? ' font-weight="bold"' : '';
      const place = `x="${shape.x}" y="${shape.y}" font-size="${shape.size}" text-anchor="${shape.anchor}"`;
      return `<text ${place}${weight} fill="${inks[shape.ink ?? 'ink']}">${xmlText(shape.text)}</text>`;
    }
  }
}

/**
 * A drawing as one SVG string.
 * @param drawing - the drawing
 * @param inks - colours of the medium, black on white by default
 * @param font - family of its text
 * @returns an `<svg>` element as text
 */
export function drawingSvg(drawing: Drawing, inks: InkColours = paperInks, font = 'sans-serif'): string {
  const { width, height } = drawing;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"`;
  const shapes = drawing.shapes.map((shape) => shapeSvg(shape, inks)).join('');
  return `${head} role="img" font-family="${xmlText(font)}"><title>${xmlText(drawing.alt)}</title>${shapes}</svg>`;
}

/**
 * Drawings as one SVG string, one below the other.
 * @param drawings - from top to bottom, at least one
 * @param gap - between them
 * @returns an `<svg>` element as text, and its size
 */
export function stackedSvg(drawings: readonly Drawing[], gap = 8): { svg: string; width: number; height: number } {
  const width = Math.max(...drawings.map((each) => each.width));
  let height = 0;
  const parts = drawings.map((drawing) => {
    const shapes = drawing.shapes.map((shape) => shapeSvg(shape, paperInks)).join('');
    const part = `<g transform="translate(0 ${height})"><title>${xmlText(drawing.alt)}</title>${shapes}</g>`;
    height += drawing.height + gap;
    return part;
  });
  height -= gap;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"`;
  return { svg: `${head} role="img" font-family="sans-serif">${parts.join('')}</svg>`, width, height };
}
