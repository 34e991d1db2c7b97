/** The plan as a picture of pixels. */
import { paint } from '#canvas/paint';
import { nothingDrawn, planPicture, type PlanPicture } from '#exchange/drawings/plan-picture';
import { Unfit, type Exporter } from '#exchange/files/exported';
import { fileNameFor } from '#exchange/files/file-name';
import { breathe } from '#exchange/job';
import { t } from '#i18n/message';
import { PAPER } from '#scenes/theme';
import { scaled } from '#scenes/scaled';
import { finest, isPaintable, pixelsAt } from './pixels';
import { withResolution } from './png-resolution';

/** Where nobody says otherwise: sharp on paper and on any screen, and yet small enough to send. */
const DOTS_PER_INCH = 200;
const INCH = 25.4;

/** Refused before anything is painted: a canvas that is too large stays blank without a word. */
function refuseTooLarge(picture: PlanPicture, dots: number): void {
  const wanted = pixelsAt(picture, dots);
  if (isPaintable(wanted)) return;
  const most = finest(picture);
  const possible = pixelsAt(picture, most);
  const largest = { most, mostWidth: possible.width, mostHeight: possible.height };
  throw new Unfit(t('exports.tooLarge', { ...wanted, dots, ...largest }));
}

/** Throws where the browser has no canvas of that size after all. */
function painted(picture: PlanPicture, dots: number): OffscreenCanvas {
  const { width, height } = pixelsAt(picture, dots);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d');
  if (!context) throw new Error(t('exports.noCanvas'));
  context.fillStyle = PAPER.paper;
  context.fillRect(0, 0, width, height);
  // a canvas that could not be had paints nothing and reads back nothing
  if (context.getImageData(width - 1, height - 1, 1, 1).data[3] !== 255)
    throw new Error(t('exports.noCanvas'));
  const drawings = picture.layers.flatMap((layer) => layer.drawings);
  paint(
    context,
    drawings.map((drawing) => scaled(drawing, dots / INCH))
  );
  return canvas;
}

/** Rejects with `Unfit`, saying what fits, for a picture that would be too large. */
export const planPng: Exporter = async ({ site, file }, { dotsPerInch = DOTS_PER_INCH }, job) => {
  await breathe(job, 0);
  const picture = planPicture(site);
  if (!picture) throw new Unfit(nothingDrawn());
  refuseTooLarge(picture, dotsPerInch);
  await breathe(job, 0.2);
  const canvas = painted(picture, dotsPerInch);
  await breathe(job, 0.6);
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  const content = withResolution(new Uint8Array(await blob.arrayBuffer()), dotsPerInch);
  await breathe(job, 1);
  return { name: fileNameFor(file, t('exports.file.plan'), 'png'), mediaType: 'image/png', content };
};
