import { describe, expect, it } from 'vitest';
import { definitionOf } from '#plan/shapes/index';
import type { Editor } from '#editor/types';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const centres = ({ state }: Editor) =>
  state.site.loops.map(({ shape }) =>
    definitionOf(shape)
      .centre(shape)
      .map((value) => Math.round(value * 1e6) / 1e6)
  );

const withOneCopied = () => {
  const opened = openEditor(siteWith({ shapes: [square(0, 0)] }));
  opened.editor.select([{ kind: 'loop', id: 'L1' }]);
  opened.editor.run('copy');
  return opened;
};

describe('copies that are pasted', () => {
  it('never lie exactly on the original, though the pointer is still over its middle', () => {
    const { editor, hand } = withOneCopied();
    hand.hover([0.01, -0.01]);
    editor.run('paste');
    const [from, to] = centres(editor);
    expect(Math.hypot(to![0]! - from![0]!, to![1]! - from![1]!)).toBeGreaterThan(1);
  });

  it('never lie exactly on each other, though the pointer rests', () => {
    const { editor, hand } = withOneCopied();
    hand.hover([3, 4]);
    for (let times = 0; times < 4; times++) editor.run('paste');
    const texts = centres(editor).map((centre) => centre.join(' '));
    expect(texts[1]).toBe('3 4');
    expect(new Set(texts).size).toBe(5);
  });

  it('come exactly to the pointer where nothing of their kind lies', () => {
    const { editor, hand } = withOneCopied();
    hand.hover([0.5, 0]);
    editor.run('paste');
    expect(centres(editor)[1]).toEqual([0.5, 0]);
  });

  it('lie exactly on the original in place, where somebody wants just that', () => {
    const { editor, hand } = withOneCopied();
    hand.hover([3, 4]);
    editor.run('paste-in-place');
    expect(centres(editor)).toEqual([[0, 0], [0, 0]]); // prettier-ignore
  });
});

describe('a site that another tab takes over', () => {
  it('drops the gesture in hand, which does not go on when the site comes back', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    const { site } = editor.state;
    editor.setTool('rectangle');
    hand.hold([4, 4], [5, 5]);
    editor.setReadOnly(true);
    hand.send('up', [5, 5]);
    editor.setReadOnly(false);
    hand.hover([7, 7]);
    expect(editor.state.busy).toBe(false);
    expect(editor.state.draft).toBeNull();
    hand.send('up', [7, 7]);
    expect(editor.state.site).toBe(site);
  });
});
