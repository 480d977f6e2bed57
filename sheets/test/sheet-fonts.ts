import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { sheetFontFiles } from '../src/pdf/font-files.ts';
import type { SheetFonts } from '../src/pdf/print-pdf.ts';

const { resolve } = createRequire(new URL('../package.json', import.meta.url));
const read = (specifier: string): Uint8Array => new Uint8Array(readFileSync(resolve(specifier)));

/** The sheets' typeface from its package. */
export const sheetFonts: SheetFonts = { regular: read(sheetFontFiles.regular), bold: read(sheetFontFiles.bold) };
