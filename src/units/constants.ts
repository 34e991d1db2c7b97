/** One international foot in metres, exact by definition (1959 agreement). */
export const FOOT = 0.3048;

/** One inch in metres, exact by definition: a twelfth of a foot. */
export const INCH = 0.0254;
