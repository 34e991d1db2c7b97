/** Operating band of units: 20–100 kHz usual (common practice). */
export const USUAL_BAND = [20_000, 100_000] as const;

export const isUsualFrequency = (frequency: number): boolean =>
  frequency >= USUAL_BAND[0] && frequency <= USUAL_BAND[1];
