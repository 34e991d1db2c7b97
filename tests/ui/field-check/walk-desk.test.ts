import { expect, test } from 'vitest';
import type { WalkStep } from '#analysis/walk-through/results';
import { answersBefore, waysFrom } from '#ui/field-check/walk-through/ways';

const step = (id: string, given: string | null): WalkStep => ({
  id,
  given,
  question: { key: 'x', values: {} },
  facts: [],
  hazards: [],
  answers: [],
  measure: null,
  ruledOut: []
});

test('what is stored is read as far as it is a way', () => {
  const good = { complaint: 'no power', answers: ['sign:dark'] };
  expect(
    waysFrom({
      C1: good,
      C2: { complaint: 'loud', answers: [] },
      C3: { complaint: 'no power', answers: [1] },
      C4: 3
    })
  ).toEqual({ C1: good });
  expect(waysFrom(null)).toEqual({});
  expect(waysFrom('x')).toEqual({});
});

test('changing an answer forgets it and what came after it', () => {
  const steps = [step('a', 'a:1'), step('b', 'b:2'), step('c', null)];
  expect(answersBefore(steps, 'b')).toEqual(['a:1']);
  expect(answersBefore(steps, 'c')).toEqual(['a:1', 'b:2']);
});
