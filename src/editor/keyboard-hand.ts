/**
 * A pointer that the arrow keys move while a tool draws: a step of the grid, ten with shift, a fine step off the grid with
 * alt. Space presses and releases; the tool cannot tell it from a mouse.
 */
import type { Point } from '#plan/schema';
import { NUDGE } from '#units/plan-steps';
import { boxCentre } from './geometry/box';
import { boxOf } from './things';
import type { EditorState, KeyInput } from './types';
import { visibleBox } from './viewport';

export interface KeyboardHost {
  state(): EditorState;
  /** Puts the pointer there, or takes it away. */
  place(at: Point | null): void;
  /** Fine: off the grid and away from what attracts. */
  send(type: 'move' | 'down' | 'up', at: Point, isFine: boolean): void;
  /** Brings a place into sight. */
  centre(at: Point): void;
}

const DIRECTIONS: Readonly<Record<string, Point>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1]
};

const FAR = 10;
/** Part of the view beside which a place counts as out of sight. */
const MARGIN = 0.04;
/** Places are kept to a tenth of a micrometre, as in the document. */
const PER_METRE = 1e7;

const tidy = (value: number): number => Math.round(value * PER_METRE) / PER_METRE + 0;

export interface KeyboardHand {
  /** Whether the key moved the pointer or pressed with it. */
  key(input: KeyInput): boolean;
}

export function createKeyboardHand(host: KeyboardHost): KeyboardHand {
  /** The last step was fine: its place is meant as it is. */
  let isFine = false;

  /** At the middle of the selection or of the view, on the grid. */
  function start(): Point {
    const { site, selection, viewport, snap } = host.state();
    const box = boxOf(site, selection);
    const [x, y] = box ? boxCentre(box) : viewport.centre;
    const onGrid = (value: number): number => tidy(Math.round(value / snap.gridStep) * snap.gridStep);
    return [onGrid(x), onGrid(y)];
  }

  function goTo(at: Point): true {
    const { viewport } = host.state();
    const { left, right, bottom, top } = visibleBox(viewport);
    const aside: Point = [(right - left) * MARGIN, (top - bottom) * MARGIN];
    const isSeen =
      at[0] > left + aside[0] &&
      at[0] < right - aside[0] &&
      at[1] > bottom + aside[1] &&
      at[1] < top - aside[1];
    if (!isSeen) host.centre(at);
    host.place(at);
    host.send('move', at, isFine);
    return true;
  }

  function press(at: Point): true {
    host.send('down', at, isFine);
    // A tool that is done with the press has given way to another, which must not hear of the release.
    if (host.state().keyboardPoint) host.send('up', at, isFine);
    return true;
  }

  function key({ key: name, shift, alt, control }: KeyInput): boolean {
    const { tool, keyboardPoint: at, busy, site, snap } = host.state();
    if (control || tool === 'select' || tool === 'pan') return false;
    const direction = DIRECTIONS[name];
    if (direction) {
      isFine = alt;
      const [x, y] = at ?? start();
      const times = shift ? FAR : 1;
      const fine = NUDGE[site.displayUnits] * times;
      const move = (value: number, by: number): number => {
        if (by === 0) return value;
        return tidy(
          alt ? value + by * fine : (Math.round(value / snap.gridStep) + by * times) * snap.gridStep
        );
      };
      return goTo([move(x, direction[0]), move(y, direction[1])]);
    }
    if (!at) return name === 'Enter' && !busy && goTo(start());
    if (name === ' ') return press(at);
    // Without a gesture there is nothing to end: Enter presses too, and Backspace must not reach the selection.
    if (name === 'Enter' && !busy) return press(at);
    return name === 'Backspace' && !busy;
  }

  return { key };
}
