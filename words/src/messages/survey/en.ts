/**
 * What the survey of a line asks, in the words of somebody who walks from the infeed end with the goods, and how the
 * layouts are called.
 */
export const surveyEn = {
  'layout.end-drive': 'Drive at an end, no take-up',
  'layout.end-drive-end-take-up': 'Drive at an end, take-up at the other',
  'layout.end-drive-bed-take-up': 'Drive at an end, take-up under the bed',
  'layout.bed-drive': 'Drive under the bed, no take-up',
  'layout.bed-drive-end-take-up': 'Drive under the bed, take-up at an end',
  'layout.bed-drive-bed-take-up': 'Drive and take-up under the bed',
  'survey.infeedDiameter': 'Diameter of the infeed end pulley',
  'survey.driveDistance': 'From the infeed centre along the bed to the drive centre',
  'survey.driveDrop': 'How far the drive centre lies below the line through the two end centres',
  'survey.driveDiameter': 'Diameter of the drive pulley',
  'survey.driveSnubBefore': 'From the drive centre back along the bed to the snub before it',
  'survey.driveSnubAfter': 'From the drive centre on along the bed to the snub after it',
  'survey.driveSnubDrop': 'How far the centres of these snubs lie below the line through the two end centres',
  'survey.driveSnubDiameter': 'Diameter of these snubs',
  'survey.takeUpDistance': 'From the infeed centre along the bed to the take-up centre',
  'survey.takeUpDrop': 'How far the take-up centre lies below the line through the two end centres',
  'survey.takeUpDiameter': 'Diameter of the take-up pulley',
  'survey.takeUpSnubBefore': 'From the take-up centre back along the bed to the snub before it',
  'survey.takeUpSnubAfter': 'From the take-up centre on along the bed to the snub after it',
  'survey.takeUpSnubDrop': 'How far the centres of these snubs lie below the line through the two end centres',
  'survey.takeUpSnubDiameter': 'Diameter of these snubs',
  'survey.endDistance': 'From the infeed centre to the discharge centre',
  'survey.dischargeDiameter': 'Diameter of the discharge end pulley',
} as const;
