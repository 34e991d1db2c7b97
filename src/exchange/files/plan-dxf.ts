/** The plan as DXF. */
import { t } from '#i18n/message';
import { planGeometry } from '#scenes/plan-geometry';
import { dxfOf } from '../drawings/dxf';
import { nothingDrawn } from '../drawings/plan-picture';
import { Unfit, type Exporter } from './exported';
import { fileNameFor } from './file-name';

export const planDxf: Exporter = async ({ site, file }, _, job) => {
  const things = planGeometry(site);
  if (things.length === 0) throw new Unfit(nothingDrawn());
  return {
    name: fileNameFor(file, t('exports.file.plan'), 'dxf'),
    mediaType: 'image/vnd.dxf',
    content: await dxfOf(things, site.displayUnits, job)
  };
};
