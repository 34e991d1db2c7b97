/** The way of each complaint. */
import type { Path } from '../node';
import type { Complaint } from '../results';
import { alwaysCalling } from './always-calling';
import { dropsStanding } from './drops-standing';
import { missesMotorcycles } from './misses-motorcycles';
import { neverCalling } from './never-calling';
import { noPower } from './no-power';
import { nobodyThere } from './nobody-there';
import { twoLanes } from './two-lanes';
import { untilItRains } from './until-it-rains';

export const PATHS: Readonly<Record<Complaint, Path>> = {
  'no power': noPower,
  'always calling': alwaysCalling,
  'never calling': neverCalling,
  'calls with nobody there': nobodyThere,
  'misses motorcycles': missesMotorcycles,
  'two lanes call together': twoLanes,
  'works until it rains': untilItRains,
  'drops a standing vehicle': dropsStanding
};
