/** For the `ref` of a heading that comes later than its address: whoever waited for it stands at it. */
export function arrive(heading: HTMLElement | null): void {
  heading?.focus({ preventScroll: true });
}
