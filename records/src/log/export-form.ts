/** First line of an export: whose log it is. */
export interface ExportHeader {
  readonly v: 1;
  readonly kind: 'export';
  readonly plant: string;
  /** Public keys in hex, one per device; the exporting device's comes first. */
  readonly keys: readonly string[];
}

/** Last line of an export: what the exporting device vouches for. */
export interface ExportTrailer {
  readonly v: 1;
  /** SHA-256 of the first line. */
  readonly header: string;
  /** Latest signed checkpoint of each device, in the order of the keys. */
  readonly checkpoints: readonly unknown[];
  readonly sig: string;
}

/** Fields of both lines in canonical order. */
export const headerFields = ['keys', 'kind', 'plant', 'v'];
export const trailerFields = ['checkpoints', 'header', 'sig', 'v'];
