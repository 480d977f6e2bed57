/** What parts the cells of a row. */
export type Separator = '\t' | ';' | ',';

/**
 * The cells of a row; quotes round a cell are taken off.
 *
 * @param line - of a file
 * @param separator - between cells
 */
export function splitRow(line: string, separator: Separator): readonly string[] {
  return line.includes('"') ? splitQuoted(line, separator) : line.split(separator);
}

function splitQuoted(line: string, separator: Separator): readonly string[] {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const letter of line) {
    if (letter === '"') quoted = !quoted;
    else if (letter === separator && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += letter;
  }
  return [...cells, cell];
}

/** Lines of a text that comes in pieces; an end of line may be cut in two. */
export interface LineSplitter {
  /** Whole lines of what has come so far. */
  readonly take: (chunk: string) => readonly string[];
  /** What is left at the end. */
  readonly rest: () => string;
}

/** Splits at LF, CR LF and CR; a mark of the byte order at the start is taken off. */
export function lineSplitter(): LineSplitter {
  let rest = '';
  let first = true;
  return {
    take: (chunk) => {
      const text = rest + (first ? chunk.replace(/^\uFEFF/, '') : chunk);
      if (chunk !== '') first = false;
      // A CR at the very end may be half of a CR LF: it waits for what follows.
      const held = text.endsWith('\r') ? text.slice(0, -1) : text;
      const lines = held.split(/\r\n|\n|\r/);
      rest = (lines.pop() ?? '') + text.slice(held.length);
      return lines;
    },
    rest: () => rest.replace(/\r$/, ''),
  };
}
