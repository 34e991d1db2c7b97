/** Commands that wire loops to each other, one file a verb. */
import type { Command } from '../../types';
import { wireInParallel } from './in-parallel';
import { wireInSeries } from './in-series';
import { leadInToCabinet } from './lead-in';
import { leadOutToBox } from './lead-out';
import { reverse } from './reverse';
import { wireSeriesParallel } from './series-parallel';
import { takeApart } from './take-apart';

export const wiringCommands: readonly Command[] = [
  wireInSeries,
  wireInParallel,
  wireSeriesParallel,
  takeApart,
  reverse,
  leadOutToBox,
  leadInToCabinet
];
