/** What only some drawings ask for may come later: until then the assessment says that more is to come. */
import { expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createAssessorWith } from '#analysis/assessor';
import { laterMeans, type LaterMeans } from '#analysis/later';
import { createMeans } from '#analysis/means';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from './support/sites';

const on = (name: string) => ({
  channel: channel(name, 1, { frequency_Hz: null, frequencySetting: 2, tripThreshold: 1e-4 }),
  detect: ['car']
});
/** Two circuits on one setting, side by side: they beat. */
const beating = siteOf({
  loops: [loop('L1', square(0, 0)), loop('L2', square(3, 0))],
  circuits: [circuit('C1', ['L1'], on('U1')), circuit('C2', ['L2'], on('U2'))],
  units: [unit('U1'), unit('U2')],
  vehicles: QUICK_VEHICLES
});

it('a drawing whose circuits beat waits for remedies, and then has those of an assessor that had all at once', () => {
  const means = createMeans();
  let later: LaterMeans | null = null;
  const assessor = createAssessorWith(means, () => later);
  while (assessor.prepareNext(beating));
  expect(assessor.isWaiting(beating)).toBe(false);
  while (assessor.followNext(beating));
  expect(assessor.isWaiting(beating)).toBe(true);
  const before = assessor.assess(beating, 'prepared');
  expect([before.isFollowed, before.beats[0]!.remedies]).toEqual([true, null]);

  later = laterMeans(means);
  expect(assessor.isWaiting(beating)).toBe(false);
  while (assessor.followNext(beating));
  const after = assessor.assess(beating, 'prepared');
  expect(after.isFollowed).toBe(false);
  expect(after.beats).toEqual(createAssessor().assess(beating, 'complete').beats);
  expect(after.beats[0]!.remedies).not.toHaveLength(0);
});
