/**
 * Student's t for a two-sided 95 % interval by degrees of freedom, to three decimals as in every table
 * (Abramowitz & Stegun, Table 26.10).
 */
const table = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
  2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
];

/** t at 0.975; beyond 30 degrees of freedom by the expansion in 1/ν (Abramowitz & Stegun, 26.7.5). */
export function studentT(freedom: number): number {
  const listed = table[Math.round(freedom) - 1];
  if (listed !== undefined) return listed;
  const z = 1.959964;
  return z + (z ** 3 + z) / (4 * freedom) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * freedom ** 2);
}
