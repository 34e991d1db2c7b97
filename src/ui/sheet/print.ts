/** Prints the sheet from a command: its figures are waited for, which a browser's own menu does not do. */
import type { Job } from '#exchange/job';
import type { Paper } from '#exchange/sheet/page';
import type { Bench } from '../bench';
import { sheetFaces } from './faces';
import { clearPrint, layOutPages } from './printed';
import { printing } from './printing.svelte';

/** Rejects with the signal's reason for a job that was ended. A sheet that does not fit is said, and not printed. */
async function printSheet(bench: Bench, job: Job, paper: Paper): Promise<void> {
  const [sheet] = await Promise.all([bench.composeSheet(job, paper), sheetFaces()]);
  job.signal.throwIfAborted();
  if (sheet.kind === 'unfit') {
    bench.editor.say(sheet.message);
    bench.change({ view: 'sheet', isLowerPanelOpen: true });
    return;
  }
  layOutPages(sheet.pages);
  addEventListener('afterprint', clearPrint, { once: true });
  window.print();
}

/** The record to whoever looks at it, to everybody else the sheet. */
export const paperInSight = ({ settings }: Pick<Bench, 'settings'>): Paper =>
  settings.isLowerPanelOpen && settings.view === 'field-check' && settings.fieldCheckMode === 'record'
    ? 'record'
    : 'sheet';

/** For the key, the palette and every button. */
export const printNow = (bench: Bench, paper: Paper = 'sheet'): Promise<void> =>
  printing.start(
    (job) => printSheet(bench, job, paper),
    (text) => {
      bench.editor.say(text);
    }
  );
