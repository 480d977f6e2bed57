export { type FlowPaper, flowPapers } from '../paper/flow-sheets.ts';
export { type Paper, papers } from '../paper/paper-size.ts';
export { cardPdf } from './card-pdf.ts';
export type { SheetFonts } from './drawings-pdf.ts';
export { flowPdf } from './flow-pdf.ts';
export { sheetFontFiles } from './font-files.ts';
export { type LabelPrint, labelsPdf } from './labels-pdf.ts';
