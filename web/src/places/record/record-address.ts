/** Where the record of a press run stands. */
const recordsAddress = '/record';

/** Address of the record of a run. */
export function recordAddress(run: string): string {
  return `${recordsAddress}/${encodeURIComponent(run)}`;
}

/** The run whose record an address asks for; undefined for an address of another place. */
export function recordAsked(path: string): string | undefined {
  if (!path.startsWith(`${recordsAddress}/`)) return undefined;
  const [run] = path.slice(recordsAddress.length).split('/').filter(Boolean);
  return run === undefined ? undefined : decoded(run);
}

// A stranger's address may not be decodable at all.
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
