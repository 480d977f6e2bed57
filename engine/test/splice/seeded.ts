/** Settings of the property tests: the same runs every time; more of them in a long run. */
export const seeded = { seed: 42, numRuns: Number(process.env['LW_RUNS'] ?? 2000) };
