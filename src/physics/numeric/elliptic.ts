/**
 * Complete elliptic integrals of the first and second kind by the arithmetic–geometric mean
 * (Abramowitz & Stegun 17.6). The argument is the parameter m = k², 0 ≤ m < 1; accurate to a few 1e-16.
 */
export const completeElliptic = (m: number): { readonly K: number; readonly E: number } => {
  let a = 1;
  let g = Math.sqrt(1 - m);
  let sum = m / 2;
  let weight = 0.5;
  while (Math.abs(a - g) > 1e-15 * a) {
    const difference = (a - g) / 2;
    const mean = (a + g) / 2;
    g = Math.sqrt(a * g);
    a = mean;
    weight *= 2;
    sum += weight * difference * difference;
  }
  const K = Math.PI / (2 * a);
  return { K, E: K * (1 - sum) };
};
