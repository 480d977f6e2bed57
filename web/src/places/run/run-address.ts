/** Address of the list of press runs. */
export const runsAddress = '/run';

/** Address at which a run for a position is begun. */
export function newRunAddress(position: string): string {
  return `${runsAddress}/new/${encodeURIComponent(position)}`;
}

/** Address of a run. */
export function runAddress(run: string): string {
  return `${runsAddress}/${encodeURIComponent(run)}`;
}

export function isRunAddress(path: string): boolean {
  return path === runsAddress || path.startsWith(`${runsAddress}/`);
}

/** What an address of this place asks for: the list, a new run, or one that is there. */
export type RunAsked =
  | { readonly what: 'list' }
  | { readonly what: 'new'; readonly position: string }
  | { readonly what: 'run'; readonly run: string };

export function runAsked(path: string): RunAsked {
  if (!isRunAddress(path)) return { what: 'list' };
  const [first, second] = path.slice(runsAddress.length).split('/').filter(Boolean).map(decoded);
  if (first === undefined) return { what: 'list' };
  if (first === 'new') return second === undefined ? { what: 'list' } : { what: 'new', position: second };
  return { what: 'run', run: first };
}

// A stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
