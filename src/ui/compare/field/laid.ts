/** A field's strength as it is laid under the plan. */
import type { FieldPicture } from '#analysis/field-picture/results';
import type { Contour, MapPicture } from '#scenes/frame';
import { t } from '#i18n/message';
import { edgesOf, placeAt } from './frame';
import { levelsFor } from './levels';
import { logRingsOver } from './rings';
import { strengthsOf } from './sample';
import { levelText } from './words';

export function strengthMap(picture: FieldPicture, isPreliminary: boolean): MapPicture {
  const edges = edgesOf(picture.plane);
  const strengths = strengthsOf(picture);
  const contours = levelsFor(strengths).map((level): Contour => ({
    level,
    rings: logRingsOver(picture, strengths, level, (column, row) => placeAt(edges, picture, column, row)),
    isThreshold: false,
    label: t('seen.level', { level: levelText(level) })
  }));
  return { contours: contours.filter(({ rings }) => rings.length > 0), isPreliminary };
}
