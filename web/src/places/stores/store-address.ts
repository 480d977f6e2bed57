import type { StoreKind } from '../../form/thing-layout.ts';

// A tilde begins no short name, so no thing can stand in the way of these.
const newThing = '~new';
const manyThings = '~many';
const asTable = '~table';
const asOneFile = '~everything';
const ofPlant = '~plant';
const ofWitnesses = '~witnesses';

/** What an address below `/stores` shows. */
export type StoreView =
  | { readonly view: 'kinds' | 'everything' | 'plant' | 'witnesses' }
  | { readonly view: 'list' | 'new' | 'table'; readonly kind: string }
  | { readonly view: 'thing' | 'edit' | 'geometry' | 'many'; readonly kind: string; readonly id: string };

export const storesAddress = '/stores';

/** Address of the page on which everything goes out and comes in as one file. */
export const everythingAddress = `${storesAddress}/${asOneFile}`;

/** Address of the page on which the name of the plant is changed. */
export const plantNameAddress = `${storesAddress}/${ofPlant}`;

/** Address of the page on which devices bear witness to each other's records. */
export const witnessesAddress = `${storesAddress}/${ofWitnesses}`;

/** Address of the list of one kind. */
export function listAddress(kind: StoreKind): string {
  return `${storesAddress}/${kind}`;
}

/** Address of the form for a new thing. */
export function newAddress(kind: StoreKind): string {
  return `${listAddress(kind)}/${newThing}`;
}

/** Address of the page on which things of one kind come in and go out as a table. */
export function tableAddress(kind: StoreKind): string {
  return `${listAddress(kind)}/${asTable}`;
}

/** Address of the form for many positions of a line at once. */
export function manyAddress(line: string): string {
  return `${listAddress('positions')}/${manyThings}/${encodeURIComponent(line)}`;
}

export function thingAddress(kind: StoreKind, id: string): string {
  return `${listAddress(kind)}/${encodeURIComponent(id)}`;
}

export function editAddress(kind: StoreKind, id: string): string {
  return `${thingAddress(kind, id)}/edit`;
}

/** Address of the editor of how the belt of a line runs. */
export function geometryAddress(line: string): string {
  return `${thingAddress('lines', line)}/geometry`;
}

/** Reads what stands behind `/stores` in an address. */
export function storeView(path: string): StoreView {
  const [kind = '', id = '', action = ''] = path.split('/').filter(Boolean).map(decoded);
  if (kind === '') return { view: 'kinds' };
  if (kind === asOneFile) return { view: 'everything' };
  if (kind === ofPlant) return { view: 'plant' };
  if (kind === ofWitnesses) return { view: 'witnesses' };
  if (id === '') return { view: 'list', kind };
  if (id === asTable) return { view: 'table', kind };
  if (id === newThing) return { view: 'new', kind };
  if (id === manyThings) return { view: 'many', kind, id: action };
  if (kind === 'lines' && action === 'geometry') return { view: 'geometry', kind, id };
  return { view: action === 'edit' ? 'edit' : 'thing', kind, id };
}

// A stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
