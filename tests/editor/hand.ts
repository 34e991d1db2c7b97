/** Speaks to an editor as a hand does: in plan coordinates, by presses, moves and keys. */
import type { Point, Site } from '#plan/schema';
import { emptySite } from '#plan/read';
import { createEditor } from '#editor/create-editor';
import type { Editor, KeyInput, Modifiers, PointerInput } from '#editor/types';
import { planToScreen } from '#editor/viewport';

const NONE: Modifiers = { shift: false, alt: false, control: false };
type Held = Partial<Modifiers>;

export interface Hand {
  send(type: PointerInput['type'], at: Point, held?: Held, pointer?: PointerInput['pointer']): void;
  hover(at: Point, held?: Held): void;
  click(at: Point, held?: Held): void;
  doubleClick(at: Point): void;
  /** Presses, moves through the points on the way and stops without releasing. */
  hold(from: Point, ...to: Point[]): void;
  drag(from: Point, to: Point, held?: Held): void;
  key(key: string, held?: Held): boolean;
}

export function handOf(editor: Editor): Hand {
  const send: Hand['send'] = (type, at, held = {}, pointer = 'mouse') => {
    const [x, y] = planToScreen(editor.state.viewport, at);
    editor.pointer({ ...NONE, ...held, type, x, y, button: 0, pointer });
  };
  const hand: Hand = {
    send,
    hover: (at, held) => send('move', at, held),
    click(at, held) {
      send('down', at, held);
      send('up', at, held);
    },
    doubleClick(at) {
      hand.click(at);
      hand.click(at);
      send('double', at);
    },
    hold(from, ...to) {
      send('down', from);
      for (const at of to) send('move', at);
    },
    drag(from, to, held) {
      send('down', from, held);
      send('move', [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], held);
      send('move', to, held);
      send('up', to, held);
    },
    key: (key, held = {}) => editor.key({ ...NONE, ...held, key } satisfies KeyInput)
  };
  return hand;
}

/** 50 pixels a metre, the plan's origin in the middle of 1000 × 800 pixels. */
export function openEditor(site: Site = emptySite()): { readonly editor: Editor; readonly hand: Hand } {
  const editor = createEditor(site);
  editor.setViewport({ centre: [0, 0], scale: 50, width: 1000, height: 800 });
  return { editor, hand: handOf(editor) };
}

/** Without grid and objects, so that the pointer's own coordinates arrive. */
export function withoutSnap(editor: Editor): void {
  editor.setSnap({ ...editor.state.snap, grid: false, objects: false });
}
