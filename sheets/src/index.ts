export { type CardCode, cardCode, readCardCode } from './code/card-code.ts';
export {
  type CheckpointWithKey,
  checkpointCode,
  readCheckpointCode,
  readWitnessCode,
  witnessCode,
} from './code/checkpoint-code.ts';
export { type PositionCode, plantMark, positionCode } from './code/position-code.ts';
export { type CodeFault, codeFaults, type ReadCode, readCode } from './code/read-code.ts';
export { type Box, boxesOverlap, textBox } from './drawing/boxes.ts';
export { type DefectLook, defectLooks, defectPicture } from './drawing/defects/defect-picture.ts';
export { drawingSvg, type InkColours, paperInks, stackedSvg } from './drawing/drawing-svg.ts';
export { type LabelPaper, labelPapers, labelsOnSheet } from './label/label-paper.ts';
export { auditPage } from './page/audit-page.ts';
export { voiceOfDisplay } from './page/card/press-display.ts';
export { threadDrawing } from './page/card/thread-drawing.ts';
export { cardPage } from './page/card-page.ts';
export { type CurveSize, fusionCurves, temperatureCurves } from './page/cycle/curves.ts';
export { type TwoCycles, twoFusionCurves, twoTemperatureCurves } from './page/cycle/two-cycles.ts';
export { gradeWord } from './page/cycle/warnings.ts';
export { cyclePage } from './page/cycle-page.ts';
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
export { codeModules, codePicture } from './paper/code-picture.ts';
export { type FlowPaper, flowPapers } from './paper/flow-sheets.ts';
export { type Paper, papers } from './paper/paper-size.ts';
export { type LabelPrint, labelsPrint, layOutLabels } from './print/labels-print.ts';
export { cardPrint, flowPrint } from './print/page-print.ts';
export type { Print } from './print/print.ts';
export { curveCsv } from './text/curve-csv.ts';
export { pageText, type TextOptions } from './text/page-text.ts';
export { textWidth } from './type/text-width.ts';
