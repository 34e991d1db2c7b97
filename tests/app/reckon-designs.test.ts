/** Designs reckoned by the worker for a file: once for a drawing, at a desk of their own. */
import { expect, test } from 'vitest';
import type { QuestionKind } from '#analysis/questions';
import { knownDesigns, reckonDesigns } from '#app/reckon-designs';
import { Unfit } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { demoSite } from '#plan/demo';
import { keepVariant } from '#plan/edits/index';
import type { Bench, Outcome } from '#ui/bench';

const wish = { designs: ['V1', null], pass: null };

function bench() {
  const shown = keepVariant(demoSite(), 'First');
  const open: ((outcome: Outcome<'compare-designs'>) => void)[] = [];
  const dropped: (string | undefined)[] = [];
  const ask = (kind: QuestionKind, _asked: unknown, _onShare: unknown, options: { desk?: string }) =>
    new Promise((resolve) => {
      expect([kind, options.desk]).toEqual(['compare-designs', 'files']);
      open.push(resolve);
    });
  const dropQuestion = (_: QuestionKind, desk?: string) => void dropped.push(desk);
  return { open, dropped, asking: { shown, ask: ask as Bench['ask'], dropQuestion } };
}

test('what was found of a drawing is not asked again, for the screen that prints it neither', async () => {
  const { open, asking } = bench();
  expect(knownDesigns(asking.shown, wish)).toBeNull();
  const first = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!({ kind: 'answer', answer: [] });
  const found = await first;
  expect(await reckonDesigns(asking, wish, asking.shown, unwatched())).toBe(found);
  expect(knownDesigns(asking.shown, wish)).toBe(found);
  expect(knownDesigns(asking.shown, { ...wish, designs: [null] })).toBeNull();
  expect(open).toHaveLength(1);
});

test('a drawing that changed, or a worker that failed, is said in a sentence', async () => {
  const { open, asking } = bench();
  const other = keepVariant(asking.shown, 'Second');
  await expect(reckonDesigns(asking, wish, other, unwatched())).rejects.toThrow(Unfit);
  const failing = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!({ kind: 'failed', reason: 'broken' });
  await expect(failing).rejects.toThrow(Unfit);
  const late = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[1]!({ kind: 'superseded' });
  await expect(late).rejects.toThrow(Unfit);
  expect(knownDesigns(asking.shown, wish)).toBeNull();
});

test('a job that is ended drops its question', async () => {
  const { open, dropped, asking } = bench();
  const control = new AbortController();
  const made = reckonDesigns(asking, wish, asking.shown, { signal: control.signal, onShare: () => {} });
  control.abort(new Error('enough'));
  expect(dropped).toEqual(['files']);
  open[0]!({ kind: 'superseded' });
  await expect(made).rejects.toThrow('enough');
});
