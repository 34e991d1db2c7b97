import { emptySite } from '../empty';
import type { Situation } from './situation';

export const blank: Situation = {
  id: 'blank',
  title: 'Blank',
  description: 'Nothing but the road: draw everything yourself.',
  build: () => emptySite()
};
