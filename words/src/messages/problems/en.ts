/**
 * One sentence a problem of a plant folder: what, allowed, next step. The place (file, row, column) is put in front
 * by `problemSentence`. Values: those of `data`, formatted; `allowed` is made of `min` and `max` where it is not given.
 */
export const problemsEn = {
  'place.file': '{file}',
  'place.row': '{file}, row {row}',
  'place.field': '{file}, column {field}',
  'place.row-field': '{file}, row {row}, {field}',
  // What may be wrong with the files themselves.
  'problem.file-missing':
    'this file is not in the folder{other, select, none {} other {, {other} refers to it}}. Add it, with a heading row and one row a thing.',
  'problem.file-too-large':
    'the file has {value} bytes, at most {max} are read. Split it or remove what does not belong there.',
  'problem.too-many-rows': 'more than {max} rows. Split the plant into several folders.',
  'problem.too-many-columns': 'got {value} columns, at most {max} are read. Remove empty and foreign columns.',
  'problem.not-text': 'not readable as text (byte {value} at {at}). Save it again as CSV, UTF-8.',
  'problem.workbook': 'this is a spreadsheet workbook. Save the sheet as CSV, UTF-8.',
  'problem.open-quote': 'a quotation mark opens here and never closes. Close it or remove it.',
  'problem.no-header': 'there is no heading row. Put the names of the columns into row 1.',
  'problem.duplicate-column': 'the columns “{value}” and “{other}” mean the same. Keep one.',
  'problem.unknown-column':
    'column “{value}” is not known.{nearest, select, none {} other { Perhaps “{nearest}” is meant.}} Rename or remove it.',
  'problem.missing-column': 'a column is missing that every row needs: {allowed}. Add it.',
  'problem.unit-missing': 'heading “{value}” says no unit. Write one of: {allowed}.',
  'problem.unknown-unit': 'heading “{value}” ends in a unit that does not fit ({unit}). Write one of: {allowed}.',
  'problem.ragged-row':
    'the row has {value} cells, the heading {max}. Look for a separator inside a text; put such a text in quotation marks.',
  'problem.not-one-row': 'got {value} rows, exactly one is expected. Keep the row of this plant.',
  'problem.missing-value': 'the cell is empty. Enter the value, or remove the row.',
  'problem.not-a-number': 'got “{value}”, a number is needed. Write digits only; the unit stands in the heading.',
  'problem.decimal-comma':
    'got “{value}” with a decimal comma, but commas separate the columns here. Write a point, or separate the columns with semicolons.',
  'problem.mixed-decimals':
    'decimal comma in “{value}” (row {row}), decimal point in “{other}” (row {otherRow}). Use one of the two in the whole file.',
  'problem.thousands-separator':
    '“{value}” groups its digits, so the decimal mark is unclear. Write it without grouping, such as 64302.5.',
  'problem.out-of-range': 'got {value}, must be {allowed}. Check number and unit in the heading.',
  'problem.not-one-of': 'got “{value}”, allowed are: {allowed}. Write one of them.',
  'problem.not-yes-or-no': 'got “{value}”, yes or no is needed. Write one of the two.',
  'problem.not-a-day': 'got “{value}”, a day is needed. Write year-month-day, such as 2026-03-02.',
  'problem.not-a-moment': 'got “{value}”, a moment in UTC is needed. Write it like 2026-11-25T02:04:00Z.',
  'problem.too-long': 'the text has {length} characters, at most {max} are allowed. Shorten it.',
  'problem.hidden-signs': 'there is a sign in the text that cannot be seen ({value}). Type the text again by hand.',
  'problem.bad-id':
    '“{value}” cannot be a name of a thing. Use 1 to 40 letters, digits, “-”, “_” or “.”, starting with a letter or digit, without spaces.',
  'problem.duplicate-id': '“{value}” stands already in row {otherRow}. Give one of the two another name, or remove it.',
  'problem.dangling-reference':
    '“{value}” is not in {other}.{nearest, select, none {} other { Perhaps “{nearest}” is meant.}} Correct the name or add the row there.',
  'problem.more-problems': '{value} more problems in this file. Mend those above and check again.',
  'problem.encoding-assumed': 'not UTF-8; read as {value}. Look at umlauts and accents, and save it as UTF-8.',
  'problem.unknown-file':
    'nothing reads this file.{nearest, select, none {} other { Perhaps “{nearest}” is meant.}} Rename it, or leave it.',
  // What may be wrong between the fields of a plant.
  'problem.neutral-line-outside-belt':
    'the neutral line at {value} lies outside the belt, which is {max} thick. Enter the distance from the pulley side, 0 to {max}.',
  'problem.covers-over-thickness':
    'both covers together take {value} of a belt {max} thick and leave nothing for the tension member. Measure the covers.',
  'problem.elongation-window-empty':
    'the least elongation {value} is not below the largest, {max}. Look both up in the data sheet.',
  'problem.die-fits-no-belt': 'no belt has fingers of {pitch} × {fingerLength}. Check both numbers on the die.',
  'problem.line-without-die':
    'no die cuts the fingers of belt {other}, {pitch} × {fingerLength}. Add the die, or correct the fingers of the belt.',
  'problem.die-too-narrow':
    'the belt is {value} wide, die {other} takes at most {max}. Add a wider die or correct the width.',
  'problem.line-without-template':
    'no template has a pocket for belt {other}, {value} wide. Add the template, or measure its pocket again.',
  'problem.template-wider-than-die': 'the pocket is {value} wide, die {other} punches at most {max}. Check both.',
  'problem.template-depth-differs':
    'the pocket is {value} deep; belt {other}, the nearest, is {max} thick. A wrong depth squeezes or starves the splice. Measure the pocket.',
  'problem.belt-wider-than-pulley':
    'the face is {value} wide, the belt of line {other} needs at least {min}. Check both.',
  'problem.pulley-under-limit':
    'the diameter is {value}, belt {other} needs at least {min}. The belt cracks early there. Measure again; if it is so, plan a larger pulley.',
  'problem.counter-bend-under-limit':
    'the pulley touches the roller side and is {value}; belt {other} needs at least {min} there. The splice cracks early. Measure again; if it is so, plan a larger pulley.',
  'problem.take-up-reference-over-stroke':
    'the coordinates stand at {value} of travel, the stroke is {max}. Correct one of the two.',
  'problem.take-up-over-stroke':
    'the take-up stands at {value}, the stroke of line {other} is {max}. Measure both from the slack stop.',
  'problem.take-up-stroke-missing':
    'there is a take-up, but no stroke. Measure its travel from the slack stop to the tight stop.',
  'problem.take-up-direction-missing':
    'the take-up has no direction (0, 0). Enter where it moves to tighten, such as 0 and -1 for downwards.',
  'problem.take-up-force-missing':
    'a take-up by {value, select, spring {spring} gravity {weight} other {{value}}} needs its force. Weigh it or read it off the spring.',
  'problem.drives-not-one': 'got {value} drive pulleys, exactly one is expected. Mark the one that the motor turns.',
  'problem.take-ups-not-one': 'got {value} take-up pulleys, exactly one is expected. Mark the one that moves.',
  'problem.take-up-not-expected':
    'the line says there is no take-up, yet pulley {other} is one. Correct one of the two.',
  'problem.duplicate-order':
    'number {value} in the order of travel belongs already to pulley {other} of line {line}. Number the pulleys as the belt meets them.',
  'problem.line-without-path':
    'neither pulleys nor a survey, so no path can be drawn. Enter the pulleys, or measure the line as the survey asks.',
  'problem.survey-refused': 'the survey of line {line} gives no path. {reason}',
  'problem.path-refused': 'no belt can run here as entered. {reason}',
  'problem.elongation-outside-window':
    'set elongation {value}, belt {other} is made for {allowed}. Check the value on the line.',
  'problem.recipe-not-above-opening':
    'the temperature {value} is not above the opening temperature {min}. Check the recipe.',
  'problem.recipe-over-press-pressure':
    'the recipe needs {value} on the belt, press {other} gives at most {max}. Use another press or check the recipe.',
} as const;
