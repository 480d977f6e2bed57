/**
 * Coefficients of a Rosenbrock method in the form without matrix products, for y' = f(y):
 * (1/(h*gamma) - J) k_s = f(y + sum_j a[s][j]*k_j) + sum_j c[s][j]*k_j/h.
 * The last stage adds to the one before: y_6 = y_5 + k_5, y_new = y_6 + k_6; k_6 estimates the error.
 */
export interface Rosenbrock {
  readonly gamma: number;
  /** One row a stage, `rowLength` wide. */
  readonly a: Float64Array;
  readonly c: Float64Array;
  /** Where in the step each stage looks at the time, and its weight of df/dt: both only for sources that change. */
  readonly time: Float64Array;
  readonly timeSlope: Float64Array;
  /** Third-order interpolation inside the step. */
  readonly d2: Float64Array;
  readonly d3: Float64Array;
}

/** Entries of a row of `a` and `c`. */
export const rowLength = 5;
export const lastStage = 5;

/**
 * RODASP, fourth order with a third-order estimate, six stages, L-stable, stiffly accurate. It meets the further
 * conditions under which a conduction problem with boundaries keeps the full order.
 * Steinebach, Order-reduction of ROW-methods for DAEs and method of lines applications, TH Darmstadt 1995; Hairer &
 * Wanner, Solving Ordinary Differential Equations II, IV.7 and VI.4 (coefficients from memory; their order conditions
 * and stability function are checked by the tests).
 */
export const rodasp: Rosenbrock = {
  gamma: 0.25,
  a: rows([
    [],
    [3],
    [1.831036793486759, 0.4955183967433795],
    [2.304376582692669, -0.05249275245743001, -1.176798761832782],
    [-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401],
    [-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401, 1],
  ]),
  c: rows([
    [],
    [-12],
    [-8.791795173947035, -2.207865586973518],
    [10.81793056857153, 6.780270611428266, 19.5348594464241],
    [34.19095006749676, 15.49671153725963, 54.7476087596413, 14.16005392148534],
    [34.62605830930532, 15.30084976114473, 56.99955578662667, 18.40807009793095, -5.714285714285717],
  ]),
  time: Float64Array.of(0, 0.75, 0.21, 0.63, 1, 1),
  timeSlope: Float64Array.of(0.25, -0.5, -0.023504, -0.0362, 0, 0),
  d2: Float64Array.of(25.09876703708589, 11.62013104361867, 28.49148307714626, -5.664021568594133, 0),
  d3: Float64Array.of(1.638054557396973, -0.7373619806678748, 8.47791821923899, 15.9925314877952, -1.882352941176471),
};

function rows(of: readonly (readonly number[])[]): Float64Array {
  const flat = new Float64Array(of.length * rowLength);
  of.forEach((row, index) => {
    flat.set(row, index * rowLength);
  });
  return flat;
}
