import { strToU8, zipSync } from 'fflate';

const spreadsheet = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** The least that is a workbook with one sheet (ECMA-376 part 1, section 12), with what else should lie in it. */
export function workbookOf(
  rows: string,
  others: Readonly<Record<string, Uint8Array>> = {},
  prologue = '',
): Uint8Array<ArrayBuffer> {
  const parts = {
    'xl/workbook.xml': `<workbook xmlns="${spreadsheet}" xmlns:r="${relations}"><sheets><sheet name="a" sheetId="1" r:id="r1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="r1" Type="${relations}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/styles.xml': `<styleSheet xmlns="${spreadsheet}"/>`,
    'xl/worksheets/sheet1.xml': `${prologue}<worksheet xmlns="${spreadsheet}"><sheetData>${rows}</sheetData></worksheet>`,
  };
  const files = Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)] as const);
  return Uint8Array.from(zipSync({ ...Object.fromEntries(files), ...others }));
}
