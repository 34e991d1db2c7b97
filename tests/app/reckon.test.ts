/** Readings reckoned by the worker: once for a drawing, however many look. */
import { expect, test } from 'vitest';
import type { QuestionKind } from '#analysis/questions';
import { reckonFor, reckonShown } from '#app/reckon';
import { Unfit } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { demoSite } from '#plan/demo';
import { updateRecord } from '#plan/edits/record';
import type { Site } from '#plan/schema';
import type { Bench, Outcome } from '#ui/bench';

/** A worker that answers when the test says so. */
function bench(site: Site) {
  const open: ((outcome: Outcome<'check-readings'>) => void)[] = [];
  const ask = (kind: QuestionKind) =>
    new Promise((resolve) => {
      expect(kind).toBe('check-readings');
      open.push(resolve);
    });
  return { open, asking: { shown: site, ask: ask as Bench['ask'] } };
}

const answer: Outcome<'check-readings'> = { kind: 'answer', answer: [] };
/** A drawing that no test before has asked about. */
const fresh = (): Site => ({ ...demoSite(), readings: [{ resistanceDc_ohm: 1 }] });

test('a screen and a file share one question', async () => {
  const { open, asking } = bench(fresh());
  const both = [
    reckonShown(asking, 'check-readings'),
    reckonFor(asking, 'check-readings', asking.shown, unwatched())
  ];
  expect(open).toHaveLength(1);
  open[0]!(answer);
  expect(await Promise.all(both)).toEqual([[], []]);
});

test('who fills in names asks nothing anew; a reading does', async () => {
  const { open, asking } = bench(fresh());
  const first = reckonShown(asking, 'check-readings');
  open[0]!(answer);
  await first;
  asking.shown = updateRecord(asking.shown, { testedBy: 'R. Marten', paper: 'A3' });
  await reckonShown(asking, 'check-readings');
  expect(open).toHaveLength(1);
  asking.shown = { ...asking.shown, fieldCheck: { ...asking.shown.fieldCheck, insulationLimit_ohm: 1e8 } };
  void reckonShown(asking, 'check-readings');
  expect(open).toHaveLength(2);
  asking.shown = { ...asking.shown, readings: [] };
  void reckonShown(asking, 'check-readings');
  expect(open).toHaveLength(3);
});

test('a question that another one ended is asked again for a file', async () => {
  const { open, asking } = bench(fresh());
  const made = reckonFor(asking, 'check-readings', asking.shown, unwatched());
  open[0]!({ kind: 'superseded' });
  await expect.poll(() => open.length).toBe(2);
  open[1]!(answer);
  expect(await made).toEqual([]);
});

test('a failure is a sentence, and the next one asks again', async () => {
  const { open, asking } = bench(fresh());
  const made = reckonFor(asking, 'check-readings', asking.shown, unwatched());
  open[0]!({ kind: 'failed', reason: 'out of memory' });
  await expect(made).rejects.toThrow(Unfit);
  void reckonShown(asking, 'check-readings');
  expect(open).toHaveLength(2);
});

test('a file ends at once when nobody wants it, and is not made of another drawing', async () => {
  const { asking } = bench(fresh());
  const ending = new AbortController();
  const made = reckonFor(asking, 'check-readings', asking.shown, {
    signal: ending.signal,
    onShare: () => {}
  });
  ending.abort();
  await expect(made).rejects.toThrow(/abort/i);
  await expect(reckonFor(asking, 'check-readings', fresh(), unwatched())).rejects.toThrow(Unfit);
});
