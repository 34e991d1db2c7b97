/** What comes in from other files: everything that a page needs for it, loaded when it is first asked for. */
import type { Job } from '../job';
import { MOST, Unreadable, type Drawing, type Refusal } from './dxf/drawing';
import { readDxf } from './dxf/read';

export { extentOf, linesOf, MOST_POINTS, onLayers } from './dxf/lines';
export { DRAWING_UNITS, unitOf } from './dxf/units';
export { EXAMPLES } from './loops/examples';
export { loopsOf, MOST_BYTES, readLoops, withLoops } from './loops/read';
export { writeLoops } from './loops/write';

export type DxfReading =
  { readonly ok: true; readonly drawing: Drawing } | { readonly ok: false; readonly why: Refusal };

/** Rejects with the signal's reason for a job that was ended, and when the file cannot be had. */
export async function openDxf(file: Blob, job: Job): Promise<DxfReading> {
  // no more is taken into the memory than is read
  if (file.size > MOST.file) return { ok: false, why: 'tooMuch' };
  try {
    return { ok: true, drawing: await readDxf(new Uint8Array(await file.arrayBuffer()), job) };
  } catch (problem) {
    if (problem instanceof Unreadable) return { ok: false, why: problem.why };
    throw problem;
  }
}
