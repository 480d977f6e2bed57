import { describe, expect, it } from 'vitest';
import { folderLimits } from '../../src/folder/limits.ts';
import { readTable } from '../../src/folder/table.ts';

describe('rows of a plant file', () => {
  it.each([
    [',', 'a,b\n1,2'],
    [';', 'a;b\n1;2'],
    ['\t', 'a\tb\n1\t2'],
  ])('[PLANT-04] the heading says that cells are separated by %j', (delimiter, text) => {
    expect(readTable(text)).toEqual({
      delimiter,
      header: { row: 1, cells: ['a', 'b'] },
      rows: [{ row: 2, cells: ['1', '2'] }],
    });
  });

  it('[PLANT-05] comments and empty rows are passed over, and rows keep the number a spreadsheet shows', () => {
    const text = '# made by hand; 5" wide\n\nid,note\n# another "one\na,x\n,\n"# quoted comment",\nb,"#1\n#2"\n';
    expect(readTable(text)).toMatchObject({
      header: { row: 3, cells: ['id', 'note'] },
      rows: [
        { row: 5, cells: ['a', 'x'] },
        { row: 8, cells: ['b', '#1\n#2'] },
      ],
    });
  });

  it('[PLANT-05] empty columns at the right end are cut off', () => {
    expect(readTable('a,b,,\n1,2,,')).toMatchObject({ header: { cells: ['a', 'b'] } });
  });

  it('[PLANT-06] an unclosed quotation mark, no heading, too many columns are said', () => {
    expect(readTable('a,b\n1,"x\n2,y')).toEqual({ code: 'open-quote', row: 2, data: {} });
    expect(readTable('# nothing\n\n')).toEqual({ code: 'no-header', data: {} });
    expect(readTable(','.repeat(250))).toEqual({ code: 'too-many-columns', data: { value: 251, max: 200 } });
  });

  it('[PLANT-07] as many rows as allowed are read, one more is refused', () => {
    const rows = (count: number) => `a\n${'1\n'.repeat(count)}`;
    expect(readTable(rows(folderLimits.rows))).toMatchObject({ header: { cells: ['a'] } });
    expect(readTable(rows(folderLimits.rows + 1))).toEqual({
      code: 'too-many-rows',
      data: { max: folderLimits.rows },
    });
  });
});
