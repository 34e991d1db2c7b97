import type { ArrowTurn } from '#plan/schema';

/** Which way an arrow on the road points, in the order of the list. */
export const TURNS: readonly ArrowTurn[] = [
  'ahead',
  'left',
  'right',
  'ahead-left',
  'ahead-right',
  'left-right',
  'back'
];
