/** The finished sites that come with the program, each loaded when somebody asks for it. */
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import type { SampleName } from '#ui/samples';

type Load = () => Promise<{ readonly default: string }>;

const LOADS: Readonly<Record<SampleName, Load>> = {
  'advance-loops': () => import('../../samples/advance-loops.kerfline.json?raw'),
  'bicycle-stop-line': () => import('../../samples/bicycle-stop-line.kerfline.json?raw'),
  'calls-that-miscount': () => import('../../samples/calls-that-miscount.kerfline.json?raw'),
  'car-park-counting-pair': () => import('../../samples/car-park-counting-pair.kerfline.json?raw'),
  'check-after-four-winters': () => import('../../samples/check-after-four-winters.kerfline.json?raw'),
  'driveway-gate': () => import('../../samples/driveway-gate.kerfline.json?raw'),
  'exit-lanes-that-beat': () => import('../../samples/exit-lanes-that-beat.kerfline.json?raw'),
  'loading-bay-on-steel': () => import('../../samples/loading-bay-on-steel.kerfline.json?raw'),
  'stop-line-two-lanes': () => import('../../samples/stop-line-two-lanes.kerfline.json?raw'),
  'two-ways-to-guard-a-gate': () => import('../../samples/two-ways-to-guard-a-gate.kerfline.json?raw')
};

/** A finished site; rejects when it cannot be loaded. */
export async function sampleSite(name: SampleName): Promise<Site> {
  const reading = readSite((await LOADS[name]()).default);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join(' '));
  return reading.site;
}
