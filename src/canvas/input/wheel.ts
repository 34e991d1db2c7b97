/** The wheel zooms at the pointer; pinching and control always do; shift and a sideways wheel move the view. */
import type { Editor } from '#editor/types';
import { placeOf } from './place';

export type WheelHabit = 'zoom' | 'pan';

/** How much one pixel of a wheel is; a notch of a mouse has about a hundred. */
const PER_PIXEL = 0.0016;
/** A pinch on a trackpad arrives as control and small steps. */
const PER_PINCH_PIXEL = 0.01;
const LINE = 16;

/** Pixels, whatever the browser counts in. */
function pixels(event: WheelEvent, height: number): { readonly dx: number; readonly dy: number } {
  const unit = event.deltaMode === 1 ? LINE : event.deltaMode === 2 ? height : 1;
  return { dx: event.deltaX * unit, dy: event.deltaY * unit };
}

export function listenToWheel(surface: HTMLElement, editor: Editor, habit: () => WheelHabit): () => void {
  const onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const { dx, dy } = pixels(event, surface.clientHeight);
    const [x, y] = placeOf(event, surface);
    const zooms = event.ctrlKey || event.metaKey || (habit() === 'zoom' && !event.shiftKey && dx === 0);
    if (!zooms) {
      const sideways = event.shiftKey && dx === 0;
      editor.pan(sideways ? -dy : -dx, sideways ? 0 : -dy);
      return;
    }
    const pinched = event.ctrlKey && event.deltaMode === 0 && Math.abs(dy) < 50;
    editor.zoom(Math.exp(-dy * (pinched ? PER_PINCH_PIXEL : PER_PIXEL)), x, y);
  };
  surface.addEventListener('wheel', onWheel, { passive: false });
  return () => {
    surface.removeEventListener('wheel', onWheel);
  };
}
