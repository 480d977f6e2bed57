/** What the plant does not know: said as such, with what to measure or where to look. The card goes on without it. */
export const missingEn = {
  'missing.die':
    'Die not known. Read finger pitch and finger length on the die and hold it against the belt; enter it in the plant data.',
  'missing.template':
    'Template not known. Its pocket must be as wide as the belt and as deep as the belt is thick. Measure both with a caliper.',
  'missing.press': 'Press not known. Read name, platen size and date of the last check on the press.',
  'missing.recipe':
    'No recipe for this belt on this press. Ask the belt maker for temperature, pressure and hold time. Do not guess, do not carry a recipe over from another press unchecked.',
  'missing.roll':
    'No roll of this belt and width is listed. Look in the store; read lot and width, measure what is left.',
  'missing.path':
    'Route of the belt not known, so there is no drawing. Photograph the old route before the belt comes out; measure the line as the survey asks.',
  'missing.take-up-stroke':
    'Stroke of the take-up not known. Measure its travel from the slack stop to the tight stop.',
  'missing.take-up-position':
    'Nobody noted where the take-up stood. Measure from the slack stop before winding it slack, and write it down.',
  'missing.drive': 'No pulley is marked as the drive. Look which one the motor turns and enter its role.',
  'missing.neutral-line':
    'Neutral line of the belt not known; half the thickness is taken. Look in the belt maker’s data sheet.',
  'missing.press-check': 'Date of the last press check not known. Look for the label on the press and enter the date.',
  'missing.dry-data':
    'Drying time and temperature of this belt not known. Take belt from a sealed roll, or look in the data sheet.',
  'missing.data-sheet':
    'Which data sheet this belt has is not entered. Compare thickness, smallest pulley and elongation with the belt maker’s sheet before cutting; the sheet wins.',
  'missing.loop-length':
    'Endless length not known. Lay the old belt slack and flat and measure from tip to root; if it is gone, measure the line as the survey asks.',
} as const;
