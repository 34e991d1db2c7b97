/** The paper of the commissioning record and of the empty form: small enough for a clip board. */
import type { Site } from '../schema';
import type { StatedSheet } from './sheet';

export type RecordPaper = Pick<StatedSheet, 'paper' | 'orientation'>;

/** What the record states; else upright A4, or letter where feet and inches are shown. */
export function recordPaperOf({
  fieldCheck,
  displayUnits
}: Pick<Site, 'fieldCheck' | 'displayUnits'>): RecordPaper {
  const { paper, orientation } = fieldCheck?.record ?? {};
  return {
    paper: paper ?? (displayUnits === 'metric' ? 'A4' : 'letter'),
    orientation: orientation ?? 'portrait'
  };
}
