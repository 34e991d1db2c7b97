import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LONG_PRESS } from '#canvas/input/hands';
import { listenToPointers } from '#canvas/input/pointers';
import type { Editor, PointerInput } from '#editor/types';

/** As much of a surface as pointers need, 800 pixels wide and at the corner of the page. */
class Surface extends EventTarget {
  focus() {}
  setPointerCapture() {}
  getBoundingClientRect = () => ({ left: 0, top: 0 });

  touch(type: string, x: number, y: number): void {
    const details = { pointerId: 7, pointerType: 'touch', button: 0, clientX: x, clientY: y };
    this.dispatchEvent(Object.assign(new Event(type), details));
  }
}

class FakePointerEvent extends Event {}

let surface: Surface;
let heard: string[];
/** What waits for the next frame of a page whose frames the test draws. */
let frames: Map<number, () => void>;

const drawFrame = () => {
  const due = [...frames.values()];
  frames.clear();
  for (const callback of due) callback();
};

beforeEach(() => {
  vi.useFakeTimers();
  frames = new Map();
  let number = 0;
  vi.stubGlobal('requestAnimationFrame', (callback: () => void) => {
    frames.set(++number, callback);
    return number;
  });
  vi.stubGlobal('cancelAnimationFrame', (known: number) => frames.delete(known));
  vi.stubGlobal('PointerEvent', FakePointerEvent);
  surface = new Surface();
  heard = [];
  const editor = {
    pointer: ({ type, button, x, y }: PointerInput) => heard.push(`${type}${button} ${x},${y}`)
  } as unknown as Editor;
  const habits = { isSpaceHeld: () => false, penDraws: () => true, panning: () => {} };
  listenToPointers(surface as unknown as HTMLElement, editor, habits);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('a finger that rests asks for the menu where it is', () => {
  surface.touch('pointerdown', 50, 60);
  vi.advanceTimersByTime(LONG_PRESS);
  drawFrame();
  expect(heard).toEqual(['down2 50,60']);
});

test('a drag that a busy page hears of only after that time is a drag all the same', () => {
  surface.touch('pointerdown', 50, 60);
  vi.advanceTimersByTime(LONG_PRESS);
  // the browser keeps movements for the next frame, and hands them over before it
  surface.touch('pointermove', 90, 60);
  drawFrame();
  surface.touch('pointerup', 90, 60);
  expect(heard).toEqual(['down0 50,60', 'move0 90,60', 'up0 90,60']);
});

test('a finger that is lifted before the next frame was a tap', () => {
  surface.touch('pointerdown', 50, 60);
  vi.advanceTimersByTime(LONG_PRESS);
  surface.touch('pointerup', 50, 60);
  drawFrame();
  expect(heard).toEqual(['down0 50,60', 'up0 50,60']);
});
