/** Finished sites that come with the program. */
export const SAMPLES = [
  'advance-loops',
  'bicycle-stop-line',
  'calls-that-miscount',
  'car-park-counting-pair',
  'driveway-gate',
  'exit-lanes-that-beat',
  'loading-bay-on-steel',
  'stop-line-two-lanes'
] as const;

export type SampleName = (typeof SAMPLES)[number];
