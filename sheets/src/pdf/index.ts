export { sheetFontFiles } from './font-files.ts';
export { printPdf, type SheetFonts } from './print-pdf.ts';
