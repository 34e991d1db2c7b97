import { t } from '#i18n/message';
import type { Site } from '../schema';

type SituationId =
  | 'driveway-gate'
  | 'car-park-lane'
  | 'stop-line'
  | 'advance-loops'
  | 'counting-pair'
  | 'bicycle-stop-line'
  | 'blank';

/** A layout to start from: lanes, loops and circuits that follow the usual practice, ready to change. */
export interface Situation {
  readonly id: SituationId;
  /** In the spoken language whenever it is read, like the names in what is built. */
  readonly title: string;
  readonly description: string;
  readonly build: () => Site;
}

export const situation = (id: SituationId, build: () => Site): Situation => ({
  id,
  get title() {
    return t(`situation.${id}`);
  },
  get description() {
    return t(`situation.${id}.gist`);
  },
  build
});
