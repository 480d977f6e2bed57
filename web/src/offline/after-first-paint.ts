const longestWait_ms = 3000;

/** Does what nobody waits for once the page stands and the browser has time. */
export function afterFirstPaint(work: () => void): void {
  // Only newer Safari can tell when it has time.
  const { requestIdleCallback } = window as { readonly requestIdleCallback?: Window['requestIdleCallback'] };
  const later = () =>
    requestIdleCallback === undefined ? setTimeout(work, 300) : requestIdleCallback(work, { timeout: longestWait_ms });
  if (document.readyState === 'complete') later();
  else addEventListener('load', later, { once: true });
}
