/** The files that the page makes, without a page. */
import { basename } from 'node:path';
import type { Assessment } from '#analysis/results';
import { Unfit, type ExportKind } from '#exchange/files/exported';
import { EXPORTERS } from '#exchange/files/index';
import { unwatched } from '#exchange/job';
import { reckon } from './reckon';
import type { OpenedSite } from './sites';
import { typeface } from './typeface';

type Made =
  | { readonly ok: true; readonly content: string | Uint8Array }
  | { readonly ok: false; readonly problem: string };

export async function fileOf(
  kind: Exclude<ExportKind, 'plan-png'>,
  { file, site }: OpenedSite,
  assessment: Assessment
): Promise<Made> {
  const make = await EXPORTERS[kind]();
  try {
    const source = { site, assessment, file: basename(file) };
    const { content } = await make(source, { typeface, reckon }, unwatched());
    return { ok: true, content };
  } catch (problem) {
    if (problem instanceof Unfit) return { ok: false, problem: problem.message };
    throw problem;
  }
}
