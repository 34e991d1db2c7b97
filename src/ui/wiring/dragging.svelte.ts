/** Dragging a coil over the diagram with mouse or pen; a finger scrolls, and has the buttons. */
import type { Place } from '#scenes/schematic';

/** Pixels that a press may wander and still be a click. */
const SLACK = 5;

export class CoilDrag {
  /** The loop in the hand and where the pointer is, from the diagram's upper left corner. */
  held = $state.raw<{ readonly loop: string; readonly at: Place } | null>(null);
  #start: { readonly loop: string; readonly x: number; readonly y: number } | null = null;
  /** The click that ends a drag means nothing. */
  #wasDragged = false;

  press(event: PointerEvent & { currentTarget: HTMLElement }, loop: string): void {
    this.#wasDragged = false;
    if (event.button !== 0 || event.pointerType === 'touch') return;
    this.#start = { loop, x: event.clientX, y: event.clientY };
    event.currentTarget.setPointerCapture(event.pointerId);
  }

  move(event: PointerEvent, surface: DOMRect): void {
    const start = this.#start;
    if (!start) return;
    if (!this.held && Math.hypot(event.clientX - start.x, event.clientY - start.y) <= SLACK) return;
    this.#wasDragged = true;
    const at = { x: event.clientX - surface.left, y: event.clientY - surface.top };
    this.held = { loop: start.loop, at };
  }

  /** What was in the hand. */
  release(): { readonly loop: string; readonly at: Place } | null {
    const { held } = this;
    this.drop();
    return held;
  }

  drop(): void {
    this.#start = null;
    this.held = null;
  }

  /** Whether a click is one. */
  isClick(): boolean {
    const was = this.#wasDragged;
    this.#wasDragged = false;
    return !was;
  }
}
