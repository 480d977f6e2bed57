const ownNames = new Set(['localhost', '127.0.0.1', '[::1]']);

/**
 * True for a Host header that names this computer. A page elsewhere may point its own name at this address;
 * its requests carry that name and are refused.
 * @param host - the Host header, with or without port
 */
export function isOwnHost(host: string | undefined): boolean {
  return host !== undefined && ownNames.has(host.toLowerCase().replace(/:\d{1,5}$/, ''));
}
