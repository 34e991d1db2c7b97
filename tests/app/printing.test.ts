/** What the browser prints by itself waits for nothing: it is reckoned before, and a sheet with a gap is none. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { reckonAhead, sheetNow } from '#app/printing';
import { demoSite } from '#plan/demo';
import { keepVariant, updateSite } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import type { Bench, Outcome } from '#ui/bench';
import { openEditor } from '../editor/hand';

const assessment = createAssessor().assess(demoSite());
const comparing = (): Site => ({ ...keepVariant(demoSite(), 'First'), sheet: { comparesDesigns: true } });
/** Not kept as it is now, so that there are two designs. */
const changed = (): Site => updateSite(comparing(), { temperature_C: 31 });

function bench(site: Site) {
  const { editor } = openEditor(site);
  const open: ((outcome: Outcome<'compare-designs'>) => void)[] = [];
  const ask = () => new Promise((resolve) => void open.push(resolve));
  const given = {
    editor,
    assessment: { ...assessment, pending: false, isFollowed: false },
    isStale: false,
    get shown() {
      return editor.state.draft ?? editor.state.site;
    },
    fileName: null,
    calculation: { kind: 'idle' } as Bench['calculation'],
    ask: ask as Bench['ask'],
    dropQuestion: () => {}
  };
  return { open, given, editor };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const rest = () => vi.advanceTimersByTimeAsync(4_000);

test('designs that the sheet compares are reckoned once the hand rests, and then the sheet is whole', async () => {
  const { open, given } = bench(changed());
  expect(sheetNow(given)).toBeNull();
  reckonAhead(given);
  await vi.advanceTimersByTimeAsync(500);
  expect(open).toHaveLength(0);
  await rest();
  expect(open).toHaveLength(1);
  expect(sheetNow(given)).toBeNull();
  const { circuits, beats, quantities, findings } = assessment;
  const answer = ['V1', null].map((design) => ({
    ...{ design, circuits, beats, quantities, findings },
    pass: null
  }));
  open[0]!({ kind: 'answer', answer });
  await rest();
  const sheet = sheetNow(given);
  expect(sheet).toMatchObject({ kind: 'pages' });
  expect(JSON.stringify(sheet)).toContain('Designs compared');
});

test('of a row of edits only the last drawing is reckoned, and none for a sheet that compares nothing', async () => {
  const { open, given, editor } = bench(changed());
  reckonAhead(given);
  for (const temperature_C of [12, 13, 14]) {
    editor.commit({ label: 'Warmer', site: updateSite(editor.state.site, { temperature_C }), selection: [] });
    await vi.advanceTimersByTimeAsync(300);
  }
  await rest();
  expect(open).toHaveLength(1);
  editor.commit({ label: 'Not', site: { ...editor.state.site, sheet: {} }, selection: [] });
  await rest();
  expect(open).toHaveLength(1);
  expect(sheetNow(given)).toMatchObject({ kind: 'pages' });
});

test('figures that are on their way are waited for first', async () => {
  const { open, given } = bench(changed());
  given.assessment = { ...given.assessment, isFollowed: true };
  reckonAhead(given);
  await rest();
  expect(open).toHaveLength(0);
  given.assessment = { ...given.assessment, isFollowed: false };
  await rest();
  expect(open).toHaveLength(1);
});
