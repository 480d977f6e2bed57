/** Line and fill styles of drawings; each medium maps them to its own ink. Never colour alone. */
export type Ink = 'ink' | 'soft' | 'accent' | 'stop' | 'care' | 'ok' | 'paper';

interface Drawn {
  readonly ink?: Ink;
  readonly fill?: Ink | 'none';
  /** Line width in drawing units. */
  readonly width?: number;
  readonly dash?: readonly number[];
}
export type Shape =
  | (Drawn & { readonly shape: 'path'; readonly d: string })
  | (Drawn & { readonly shape: 'circle'; readonly x: number; readonly y: number; readonly r: number })
  | (Drawn & {
      readonly shape: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly bold?: boolean;
    });

/** A drawing as data, y downwards, with words for those who cannot see it. */
export interface Drawing {
  readonly id: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** A worked formula in the reader's language and units, numbers in place. */
export interface WorkedText {
  readonly title: string;
  readonly expression: string;
  readonly withNumbers: string;
  readonly symbols: readonly { readonly symbol: string; readonly meaning: string; readonly value: string }[];
  readonly source: string;
}

/** A number as shown. `range` reads like "± 19" or "90–130". */
export interface Figure {
  readonly value: string;
  readonly unit: string;
  readonly range?: string;
  /** Where the number comes from, in words: data sheet, measured, example, computed ... */
  readonly source: string;
  /** True for a number of our own: media short of room may leave its source out. */
  readonly computed?: boolean;
  readonly uncalibrated?: string;
  readonly worked?: WorkedText;
}

export interface Row {
  readonly label: string;
  readonly figure?: Figure;
  readonly text?: string;
  readonly note?: string;
}

export type StateShape = 'running' | 'due' | 'past' | 'torn' | 'empty';

type Content =
  | { readonly kind: 'figure'; readonly figure: Figure; readonly label: string }
  | { readonly kind: 'figures'; readonly figures: readonly { readonly label: string; readonly figure: Figure }[] }
  | { readonly kind: 'rows'; readonly rows: readonly Row[] }
  | { readonly kind: 'text'; readonly text: string; readonly soft?: boolean; readonly strong?: boolean }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly ticks?: boolean }
  | { readonly kind: 'caution'; readonly level: 'stop' | 'care' | 'note'; readonly text: string }
  | { readonly kind: 'drawing'; readonly drawing: Drawing };

/** A part of a section. `overleaf`: on a sheet with two sides it stands on the back, under the number of its step. */
export type Block = Content & { readonly overleaf?: boolean };

export interface Section {
  readonly id: string;
  /** Number of the ringed balloon; absent for notes. */
  readonly number?: number;
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** What a job found, free of any medium. `front` is for the doing, `back` for drawing and reasons. */
export interface Page {
  readonly language: string;
  readonly title: string;
  readonly subtitle: string;
  readonly state: { readonly shape: StateShape; readonly word: string };
  readonly time: { readonly label: string; readonly figure: Figure };
  readonly front: readonly Section[];
  readonly back: readonly Section[];
  /** Payload of the printed code: prefix, position, card revision, checksum. Never an address. */
  readonly code: string;
  /** What stands beside the code and on every sheet, for those who cannot scan. */
  readonly codeText?: string;
  /** How sheets are counted, with gaps `{sheet}` and `{sheets}`; without it, like `1 / 3`. */
  readonly sheetOf?: string;
  readonly footer: readonly string[];
  /** The job's `now`, as ISO text; the creation date of a PDF. */
  readonly now: string;
}
