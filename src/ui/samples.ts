/** Finished sites that come with the program. */
export const SAMPLES = [
  'advance-loops',
  'bicycle-stop-line',
  'calls-that-miscount',
  'car-park-counting-pair',
  'check-after-four-winters',
  'driveway-gate',
  'exit-lanes-that-beat',
  'loading-bay-on-steel',
  'stop-line-two-lanes',
  'two-ways-to-guard-a-gate'
] as const;

export type SampleName = (typeof SAMPLES)[number];
