import { describe, expect, test } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { situations } from '#plan/situations/index';
import type { Bench } from '#ui/bench';
import { UnderlayDesk } from '#ui/underlay/desk.svelte.ts';
import type { Intake } from '#ui/underlay/intake';
import type { Pages } from '#ui/underlay/pages';

const PICTURE: Intake = {
  kind: 'picture',
  name: 'Junction',
  picture: { mediaType: 'image/png', data: 'AAAA', width: 400, height: 300 },
  notice: ''
};

/** A PDF of two pages that has been opened; of its drawing `finish` decides. */
async function withPages() {
  const editor = createEditor(situations.find(({ id }) => id === 'blank')!.build());
  const keeping = { slot: 'a' };
  const bench = {
    keeping,
    editor,
    get state() {
      return editor.state;
    }
  };
  const desk = new UnderlayDesk(bench as unknown as Bench);
  const closed: string[] = [];
  const pages: Pages = {
    count: 2,
    draw: () => Promise.reject(new Error('not here')),
    close: () => closed.push('pages')
  };
  await desk.receive(Promise.resolve({ kind: 'pages', name: 'Plan', pages }));
  expect(desk.task?.kind).toBe('pages');
  let finish!: (intake: Intake) => void;
  const received = desk.receive(
    new Promise<Intake>((resolve) => {
      finish = resolve;
    })
  );
  const finished = async () => {
    finish(PICTURE);
    await received;
  };
  return { desk, editor, keeping, closed, finished };
}

describe('a page of a PDF', () => {
  test('comes under the plan when it is drawn', async () => {
    const { desk, editor, closed, finished } = await withPages();
    await finished();
    expect(editor.state.site.underlays.map(({ name }) => name)).toEqual(['Junction']);
    expect([desk.task, closed]).toEqual([null, ['pages']]);
  });

  test('stays away from a site that was opened while it was drawn', async () => {
    const { desk, editor, keeping, closed, finished } = await withPages();
    keeping.slot = 'b';
    await finished();
    expect(editor.state.site.underlays).toEqual([]);
    expect([desk.task, closed]).toEqual([null, ['pages']]);
  });

  test('can be given up while it is drawn', async () => {
    const { desk, editor, closed, finished } = await withPages();
    desk.drop();
    await finished();
    expect(editor.state.site.underlays).toEqual([]);
    expect([desk.task, closed]).toEqual([null, ['pages']]);
  });
});
