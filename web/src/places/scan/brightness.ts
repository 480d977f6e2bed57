const everyNth = 16;

/**
 * How bright a picture is, by the luma of every sixteenth dot (ITU-R BT.601).
 *
 * @param dots - red, green, blue and opacity of each dot, 0 to 255
 * @returns 0 for black to 1 for white
 */
export function brightness(dots: ArrayLike<number>): number {
  let sum = 0;
  let count = 0;
  for (let at = 0; at + 2 < dots.length; at += 4 * everyNth) {
    sum += 0.299 * (dots[at] ?? 0) + 0.587 * (dots[at + 1] ?? 0) + 0.114 * (dots[at + 2] ?? 0);
    count += 1;
  }
  return count === 0 ? 0 : sum / count / 255;
}
