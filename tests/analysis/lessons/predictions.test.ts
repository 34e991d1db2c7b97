/** A prediction holds from its least value on, and below its other end: between two of them no value is in both or in none. */
import { expect, it } from 'vitest';
import { outcomeOf } from '#analysis/lessons/outcome';
import { outcomeOfLesson, shelf } from './shelf';

it('a value on the border of two predictions is in the upper one alone', () => {
  const { lesson } = shelf.find((each) => each.lesson.id === 'turns')!;
  const { picture, of } = outcomeOfLesson('turns');
  const border = of('times');
  const [any] = lesson.predictions;
  const predictions = [
    { ...any!, when: { measure: 'times', below: border } },
    { ...any!, when: { measure: 'times', atLeast: border } }
  ];
  expect(outcomeOf({ ...lesson, predictions }, picture).right).toEqual([false, true]);
});
