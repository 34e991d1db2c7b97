/** Up to two figures: what a person would set, and still enough. */
export const roundedUp = (value: number): number => {
  const fineness = 10 ** (Math.floor(Math.log10(value)) - 1);
  // a hair more, so that a value just at the limit does not fall on its wrong side
  return Number((Math.ceil((value / fineness) * (1 + 1e-9)) * fineness).toPrecision(2));
};
