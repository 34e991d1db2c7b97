/** Things in relation to each other. What is locked is the reference and stays; the order of a row stays too. */
export { alignThings, type Alignment } from './align';
export { centreInLanes } from './centre-in-lane';
export { distributeThings, setGaps, type Row } from './in-a-row';
export type { Item } from './item';
export { repeatAlongLane, type Repeated } from './repeat';
