/** Files for others, from the page: figures that are still on their way are waited for. */
import type { Asked } from '#analysis/questions';
import {
  Unfit,
  type Exporter,
  type ExportKind,
  type Reckon,
  type Reckoned,
  type Surroundings
} from '#exchange/files/exported';
import { EXPORTERS } from '#exchange/files/index';
import type { Job } from '#exchange/job';
import type { Paper, Sheet } from '#exchange/sheet/page';
import { loadMessages } from '#i18n/load';
import { spokenLanguage } from '#i18n/message';
import { handOver } from '#storage/hand-over';
import type { Site } from '#plan/schema';
import { refusalOf } from '#storage/refusal';
import type { Bench, ExportOutcome, ExportWishes } from '#ui/bench';
import { reckonFor } from './reckon';
import { reckonDesigns } from './reckon-designs';
import { settled } from './settled';
import { typeface } from './typeface';

const words = () => loadMessages(spokenLanguage(), ['views']);

const exporterOf = async (kind: ExportKind): Promise<Exporter> =>
  kind === 'plan-png' ? (await import('./plan-png')).planPng : EXPORTERS[kind]();

const reckonOf =
  (bench: Bench): Reckon =>
  <K extends Reckoned>(kind: K, asked: Asked<K>, site: Site, job: Job) =>
    kind === 'compare-designs'
      ? reckonDesigns(bench, asked as Asked<'compare-designs'>, site, job)
      : reckonFor(bench, kind, site, job);

/** Hands the file to the browser's downloads. Never rejects. */
export async function exportFile(
  bench: Bench,
  kind: ExportKind,
  job: Job,
  wishes: ExportWishes
): Promise<ExportOutcome> {
  const surroundings: Surroundings = { typeface, reckon: reckonOf(bench), ...wishes };
  try {
    const [make] = await Promise.all([exporterOf(kind), words()]);
    const { name, mediaType, content } = await make(await settled(bench, job), surroundings, job);
    // nothing is handed over that nobody wants any more
    job.signal.throwIfAborted();
    handOver(content, name, mediaType);
    return { kind: 'made', name };
  } catch (problem) {
    if (job.signal.aborted) return { kind: 'ended' };
    if (problem instanceof Unfit) return { kind: 'unfit', message: problem.message };
    return { kind: 'failed', reason: refusalOf(problem).detail };
  }
}

/** Rejects with `Unfit` where the figures cannot be had, with the signal's reason for a job that was ended. */
export async function composedSheet(bench: Bench, job: Job, paper: Paper): Promise<Sheet> {
  if (paper === 'sheet') {
    const [{ composeSheet }, { designsOnSheet }] = await Promise.all([
      import('#exchange/sheet/compose'),
      import('#exchange/sheet/parts/designs'),
      words()
    ]);
    const source = await settled(bench, job);
    const wish = designsOnSheet(source.site);
    const designs = wish && (await reckonDesigns(bench, wish, source.site, job));
    return composeSheet({ ...source, designs });
  }
  const [{ composeForm, composeRecord }] = await Promise.all([
    import('#exchange/sheet/record/compose'),
    words()
  ]);
  const source = await settled(bench, job);
  const checked = await reckonFor(bench, 'check-readings', source.site, job);
  return (paper === 'record' ? composeRecord : composeForm)(source, checked);
}
