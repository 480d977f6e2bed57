import { textOfUtf8 } from './strict-json.ts';

const lineEnd = 0x0a;

/** A line of a file of lines. */
export interface FileLine {
  /** Undefined where its bytes are no UTF-8 or its line end is missing. */
  readonly text: string | undefined;
  /** Where the next line starts. */
  readonly next: number;
  readonly isLast: boolean;
}

/**
 * The line that starts at a place of a file. A missing line end at the end of the file makes the line unreadable: a
 * file that was cut off must not read as whole.
 *
 * @param bytes - of the file
 * @param start - where the line starts, below the number of bytes
 */
export function lineAt(bytes: Uint8Array, start: number): FileLine {
  const end = bytes.indexOf(lineEnd, start);
  if (end < 0) return { text: undefined, next: bytes.length, isLast: true };
  return { text: textOfUtf8(bytes.subarray(start, end)), next: end + 1, isLast: end + 1 >= bytes.length };
}

/** Where the last line of a file starts. */
export function lastLineStart(bytes: Uint8Array): number {
  const end = bytes.at(-1) === lineEnd ? bytes.length - 2 : bytes.length - 1;
  return end < 0 ? 0 : bytes.lastIndexOf(lineEnd, end) + 1;
}
