/** What the worker that makes a PDF says: how far it is, then the file, or that there will be none. */
export type PrintAnswer =
  | { readonly is: 'share'; readonly share: number }
  | { readonly is: 'made'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly is: 'failed' };
