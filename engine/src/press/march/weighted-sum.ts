/**
 * Sum of up to five arrays with weights, on top of a base if there is one.
 *
 * @param out - result, overwritten
 * @param base - array to add to, of the same length
 * @param weights - as many as arrays are to be added [1], 0 to 5
 * @param k - the arrays
 * @returns nothing
 * @source derived: one pass over memory for all arrays
 */
export function weightedSum(
  out: Float64Array,
  base: Float64Array | undefined,
  weights: readonly number[],
  k: readonly Float64Array[],
): void {
  const count = out.length;
  if (base === undefined) out.fill(0);
  else out.set(base);
  const [w0 = 0, w1 = 0, w2 = 0, w3 = 0, w4 = 0] = weights;
  const [k0, k1, k2, k3, k4] = k as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  if (weights.length === 1) {
    for (let i = 0; i < count; i += 1) out[i] = (out[i] as number) + w0 * (k0[i] as number);
  } else if (weights.length === 2) {
    for (let i = 0; i < count; i += 1) {
      out[i] = (out[i] as number) + w0 * (k0[i] as number) + w1 * (k1[i] as number);
    }
  } else if (weights.length === 3) {
    for (let i = 0; i < count; i += 1) {
      out[i] = (out[i] as number) + w0 * (k0[i] as number) + w1 * (k1[i] as number) + w2 * (k2[i] as number);
    }
  } else if (weights.length === 4) {
    for (let i = 0; i < count; i += 1) {
      const early = w0 * (k0[i] as number) + w1 * (k1[i] as number);
      out[i] = (out[i] as number) + early + w2 * (k2[i] as number) + w3 * (k3[i] as number);
    }
  } else if (weights.length === 5) {
    for (let i = 0; i < count; i += 1) {
      const early = w0 * (k0[i] as number) + w1 * (k1[i] as number);
      const late = w2 * (k2[i] as number) + w3 * (k3[i] as number) + w4 * (k4[i] as number);
      out[i] = (out[i] as number) + early + late;
    }
  }
}
