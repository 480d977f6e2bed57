import { describe, expect, it } from 'vitest';
import { decode } from '../../src/folder/decode.ts';

const bytes = (...values: number[]) => Uint8Array.from(values);
const utf16 = (text: string, littleEndian: boolean) => {
  const view = new DataView(new ArrayBuffer(2 * text.length + 2));
  [...`\ufeff${text}`].forEach((letter, i) => {
    view.setUint16(2 * i, letter.charCodeAt(0), littleEndian);
  });
  return new Uint8Array(view.buffer);
};

// WHATWG Encoding Standard, index windows-1252: what the bytes 0x80 to 0x9f stand for.
const windows1252 = new Map([
  [0x80, 0x20ac],
  [0x82, 0x201a],
  [0x83, 0x0192],
  [0x84, 0x201e],
  [0x85, 0x2026],
  [0x86, 0x2020],
  [0x87, 0x2021],
  [0x88, 0x02c6],
  [0x89, 0x2030],
  [0x8a, 0x0160],
  [0x8b, 0x2039],
  [0x8c, 0x0152],
  [0x8e, 0x017d],
  [0x91, 0x2018],
  [0x92, 0x2019],
  [0x93, 0x201c],
  [0x94, 0x201d],
  [0x95, 0x2022],
  [0x96, 0x2013],
  [0x97, 0x2014],
  [0x98, 0x02dc],
  [0x99, 0x2122],
  [0x9a, 0x0161],
  [0x9b, 0x203a],
  [0x9c, 0x0153],
  [0x9e, 0x017e],
  [0x9f, 0x0178],
]);

describe('bytes of a plant file', () => {
  it('[PLANT-01] UTF-8 is read with and without a mark', () => {
    const text = 'id,name\nä,Größe ñ €\n';
    const plain = new TextEncoder().encode(text);
    expect(decode(plain)).toEqual({ text });
    expect(decode(Uint8Array.from([0xef, 0xbb, 0xbf, ...plain]))).toEqual({ text });
  });

  it('[PLANT-01] UTF-16 is read when its mark is there, either way round', () => {
    expect(decode(utf16('id;Größe', true))).toEqual({ text: 'id;Größe' });
    expect(decode(utf16('id;Größe', false))).toEqual({ text: 'id;Größe' });
  });

  it('[PLANT-02] bytes that are not UTF-8 are read as Windows-1252, and it says so', () => {
    expect(decode(bytes(0x47, 0x72, 0xf6, 0xdf, 0x65))).toEqual({ text: 'Größe', assumed: 'Windows-1252' });
    for (const [byte, code] of windows1252) {
      // 0xff makes the bytes surely not UTF-8.
      expect(decode(bytes(byte, 0xff)), byte.toString(16)).toMatchObject({ text: `${String.fromCharCode(code)}ÿ` });
    }
  });

  it('[PLANT-03] what is no text in any of these is refused, with the byte and its place', () => {
    expect(decode(bytes(0x41, 0x81, 0xff))).toEqual({ code: 'not-text', data: { value: '0x81', at: 1 } });
    expect(decode(bytes(0x69, 0x64, 0x00))).toEqual({ code: 'not-text', data: { value: '0x00', at: 2 } });
    expect(decode(utf16('id', true).subarray(2))).toMatchObject({ code: 'not-text' });
  });

  it('[PLANT-03] a spreadsheet workbook is recognised as one', () => {
    expect(decode(bytes(0x50, 0x4b, 0x03, 0x04))).toEqual({ code: 'workbook', data: {} });
  });

  it('[PLANT-04] line ends of every system come out alike', () => {
    expect(decode(new TextEncoder().encode('a\r\nb\rc\nd'))).toEqual({ text: 'a\nb\nc\nd' });
  });
});
