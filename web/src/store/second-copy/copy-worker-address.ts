import address from './copy-worker.ts?worker&url';

interface PolicyFactory {
  createPolicy(
    name: string,
    rules: { createScriptURL(input: string): string },
  ): { createScriptURL(input: string): string };
}

/** Where the worker lies, in the form that a browser with trusted types asks for; no other address can be made by it. */
export function copyWorkerAddress(): string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return address;
  return trustedTypes.createPolicy('loopwright-copy', { createScriptURL: () => address }).createScriptURL(address);
}
