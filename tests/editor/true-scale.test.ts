import { expect, test } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { planToScreen, screenToPlan } from '#editor/viewport';
import { demoSite } from '#plan/demo';

test('at true scale a metre is ten millimetres of a screen with 96 dots to the inch, about the same middle', () => {
  const editor = createEditor(demoSite());
  editor.setViewport({ centre: [3, -2], scale: 71, width: 900, height: 600 });
  const middle = screenToPlan(editor.state.viewport, [450, 300]);
  expect(editor.run('true-scale')).toBe(true);
  const view = editor.state.viewport;
  const pixels = planToScreen(view, [1, 0])[0] - planToScreen(view, [0, 0])[0];
  expect((pixels / 96) * 25.4).toBeCloseTo(10, 9);
  expect(screenToPlan(view, [450, 300])).toEqual(middle);
});
