export { type Paper, papers } from '../paper/paper-size.ts';
export { cardPdf } from './card-pdf.ts';
export type { SheetFonts } from './drawings-pdf.ts';
export { sheetFontFiles } from './font-files.ts';
