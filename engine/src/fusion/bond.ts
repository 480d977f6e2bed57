/**
 * Bond of two faces from their healing: share of the strength of solid cover, without a cap so that the margin shows.
 * D = Z^(1/4).
 *
 * @param healing - integral Z of dt/t_w over the history [1], >= 0
 * @returns bond [1]; above 1 the face is as strong as it gets
 * @validity faces that touch; a fourth root of time is known for entangled melts, for the cover it is an analogue
 * @source Wool & O'Connor, J. Appl. Phys. 52 (1981) 5953; Yang & Pitchumani, Macromolecules 35(8) 2002 (both from memory)
 * @verified FUSE-10 bond after 10 s at 160 degC
 */
export function bondOfHealing(healing: number): number {
  return healing ** 0.25;
}
