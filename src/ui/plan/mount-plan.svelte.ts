import { untrack } from 'svelte';
import type { Attachment } from 'svelte/attachments';
import type { Pictures } from '#scenes/pictures';
import { createPlanCanvas } from '#canvas/plan-canvas';
import type { Bench } from '../bench';
import { loopCalls, watchedProbe } from './calls';
import { drawingTheme } from './drawing-theme';
import { frameFirst } from './framing';
import { figuresOf, severitiesOf } from './labels';

/** A ring round the whole plan shows a keyboard where it is, and would be in the way of a hand that draws. */
function markPointer(container: HTMLElement): void {
  const mark = (isByPointer: boolean) => () => {
    container.classList.toggle('by-pointer', isByPointer);
  };
  container.addEventListener('pointerdown', mark(true), { capture: true });
  container.addEventListener('keydown', mark(false));
  container.addEventListener('blur', mark(false));
}

/** Draws the plan into the element, and everything about it that comes from the calculation. */
export function mountPlan(
  bench: Bench,
  onPictures: (pictures: Pictures) => void
): Attachment<HTMLDivElement> {
  return (container) => {
    // One stop on the way of the Tab key.
    container.tabIndex = 0;
    markPointer(container);
    const canvas = untrack(() =>
      createPlanCanvas(container, bench.editor, { theme: drawingTheme(bench), fit: false, onPictures })
    );
    // Whoever follows the editor may look at what changes: the plan must not be mounted anew for it.
    untrack(() => {
      frameFirst(bench.editor);
    });
    $effect(() => {
      canvas.setTheme(drawingTheme(bench));
    });
    $effect(() => {
      canvas.setWheel(bench.settings.wheel);
      canvas.setPenDraws(bench.settings.penDraws);
    });
    $effect(() => {
      const tolerance = bench.settings.snapTolerance;
      untrack(() => {
        bench.editor.setSnap({ ...bench.state.snap, tolerance });
      });
    });
    $effect(() => {
      const probe = watchedProbe(bench.shown, bench.state.selection);
      const figures = figuresOf(bench.shown, bench.assessment, bench.settings.liveFigure, probe);
      canvas.setResults(figures, severitiesOf(bench.shown, bench.assessment));
    });
    $effect(() => {
      canvas.setCalls(loopCalls(bench.shown, bench.assessment));
    });
    $effect(() => {
      canvas.setPointed(bench.pointed);
    });
    $effect(() => {
      canvas.setMap(bench.map);
    });
    $effect(() => {
      canvas.setField(bench.field);
    });
    $effect(() => {
      canvas.setMoment(bench.moment);
    });
    $effect(() => {
      canvas.setMarked(bench.marked);
    });
    $effect(() => {
      canvas.setCutting(bench.cutting);
    });
    $effect(() => {
      canvas.setGhost(bench.ghost);
    });
    return () => {
      canvas.destroy();
    };
  };
}
