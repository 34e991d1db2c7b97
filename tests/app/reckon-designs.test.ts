/** Designs reckoned by the worker for a file: once for a drawing, at a desk of their own. */
import { expect, test } from 'vitest';
import { speakLanguage } from '#i18n/load';
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
  const open: {
    readonly settle: (outcome: Outcome<'compare-designs'>) => void;
    readonly onShare: (share: number) => void;
  }[] = [];
  const dropped: (string | undefined)[] = [];
  const ask = (
    kind: QuestionKind,
    _asked: unknown,
    onShare: (share: number) => void,
    options: { desk?: string }
  ) =>
    new Promise((resolve) => {
      expect(kind).toBe('compare-designs');
      expect(options.desk).toMatch(/^files /);
      open.push({ settle: resolve, onShare });
    });
  const dropQuestion = (_: QuestionKind, desk?: string) => void dropped.push(desk);
  return { open, dropped, asking: { shown, ask: ask as Bench['ask'], dropQuestion } };
}

test('what was found of a drawing is not asked again, for the screen that prints it neither', async () => {
  const { open, asking } = bench();
  expect(knownDesigns(asking.shown, wish)).toBeNull();
  const first = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!.settle({ kind: 'answer', answer: [] });
  const found = await first;
  expect(await reckonDesigns(asking, wish, asking.shown, unwatched())).toBe(found);
  expect(knownDesigns(asking.shown, wish)).toBe(found);
  expect(knownDesigns(asking.shown, { ...wish, designs: [null] })).toBeNull();
  expect(open).toHaveLength(1);
});

test('findings in one language are not those in another', async () => {
  const { open, asking } = bench();
  const english = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!.settle({ kind: 'answer', answer: [] });
  await english;
  try {
    await speakLanguage('de', ['page']);
    expect(knownDesigns(asking.shown, wish)).toBeNull();
    const german = reckonDesigns(asking, wish, asking.shown, unwatched());
    expect(open).toHaveLength(2);
    open[1]!.settle({ kind: 'answer', answer: [] });
    expect(await german).not.toBe(await english);
  } finally {
    await speakLanguage('en', ['page', 'views']);
  }
  expect(knownDesigns(asking.shown, wish)).toBe(await english);
});

test('a drawing that changed, or a worker that failed, is said in a sentence', async () => {
  const { open, asking } = bench();
  const other = keepVariant(asking.shown, 'Second');
  await expect(reckonDesigns(asking, wish, other, unwatched())).rejects.toThrow(Unfit);
  const failing = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!.settle({ kind: 'failed', reason: 'broken' });
  await expect(failing).rejects.toThrow(Unfit);
  const late = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[1]!.settle({ kind: 'superseded' });
  await expect(late).rejects.toThrow(Unfit);
  expect(knownDesigns(asking.shown, wish)).toBeNull();
});

test('a job that is ended drops its question', async () => {
  const { open, dropped, asking } = bench();
  const control = new AbortController();
  const made = reckonDesigns(asking, wish, asking.shown, { signal: control.signal, onShare: () => {} });
  control.abort(new Error('enough'));
  expect(dropped).toEqual([expect.stringMatching(/^files /)]);
  open[0]!.settle({ kind: 'superseded' });
  await expect(made).rejects.toThrow('enough');
});

test('two who want the same wait for one answer, and who leaves does not end it for the other', async () => {
  const { open, dropped, asking } = bench();
  const [one, other] = [new AbortController(), new AbortController()];
  const shares: number[] = [];
  const leaving = reckonDesigns(asking, wish, asking.shown, { signal: one.signal, onShare: () => {} });
  const staying = reckonDesigns(asking, wish, asking.shown, {
    signal: other.signal,
    onShare: (share) => void shares.push(share)
  });
  expect(open).toHaveLength(1);
  open[0]!.onShare(0.5);
  one.abort(new Error('enough'));
  await expect(leaving).rejects.toThrow('enough');
  expect(dropped).toEqual([]);
  expect(shares).toEqual([0.5]);
  open[0]!.settle({ kind: 'answer', answer: [] });
  expect(await staying).toEqual([]);
});

test('what nobody waits for any more is asked anew by the next', async () => {
  const { open, dropped, asking } = bench();
  const control = new AbortController();
  const made = reckonDesigns(asking, wish, asking.shown, { signal: control.signal, onShare: () => {} });
  control.abort(new Error('enough'));
  await expect(made).rejects.toThrow('enough');
  expect(dropped).toHaveLength(1);
  const next = reckonDesigns(asking, wish, asking.shown, unwatched());
  open[0]!.settle({ kind: 'superseded' });
  open[1]!.settle({ kind: 'answer', answer: [] });
  expect(await next).toEqual([]);
});
