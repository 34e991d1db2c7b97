/** Pictures and tables of a view, taken away as files. */
import { unwatched } from '#exchange/job';
import { csvOf } from '#exchange/tables/csv';
import type { Table } from '#exchange/tables/table';
import { Unfit } from '#exchange/files/exported';
import { fileNameFor } from '#exchange/files/file-name';
import { t } from '#i18n/message';
import { handOver } from '#storage/hand-over';
import { refusalOf } from '#storage/refusal';
import type { ExportOutcome, PictureKind } from '#ui/bench';
import { chartPicture, type ChartPicture } from './chart-picture';
import { isPaintable } from './pixels';
import { withResolution } from './png-resolution';

/** Pixels of a PNG per pixel of the screen, and how many of the latter an inch has by definition of CSS. */
const FINENESS = 2;
const PER_INCH = 96;

/** "Turns of Stop line left" as a part of a file's name. */
const inFileName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');

async function loaded(text: string): Promise<HTMLImageElement> {
  const address = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    return image;
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** Rejects with `Unfit` for what no browser paints. */
async function pixelsOf({ text, width, height }: ChartPicture): Promise<Uint8Array<ArrayBuffer>> {
  const size = { width: Math.ceil(width * FINENESS), height: Math.ceil(height * FINENESS) };
  if (!isPaintable(size)) throw new Unfit(t('exports.noCanvas'));
  const canvas = document.createElement('canvas');
  canvas.width = size.width;
  canvas.height = size.height;
  const context = canvas.getContext('2d');
  if (!context) throw new Unfit(t('exports.noCanvas'));
  context.drawImage(await loaded(text), 0, 0, size.width, size.height);
  const blob = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, 'image/png');
  });
  if (!blob) throw new Unfit(t('exports.noCanvas'));
  return withResolution(new Uint8Array(await blob.arrayBuffer()), PER_INCH * FINENESS);
}

async function handed(make: () => Promise<string>): Promise<ExportOutcome> {
  try {
    return { kind: 'made', name: await make() };
  } catch (problem) {
    if (problem instanceof Unfit) return { kind: 'unfit', message: problem.message };
    return { kind: 'failed', reason: refusalOf(problem).detail };
  }
}

/** `file`: name of the file that the site is kept in, or its name. Never rejects. */
export function savePicture(
  svg: SVGSVGElement,
  name: string,
  kind: PictureKind,
  file: string
): Promise<ExportOutcome> {
  return handed(async () => {
    const picture = chartPicture(svg, name);
    const content = kind === 'svg' ? picture.text : await pixelsOf(picture);
    const saved = fileNameFor(file, inFileName(name), kind);
    handOver(content, saved, kind === 'svg' ? 'image/svg+xml' : 'image/png');
    return saved;
  });
}

/** The same for a table, as CSV. Never rejects. */
export function saveTable(table: Table, name: string, file: string): Promise<ExportOutcome> {
  return handed(async () => {
    const saved = fileNameFor(file, inFileName(name), 'csv');
    handOver(await csvOf([table], {}, unwatched()), saved, 'text/csv;charset=utf-8');
    return saved;
  });
}
