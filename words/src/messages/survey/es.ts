import type { surveyEn } from './en.ts';

export const surveyEs: Readonly<Record<keyof typeof surveyEn, string>> = {
  'layout.end-drive': 'Accionamiento en un extremo, sin tensor',
  'layout.end-drive-end-take-up': 'Accionamiento en un extremo, tensor en el otro',
  'layout.end-drive-bed-take-up': 'Accionamiento en un extremo, tensor bajo la vía',
  'layout.bed-drive': 'Accionamiento bajo la vía, sin tensor',
  'layout.bed-drive-end-take-up': 'Accionamiento bajo la vía, tensor en un extremo',
  'layout.bed-drive-bed-take-up': 'Accionamiento y tensor bajo la vía',
  'survey.infeedDiameter': 'Diámetro de la polea de entrada',
  'survey.driveDistance': 'Desde el centro de entrada, a lo largo de la vía, hasta el centro de la polea motriz',
  'survey.driveDrop': 'Cuánto queda el centro de la motriz por debajo de la línea entre los dos centros extremos',
  'survey.driveDiameter': 'Diámetro de la polea motriz',
  'survey.driveSnubBefore': 'Desde el centro de la motriz, hacia atrás por la vía, hasta el rodillo de desvío anterior',
  'survey.driveSnubAfter':
    'Desde el centro de la motriz, hacia delante por la vía, hasta el rodillo de desvío posterior',
  'survey.driveSnubDrop':
    'Cuánto quedan los centros de esos rodillos de desvío por debajo de la línea entre los dos centros extremos',
  'survey.driveSnubDiameter': 'Diámetro de esos rodillos de desvío',
  'survey.takeUpDistance': 'Desde el centro de entrada, a lo largo de la vía, hasta el centro de la polea tensora',
  'survey.takeUpDrop': 'Cuánto queda el centro de la tensora por debajo de la línea entre los dos centros extremos',
  'survey.takeUpDiameter': 'Diámetro de la polea tensora',
  'survey.takeUpSnubBefore':
    'Desde el centro de la tensora, hacia atrás por la vía, hasta el rodillo de desvío anterior',
  'survey.takeUpSnubAfter':
    'Desde el centro de la tensora, hacia delante por la vía, hasta el rodillo de desvío posterior',
  'survey.takeUpSnubDrop':
    'Cuánto quedan los centros de esos rodillos de desvío por debajo de la línea entre los dos centros extremos',
  'survey.takeUpSnubDiameter': 'Diámetro de esos rodillos de desvío',
  'survey.endDistance': 'Desde el centro de entrada hasta el centro de salida',
  'survey.dischargeDiameter': 'Diámetro de la polea de salida',
};
