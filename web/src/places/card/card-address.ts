/** Address of a position's card inside the app. */
export function cardAddress(position: string): string {
  return `/card/${encodeURIComponent(position)}`;
}
