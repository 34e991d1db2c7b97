import { expect, it } from 'vitest';
import { emptySite } from '#plan/read';
import type { Mark } from '#plan/schema';
import { markOptions } from '#ui/wiring/marks';

const box = (id: string, text?: string): Mark => ({
  id,
  kind: 'pull-box',
  points: [[0, 0]],
  ...(text === undefined ? {} : { text })
});
const names = (...marks: Mark[]) =>
  markOptions({ ...emptySite(), marks }, 'pull-box').map(({ label }) => label);

it('a box is called by its text, else by its kind, counted only where there are several', () => {
  expect(names(box('m4'))).toEqual(['Pull box']);
  expect(names(box('m4'), box('m7', 'Verge'), box('m9', ' '))).toEqual(['Pull box 1', 'Verge', 'Pull box 2']);
});
