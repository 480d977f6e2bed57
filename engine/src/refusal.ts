/** What a refusal may carry: enough for a sentence that names value, unit and allowed range. */
export type RefusalData = Readonly<Record<string, string | number | boolean | null>>;

/**
 * Input that cannot be computed with. `code` is stable and public; `path` reads like
 * `pulleys[3].x_m`; the sentence for a person is made elsewhere, once per language.
 */
export class Refusal extends Error {
  readonly code: string;
  readonly path: string;
  readonly data: RefusalData;

  constructor(code: string, path: string, data: RefusalData = {}) {
    super(`${code} at ${path || 'input'}`);
    this.name = 'Refusal';
    this.code = code;
    this.path = path;
    this.data = data;
  }
}

/** Something a person should know beside a result that was computed all the same. */
export interface Warning {
  readonly code: string;
  readonly path?: string;
  readonly data: RefusalData;
}
