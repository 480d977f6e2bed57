interface ScriptPolicy {
  createScriptURL(input: string): string;
}

interface PolicyFactory {
  createPolicy(name: string, rules: ScriptPolicy): ScriptPolicy;
}

const address = '/service-worker.js';

/**
 * The one address from which this page starts a worker, in the form that a browser with trusted types asks for. The policy
 * makes no other address, whatever it is given.
 */
export function workerAddress(): string {
  const { trustedTypes } = window as { readonly trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return address;
  return trustedTypes.createPolicy('loopwright-worker', { createScriptURL: () => address }).createScriptURL(address);
}
