import { textWidth } from './text-width.ts';

/** How a text is set: its size, its weight and the width it may take. */
export interface Setting {
  readonly size: number;
  readonly width: number;
  readonly bold?: boolean;
}

/** Spaces at which a line may end. The no-break and thin spaces inside numbers are not among them. */
const breakable = / +/u;

/** Cuts a word that alone is wider than the line, as ids and addresses without spaces can be. */
function cutWord(word: string, fits: (line: string) => boolean): string[] {
  const parts: string[] = [];
  let part = '';
  for (const glyph of word) {
    if (part !== '' && !fits(part + glyph)) {
      parts.push(part);
      part = '';
    }
    part += glyph;
  }
  return [...parts, part];
}

function wrapParagraph(paragraph: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(breakable).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = cutWord(word, fits);
    line = parts.pop() ?? '';
    lines.push(...parts);
  }
  return [...lines, line];
}

/**
 * Breaks a text into lines no longer than a measure allows; only a single glyph may stand over.
 * @param text - the text; its own line breaks are kept
 * @param fits - whether a line is short enough
 * @returns at least one line
 */
export function wrapWith(text: string, fits: (line: string) => boolean): string[] {
  return text.split('\n').flatMap((paragraph) => wrapParagraph(paragraph, fits));
}

/** Breaks a text into lines of the sheets' typeface. */
export function wrapText(text: string, setting: Setting): string[] {
  return wrapWith(text, (line) => textWidth(line, setting.size, setting.bold) <= setting.width);
}
