/** What the page says before anything else is asked for. */
import { arrange } from '../arrange';
import { details } from '../details';
import { drawing } from '../drawing';
import { editor } from '../editor';
import { entry } from '../entry';
import { keeping } from '../keeping';
import { opening } from '../opening';
import { plan } from '../plan';
import { readout } from '../readout';
import { refusals } from '../refusals';
import { shell } from '../shell';
import { steel } from '../steel';
import { underlay } from '../underlay';
import { views } from '../views';
import { wiring } from '../wiring';

export const messages = {
  ...arrange,
  ...details,
  ...drawing,
  ...editor,
  ...entry,
  ...keeping,
  ...opening,
  ...plan,
  ...readout,
  ...refusals,
  ...shell,
  ...steel,
  ...underlay,
  ...views,
  ...wiring
} as const;
