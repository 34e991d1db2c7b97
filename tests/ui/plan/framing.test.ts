import { expect, test } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { demoSite } from '#plan/demo';
import { frameFirst } from '#ui/plan/framing';

test('a page that is drawn anew for another language keeps the view that somebody chose', () => {
  const editor = createEditor(demoSite());
  const before = editor.state.viewport;
  frameFirst(editor);
  expect(editor.state.viewport).not.toBe(before);
  editor.zoom(3, 100, 100);
  const { viewport } = editor.state;
  frameFirst(editor);
  expect(editor.state.viewport).toBe(viewport);
});
