/** The plan as SVG, at the scale of the sheet. */
import { t } from '#i18n/message';
import { nothingDrawn, planPicture } from '../drawings/plan-picture';
import { svgOf } from '../drawings/svg';
import { breathe } from '../job';
import { Unfit, type Exporter } from './exported';
import { fileNameFor } from './file-name';

export const planSvg: Exporter = async ({ site, file }, _, job) => {
  await breathe(job, 0);
  const picture = planPicture(site);
  if (!picture) throw new Unfit(nothingDrawn());
  await breathe(job, 0.5);
  const content = svgOf(picture.layers, { ...picture, title: site.name });
  await breathe(job, 1);
  return { name: fileNameFor(file, t('exports.file.plan'), 'svg'), mediaType: 'image/svg+xml', content };
};
