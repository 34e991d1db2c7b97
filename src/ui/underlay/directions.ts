/** Ways that two points of a picture may be known to lie along. */
import { t } from '#i18n/message';
import { bearing } from '#plan/geometry/points';
import type { Site } from '#plan/schema';
import { nameOf } from '../names';

export interface Direction {
  readonly value: string;
  readonly label: string;
  /** Counter-clockwise from x; null to leave the picture as it lies. */
  readonly degrees: number | null;
}

export const directions = (site: Site): readonly Direction[] => [
  { value: 'not', label: t('underlay.turn.not'), degrees: null },
  { value: 'x', label: t('underlay.turn.x'), degrees: 0 },
  { value: 'y', label: t('underlay.turn.y'), degrees: 90 },
  ...site.lanes.flatMap((lane): Direction[] => {
    const [from, to] = [lane.centreline[0], lane.centreline.at(-1)];
    if (!from || !to) return [];
    return [
      {
        value: `lane ${lane.id}`,
        label: t('underlay.turn.lane', { lane: nameOf(lane) }),
        degrees: bearing(from, to)
      }
    ];
  })
];
