import type { RefusalData } from '@loopwright/engine/refusal';

/** A file as text, or why it is none. `assumed` names the code page when the bytes did not say it themselves. */
export type Decoded =
  | { readonly text: string; readonly assumed?: 'Windows-1252' }
  | { readonly code: 'not-text' | 'workbook'; readonly data: RefusalData };

// Windows-1252 differs from Latin-1 only in 0x80 to 0x9f; a space marks the five bytes that stand for nothing.
// An own table, because the decoders built into some engines read these bytes as control characters.
const windows1252 = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/**
 * Reads bytes as UTF-8 (with or without mark), UTF-16 with a mark, else as Windows-1252.
 *
 * @param bytes - the file as it is
 * @returns its text with plain line ends, or why it is not text
 */
export function decode(bytes: Uint8Array): Decoded {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03) return { code: 'workbook', data: {} };
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return checked(new TextDecoder('utf-16le').decode(bytes));
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return checked(new TextDecoder('utf-16be').decode(bytes));
  const utf8 = decodeUtf8(bytes);
  if (utf8 !== undefined) return checked(utf8);
  return decodeWindows1252(bytes);
}

function decodeUtf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function decodeWindows1252(bytes: Uint8Array): Decoded {
  const parts: string[] = [];
  const chunk = 8192;
  for (let start = 0; start < bytes.length; start += chunk) {
    const codes: number[] = [];
    for (const [i, byte] of bytes.subarray(start, start + chunk).entries()) {
      const letter = byte >= 0x80 && byte <= 0x9f ? windows1252.charCodeAt(byte - 0x80) : byte;
      if (letter === 0x20 && byte !== 0x20) return notText(byte, start + i);
      codes.push(letter);
    }
    parts.push(String.fromCharCode(...codes));
  }
  const read = checked(parts.join(''));
  return 'text' in read ? { ...read, assumed: 'Windows-1252' } : read;
}

/** Control characters other than tab and line ends do not occur in a table a person typed: the file is no text. */
function checked(text: string): Decoded {
  for (let i = 0; i < text.length; i++) {
    const letter = text.charCodeAt(i);
    if (letter < 0x20 && letter !== 0x09 && letter !== 0x0a && letter !== 0x0d) return notText(letter, i);
  }
  return { text: text.replaceAll('\r\n', '\n').replaceAll('\r', '\n') };
}

function notText(byte: number, at: number): Decoded {
  return { code: 'not-text', data: { value: `0x${byte.toString(16).padStart(2, '0')}`, at } };
}
