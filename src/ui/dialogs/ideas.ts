/** What there is to try, use by use: a finished site and three steps in it, whose words are `ideas.<use>.1` to `.3`. */
import type { SampleName } from '../samples';

export const IDEAS = [
  { use: 'designer', sample: 'stop-line-two-lanes' },
  { use: 'estimator', sample: 'exit-lanes-that-beat' },
  { use: 'instructor', sample: 'bicycle-stop-line' },
  { use: 'technician', sample: 'check-after-four-winters' }
] as const satisfies readonly { readonly use: string; readonly sample: SampleName }[];

/** Without steps of their own; their names are `ideas.<sample>`. */
export const MORE_SAMPLES = [
  'car-park-counting-pair',
  'driveway-gate',
  'advance-loops',
  'calls-that-miscount',
  'loading-bay-on-steel',
  'two-ways-to-guard-a-gate'
] as const satisfies readonly SampleName[];

export const STEPS = [1, 2, 3] as const;
