/** Magnetic constant, H/m. CODATA 2018 differs from 4π·10⁻⁷ by 5·10⁻¹⁰, far below anything here. */
export const MU0 = 4e-7 * Math.PI;
/** Electric constant, F/m (CODATA 2018). */
export const EPSILON0 = 8.8541878128e-12;
