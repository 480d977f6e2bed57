/** Sentences about tables that are taken in and given out, and about everything as one file. */
export const tablesEn = {
  'tables.open': 'Take in or give out a table',
  'tables.title': '{kind} as a table',
  'tables.in': 'Take in a table',
  'tables.in.help':
    'A CSV or XLSX file with a heading row; of a workbook its first sheet. New rows are added, rows with a short name that is known change it, nothing is removed. Columns that are not there stay as they are.',
  'tables.in.before': 'You see everything before it is taken.',
  'tables.choose': 'Choose a file',
  'tables.choose.other': 'Choose another file',
  'tables.stage.opening': 'Opening the file …',
  'tables.stage.unpacking': 'Unpacking the workbook …',
  'tables.stage.checking': 'Holding every row against the plant …',
  'tables.stage.step': 'Step {step} of {of}',
  'tables.stop': 'Stop',
  'tables.stopped': 'Stopped. Nothing has changed.',
  'tables.found': '{rows, plural, one {# row} other {# rows}} in {file}',
  'tables.added': 'new',
  'tables.changed': 'changed',
  'tables.unchanged': 'unchanged',
  'tables.wrong': 'cannot be taken',
  'tables.more-names': 'and {count} more',
  'tables.nothing': 'Everything in it is here already. There is nothing to take.',
  'tables.empty': 'There are no rows below the headings. Fill them in, then choose the file again.',
  'tables.refused': 'Nothing is taken as long as one row cannot be. Mend these in the file, then choose it again.',
  'tables.refused.title': '{count, plural, one {# thing to mend} other {# things to mend}}',
  'tables.cares': 'Look at this. It can be taken as it is.',
  'tables.at.row': 'Row {row}',
  'tables.at.row-field': 'Row {row}, column {field}',
  'tables.at.field': 'Column {field}',
  'tables.at.file': 'The whole file',
  'tables.show-all': 'Show all {count}',
  'tables.take': '{count, plural, one {Take # row} other {Take all # rows}}',
  'tables.taking': 'Saving all rows, or none …',
  'tables.taken':
    'Saved: {added, plural, one {# new} other {# new}}, {changed, plural, one {# changed} other {# changed}}.',
  'tables.undoing': 'Taking everything back …',
  'tables.undone': 'Everything is as it was before.',
  'tables.overtaken':
    'The plant was changed elsewhere meanwhile, so the table was held against it once more. Look through it again.',
  'tables.out': 'Give out a table',
  'tables.out.help':
    '{count, plural, one {# row} other {# rows}}, to look at, change and take in again. Texts that a spreadsheet would run as a formula stand behind an apostrophe.',
  'tables.out.empty': 'Nothing is there yet: the file holds the headings, to fill in below them.',
  'tables.out.csv': 'As CSV',
  'tables.out.xlsx': 'As XLSX',
  'tables.out.making': 'Writing the file …',
  'tables.out.done': '{file} is among this browser’s downloads.',
  'tables.fault.too-large': 'Not taken: the file has {value} MB, at most {max} MB are read. Split it.',
  'tables.fault.old-workbook':
    'Not taken: this is an old workbook, or one with a password. Save it as XLSX without a password, or as CSV.',
  'tables.fault.no-workbook':
    'Not taken: this is not a whole XLSX workbook. Open it in the spreadsheet and save it again as XLSX or CSV.',
  'tables.fault.many-files':
    'Not taken: the workbook holds {value} files, at most {max} are read. Save the one sheet as CSV.',
  'tables.fault.unpacks-large':
    'Not taken: unpacked, the workbook has {value} MB, at most {max} MB are read. Save the one sheet as CSV, or split it.',
  'tables.fault.steep':
    'Not taken: a part of the workbook unpacks to more than {max} times its size, as no table does. Save the sheet as CSV.',
  'tables.fault.many-rows':
    'Not taken: the sheet reaches to row {value}, at most {max} are read. Delete what stands far below the table, or split it.',
  'tables.fault.many-columns':
    'Not taken: the sheet reaches to column {value}, at most {max} are read. Delete what stands far to the right of the table.',
  'tables.fault.many-cells': 'Not taken: the sheet spans {value} cells, at most {max} are read. Split it.',
  'tables.fault.failed':
    'It did not work, and nothing has changed. Try once more; if it fails again, load the page again.',
  'everything.title': 'Everything as one file',
  'everything.out': 'Export everything',
  'everything.out.help':
    'All records of {name}, signed, with pictures and curves, in one file. Keep a copy on another device: what only one device has is lost with it.',
  'everything.verifier': 'Download the verifier',
  'everything.verifier.help':
    'Whoever is to check the file need not trust this app: a program of one file, which runs in Node or a browser, says whether it is whole.',
  'everything.out.making': 'Writing {count, plural, one {# record} other {# records}} …',
  'everything.out.done': '{file} ({size} MB) is among this browser’s downloads. Copy it to another device.',
  'everything.in': 'Import an export file',
  'everything.in.help':
    'A file that “Export everything” made, on this device or another. It is checked whole, line by line, and you see what it holds before anything is taken.',
  'everything.checking': 'Checking every line and signature …',
  'everything.whole': '{file} is whole.',
  'everything.plant': 'Plant',
  'everything.records': 'Records',
  'everything.records.new': '{count}, of which {fresh} are new here',
  'everything.devices': 'Devices that wrote them',
  'everything.pictures': 'Pictures and curves',
  'everything.pictures.missing': '{count} ({missing} missing)',
  'everything.relation.first': 'Nothing is on this device yet: it shows this plant afterwards.',
  'everything.relation.same': 'This plant is here already: what is new is added to it.',
  'everything.relation.other':
    'This is another plant. It is shown afterwards; {name} stays on the device, and the settings lead back to it.',
  'everything.unknown':
    '{count, plural, one {# record was written by a newer version: it is kept, but not shown.} other {# records were written by a newer version: they are kept, but not shown.}} Update this app.',
  'everything.not-witnessed':
    '{count, plural, one {# record has} other {# records have}} no signed statement of the device behind {count, plural, one {it} other {them}}: most likely the file was made before the last ones.',
  'everything.take': 'Take all of it',
  'everything.taking': 'Saving everything, or nothing …',
  'everything.taken': 'Everything is saved on this device. It shows {name} now.',
  'everything.no': 'Do not take it',
} as const;
