interface ScriptPolicy {
  createScriptURL(input: string): string;
}

interface PolicyFactory {
  createPolicy(name: string, rules: ScriptPolicy): ScriptPolicy;
}

/**
 * An address from which a worker is started, in the form that a browser with trusted types asks for. The policy makes no
 * other address, whatever it is given.
 *
 * @param name - of the policy, after the worker
 * @param address - of the worker, known when the app was built
 */
export function trustedAddress(name: string, address: string): string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return address;
  return trustedTypes.createPolicy(`loopwright-${name}`, { createScriptURL: () => address }).createScriptURL(address);
}
